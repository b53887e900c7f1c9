using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One answer of the aircraft's computer, with the difference above which something was typed wrongly.</summary>
internal sealed record AnswerView
{
    // Gross-error limits of our own, no source: wide enough for another wind or rounding, narrow enough for a wrong unit, a lost passenger or another route.
    private const double WeightShare = 0.01;
    private const double DistanceShare = 0.02;
    private const double LeastDistanceNm = 2;
    private const double TimeShare = 0.05;
    private const double LeastTimeMin = 3;
    private const double FuelShare = 0.05;
    private const double LeastFuelLb = 20;
    private const double PlaceNm = 5;

    [Value("What is compared, such as Gross weight")]
    public required string What { get; init; }

    [Value("Kind of the figure, for choosing its unit: weight, distance, time, fuel")]
    public required string Kind { get; init; }

    [Value("The expected figure when it is a quantity; nothing for a time")]
    public Quantity? Expected { get; init; }

    [Value("The difference above which something was typed wrongly, when the figure is a quantity")]
    public Quantity? Tolerance { get; init; }

    [Value("The expected time; nothing for a quantity")]
    public Elapsed? ExpectedTime { get; init; }

    [Value("The difference above which something was typed wrongly, when the figure is a time")]
    public Elapsed? ToleranceTime { get; init; }

    public static ImmutableArray<AnswerView> Of(LegPlan.Planned plan)
    {
        var profile = plan.Profile;
        var density = plan.Type.FuelDensity;
        var ramp = plan.Load.Ramp.Weight;
        return
        [
            new AnswerView
            {
                What = "Gross weight",
                Kind = "weight",
                Expected = WeightView.Printed(ramp, plan.Type.MaximumRamp),
                Tolerance = Quantity.Of(ramp * WeightShare),
            },
            Distance("Distance", profile.Distance.Value, Math.Max(LeastDistanceNm, profile.Distance.Value * DistanceShare)),
            new AnswerView
            {
                What = "Time en route",
                Kind = "time",
                ExpectedTime = new Elapsed(profile.Time),
                ToleranceTime = new Elapsed(Duration.FromMinutes(Math.Max(LeastTimeMin, profile.Time.TotalMinutes * TimeShare))),
            },
            new AnswerView
            {
                What = "Trip fuel",
                Kind = "fuel",
                Expected = Quantity.OfFuel(profile.TripFuel, density, RoundingWay.Up),
                Tolerance = Quantity.OfFuel(new Pounds(Math.Max(LeastFuelLb, profile.TripFuel.Value * FuelShare)), density),
            },
            Distance("Top of climb after", profile.TopOfClimb.Distance.Value, PlaceNm),
            Distance("Top of descent before", profile.Distance.Value - profile.TopOfDescent.Distance.Value, PlaceNm),
        ];
    }

    private static AnswerView Distance(string what, double nm, double toleranceNm) => new()
    {
        What = what,
        Kind = "distance",
        Expected = new Quantity(nm, QuantityKind.Distance),
        Tolerance = new Quantity(toleranceNm, QuantityKind.Distance),
    };
}
