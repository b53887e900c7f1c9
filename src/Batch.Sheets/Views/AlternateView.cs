using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The flight from the destination to an alternate.</summary>
internal sealed record AlternateView
{
    [Value("The alternate")]
    public required AirportView Airport { get; init; }

    [Value("Distance from the destination")]
    public required Quantity Distance { get; init; }

    [Value("Magnetic course from the destination")]
    public required Quantity? MagneticCourse { get; init; }

    [Value("Level")]
    public required Quantity Level { get; init; }

    [Value("Time, the missed approach included")]
    public required Elapsed Time { get; init; }

    [Value("Fuel, the missed approach included")]
    public required Quantity Fuel { get; init; }

    [Value("Whether its fuel is the one in the fuel ladder")]
    public required bool IsInLadder { get; init; }

    public static AlternateView Of(AlternatePlan alternate, LegPlan.Planned plan, OperatorWeek week) => new()
    {
        Airport = week.Airports.TryGetValue(alternate.Airport, out var known) ? AirportView.Of(known) : AirportView.Named(alternate.Airport),
        Distance = Quantity.Of(alternate.Distance),
        MagneticCourse = Quantity.OfDegrees(alternate.MagneticCourse.Value),
        Level = Quantity.Of(alternate.Level),
        Time = new Elapsed(alternate.Time),
        Fuel = Quantity.OfFuel(alternate.Fuel, plan.Type.FuelDensity, RoundingWay.Up),
        IsInLadder = alternate.IsFarthest,
    };
}
