using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>What stands at a station.</summary>
internal sealed record StationView
{
    [Value("Name of the station")]
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

    public static StationView Of(StationLoad station, LoadSheet load) => new()
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
