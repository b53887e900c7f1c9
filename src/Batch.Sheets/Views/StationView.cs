using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>What stands at a station.</summary>
internal sealed record StationView
{
    [Value("Name of the station; no seat or no station for what has no place")]
    public required string Name { get; init; }

    [Value("Load there")]
    public required Quantity Weight { get; init; }

    [Value("Greatest weight allowed there; nothing where the book gives none")]
    public required Quantity? Maximum { get; init; }

    [Value("Arm of the load there")]
    public required Quantity Arm { get; init; }

    [Value("Persons seated there")]
    public required int Persons { get; init; }

    [Value("Seats there")]
    public required int Seats { get; init; }

    [Value("Whether the load there is over its maximum")]
    public required bool IsOver { get; init; }

    [Value("Whether a weight there is a standard weight, not a stated one")]
    public required bool IsAssumed { get; init; }

    /// <summary>The stations, and behind them what has a place at none, so that the list adds up to the load.</summary>
    public static ImmutableArray<StationView> All(LoadSheet load) =>
    [
        .. load.Stations.Select(station => Of(station, load)),
        .. Nowhere("no seat", [.. load.Items.Where(item => item.Station.Length == 0 && IsPerson(item))]),
        .. Nowhere("no station", [.. load.Items.Where(item => item.Station.Length == 0 && !IsPerson(item))]),
    ];

    private static bool IsPerson(LoadItem item) => item.Kind is LoadItemKind.Pilot or LoadItemKind.Passenger;

    private static IEnumerable<StationView> Nowhere(string name, ImmutableArray<LoadItem> items)
    {
        if (items.IsEmpty) yield break;
        yield return new StationView
        {
            Name = name,
            Weight = Quantity.Of(items.Aggregate(Pounds.Zero, (sum, item) => sum + item.Weight)),
            Maximum = null,
            Arm = Quantity.Of(items[0].Arm),
            Persons = items.Count(IsPerson),
            Seats = 0,
            IsOver = false,
            IsAssumed = items.Any(item => item.IsAssumed),
        };
    }

    private static StationView Of(StationLoad station, LoadSheet load) => new()
    {
        Name = station.Station.Name,
        Weight = Quantity.Of(station.Weight),
        Maximum = Quantity.Of(station.Station.Maximum),
        Arm = Quantity.Of(station.Station.Arm),
        Persons = station.Persons,
        Seats = station.Station.Seats,
        IsOver = station.Station.Maximum is { } most && station.Weight > most,
        IsAssumed = load.Items.Any(item => item.IsAssumed && string.Equals(item.Station, station.Station.Name, StringComparison.OrdinalIgnoreCase)),
    };
}
