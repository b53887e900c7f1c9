using System.Diagnostics;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A takeoff or a landing on one runway, or why it is not computed.</summary>
internal sealed record RunwayView
{
    [Value("Airport")]
    public required string Airport { get; init; }

    [Value("Takeoff or Landing")]
    public required string What { get; init; }

    [Value("Whether it is computed; if not, only why is known")]
    public required bool IsComputed { get; init; }

    [Value("Why it is not computed")]
    public string Why { get; init; } = "";

    [Value("Runway designator")]
    public string Ident { get; init; } = "";

    [Value("Whether the dispatcher named the runway; else it is the best into the wind")]
    public bool IsNamed { get; init; }

    [Value("Flap setting of the table")]
    public string Flap { get; init; } = "";

    [Value("Surface in one word")]
    public string Surface { get; init; } = "";

    [Value("Slope, percent, positive uphill, a bare number")]
    public double Slope { get; init; }

    [Value("Weight")]
    public Quantity? Weight { get; init; }

    [Value("Pressure altitude")]
    public Quantity? PressureAltitude { get; init; }

    [Value("Temperature")]
    public Quantity? Temperature { get; init; }

    [Value("Headwind component; negative for a tailwind")]
    public Quantity? Headwind { get; init; }

    [Value("Crosswind component without its side")]
    public Quantity? Crosswind { get; init; }

    [Value("Side the crosswind comes from: left or right; nothing without one")]
    public string CrosswindSide { get; init; } = "";

    [Value("Ground roll by the table")]
    public Quantity? TableRoll { get; init; }

    [Value("Distance over the obstacle by the table")]
    public Quantity? TableDistance { get; init; }

    [Value("Corrections applied one after another")]
    public ImmutableArray<FactorView> Factors { get; init; } = [];

    [Value("Distance with all corrections, without the rule's factor")]
    public Quantity? CorrectedDistance { get; init; }

    [Value("Distance required: corrected, times the rule's factor")]
    public Quantity? Required { get; init; }

    [Value("Distance available")]
    public Quantity? Available { get; init; }

    [Value("Available less required; negative when short")]
    public Quantity? Margin { get; init; }

    [Value("Accelerate-stop distance with the corrections of the takeoff; nothing for a landing and where the table has none")]
    public Quantity? Stop { get; init; }

    [Value("Accelerate-stop distance available")]
    public Quantity? StopAvailable { get; init; }

    [Value("Whether the accelerate-stop distance is longer than what is available")]
    public bool IsStopShort { get; init; }

    [Value("Greatest weight that fits this runway; nothing where none in the table does")]
    public Quantity? GreatestWeight { get; init; }

    [Value("Highest temperature at which this weight fits; nothing where none in the table does")]
    public Quantity? HighestTemperature { get; init; }

    [Value("Named speeds at this weight")]
    public ImmutableArray<SpeedView> Speeds { get; init; } = [];

    [Value("Citation of the comparison")]
    public string Citation { get; init; } = "";

    [Value("Factor of the rule on the distance, a bare number")]
    public double RuleFactor { get; init; } = 1;

    public static RunwayView Of(string airport, string what, RunwayResult result, Pounds? most, double ruleFactor, string citation) => result switch
    {
        RunwayResult.NotComputed(var why) => new RunwayView { Airport = airport, What = what, IsComputed = false, Why = why },
        RunwayResult.Computed(var use) => Of(airport, what, use, most, ruleFactor, citation),
        _ => throw new UnreachableException(),
    };

    private static (Quantity Limit, Quantity Actual, Quantity Margin) Held(RunwayUse use) =>
        Quantity.Trio(Quantity.Of(use.Required), Quantity.Of(use.Available), isLeast: true);

    private static RunwayView Of(string airport, string what, RunwayUse use, Pounds? most, double ruleFactor, string citation) => new()
    {
        Airport = airport,
        What = what,
        IsComputed = true,
        Ident = use.Runway.Ident,
        IsNamed = use.IsNamed,
        Flap = use.Flap,
        Surface = Words.Of(use.Runway.Surface),
        Slope = use.Runway.SlopePercent,
        Weight = WeightView.Printed(use.Weight, most),
        PressureAltitude = Quantity.Of(use.PressureAltitude),
        Temperature = Quantity.Of(use.Temperature),
        Headwind = Quantity.Of(use.Headwind).Signed(),
        Crosswind = Quantity.Of(new Knots(Math.Abs(use.Crosswind.Value))),
        CrosswindSide = Math.Abs(use.Crosswind.Value) < 0.5 ? "" : use.Crosswind.Value > 0 ? "right" : "left",
        TableRoll = Quantity.Of(use.TableRoll, RoundingWay.Up),
        TableDistance = Quantity.Of(use.TableDistance, RoundingWay.Up),
        Factors = [.. use.Factors.Select(factor => new FactorView { Name = factor.Name, Factor = factor.Factor })],
        CorrectedDistance = Quantity.Of(use.CorrectedDistance, RoundingWay.Up),
        Required = Held(use).Limit,
        Available = Held(use).Actual,
        Margin = Held(use).Margin,
        Stop = Quantity.Of(use.CorrectedStop, RoundingWay.Up),
        StopAvailable = Quantity.Of(use.StopAvailable, RoundingWay.Down),
        IsStopShort = use.CorrectedStop > use.StopAvailable,
        GreatestWeight = Quantity.Of(use.GreatestWeight, RoundingWay.Down),
        HighestTemperature = Quantity.Of(use.HighestTemperature, RoundingWay.Down),
        Speeds = [.. use.Speeds.Select(speed => new SpeedView { Name = speed.Name, Speed = Quantity.Of(speed.Speed) })],
        Citation = citation,
        RuleFactor = ruleFactor,
    };
}
