using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One line of cargo.</summary>
internal sealed record CargoView
{
    [Value("What it is")]
    public required string What { get; init; }

    [Value("Numbers of the legs of this trip, or all")]
    public required string Legs { get; init; }

    [Value("Weight")]
    public required Quantity Weight { get; init; }

    [Value("Station asked for")]
    public required string Station { get; init; }

    [Value("Notes")]
    public required string Notes { get; init; }

    public static CargoView Of(CargoLine line, ImmutableArray<LegPlan> legs) => new()
    {
        What = line.What,
        Legs = LegNumbers.Of(line.Legs, legs),
        Weight = Quantity.Of(line.Weight),
        Station = line.Station,
        Notes = line.Notes,
    };
}
