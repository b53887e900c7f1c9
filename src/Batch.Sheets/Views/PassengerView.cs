using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One line of the manifest. Private.</summary>
internal sealed record PassengerView
{
    [Value("Name. Private")]
    public required string Name { get; init; }

    [Value("Category: adult, man, woman, child, infant; nothing where not said")]
    public required string Category { get; init; }

    [Value("Numbers of the legs of this trip, such as 1, 2")]
    public required string Legs { get; init; }

    [Value("Stated weight; nothing where a standard weight is taken")]
    public required Quantity? Weight { get; init; }

    [Value("Stated weight of the bags; nothing where not said")]
    public required Quantity? Bags { get; init; }

    [Value("Number of bags; nothing where not said")]
    public required int? BagCount { get; init; }

    [Value("Seat or station asked for")]
    public required string Seat { get; init; }

    [Value("Notes. Private")]
    public required string Notes { get; init; }

    public static PassengerView Of(ManifestLine line, ImmutableArray<LegPlan> legs) => new()
    {
        Name = line.Name,
        Category = Words.Of(line.Category),
        Legs = LegNumbers.Of(line.Legs, legs),
        Weight = Quantity.Of(line.Weight),
        Bags = Quantity.Of(line.Bags),
        BagCount = line.BagCount,
        Seat = line.Seat,
        Notes = line.Notes,
    };
}
