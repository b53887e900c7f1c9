using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>What goes to one seat row or hold. No names.</summary>
internal sealed record LoadStationView
{
    [Value("Name of the station")]
    public required string Name { get; init; }

    [Value("Whether it is a seat row; else a hold")]
    public required bool IsSeats { get; init; }

    [Value("Persons seated there")]
    public required int Persons { get; init; }

    [Value("Seats there")]
    public required int Seats { get; init; }

    [Value("Bags there; nothing where the book does not say how many")]
    public required int? Bags { get; init; }

    [Value("Pieces of cargo there")]
    public required int Cargo { get; init; }

    [Value("Weight there")]
    public required Quantity Weight { get; init; }

    [Value("Greatest weight allowed there; nothing where the book gives none")]
    public required Quantity? Maximum { get; init; }

    [Value("What can still be put there; negative when over; nothing without a greatest weight")]
    public required Quantity? Spare { get; init; }

    [Value("Whether a weight there is a standard weight, not a stated one")]
    public required bool IsAssumed { get; init; }

    public static LoadStationView Of(StationLoad station, LoadSheet load)
    {
        ImmutableArray<LoadItem> items = [.. load.Items.Where(item => string.Equals(item.Station, station.Station.Name, StringComparison.OrdinalIgnoreCase))];
        ImmutableArray<LoadItem> bags = [.. items.Where(item => item.Kind == LoadItemKind.Bags)];
        var held = station.Station.Maximum is { } most
            ? Quantity.Trio(Quantity.Of(most), Quantity.Of(station.Weight), isLeast: false)
            : ((Quantity Limit, Quantity Actual, Quantity Margin)?)null;
        return new LoadStationView
        {
            Name = station.Station.Name,
            IsSeats = station.Station.Kind == StationKind.Seat,
            Persons = station.Persons,
            Seats = station.Station.Seats,
            Bags = bags.All(item => item.BagCount is not null) ? bags.Sum(item => item.BagCount) : null,
            Cargo = items.Count(item => item.Kind == LoadItemKind.Cargo),
            Weight = held?.Actual ?? Quantity.Of(station.Weight),
            Maximum = held?.Limit,
            Spare = held is { } three ? three.Margin with { IsSigned = false } : null,
            IsAssumed = items.Any(item => item.IsAssumed),
        };
    }
}
