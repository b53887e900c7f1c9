using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Takeoff or landing: the tables, corrections and factor that hold for it.</summary>
internal sealed record RunwayCase
{
    /// <summary><c>takeoff</c> or <c>landing</c>.</summary>
    public required string Word { get; init; }

    /// <summary>Tables by flap.</summary>
    public required ImmutableSortedDictionary<string, PerformanceTable> Tables { get; init; }

    /// <summary>Less per knot of credited headwind [1/kt].</summary>
    public required double? HeadwindPerKnot { get; init; }

    /// <summary>More per knot of factored tailwind [1/kt].</summary>
    public required double? TailwindPerKnot { get; init; }

    /// <summary>More per percent of slope the wrong way [1/%].</summary>
    public required double? SlopePerPercent { get; init; }

    /// <summary>More on dry grass [fraction].</summary>
    public required double? Grass { get; init; }

    /// <summary>More on a wet runway [fraction].</summary>
    public required double? Wet { get; init; }

    /// <summary>Factor of the rules.</summary>
    public required double RuleFactor { get; init; }

    /// <summary>Whether this is the takeoff.</summary>
    public required bool IsTakeoff { get; init; }

    /// <summary>The wrong way: upslope for a takeoff, downslope for a landing.</summary>
    public string SlopeWord => IsTakeoff ? "upslope" : "downslope";

    /// <summary>The takeoff of a request.</summary>
    /// <param name="request">The request.</param>
    public static RunwayCase Takeoff(RunwayRequest request) => new()
    {
        Word = "takeoff",
        IsTakeoff = true,
        Tables = request.Type.Tables.Takeoff,
        HeadwindPerKnot = request.Type.Corrections.TakeoffHeadwindPerKnot,
        TailwindPerKnot = request.Type.Corrections.TakeoffTailwindPerKnot,
        SlopePerPercent = request.Type.Corrections.TakeoffUpslopePerPercent,
        Grass = request.Type.Corrections.TakeoffGrass,
        Wet = request.Type.Corrections.TakeoffWet,
        RuleFactor = request.Rules.TakeoffFactor,
    };

    /// <summary>The landing of a request.</summary>
    /// <param name="request">The request.</param>
    public static RunwayCase Landing(RunwayRequest request) => new()
    {
        Word = "landing",
        IsTakeoff = false,
        Tables = request.Type.Tables.Landing,
        HeadwindPerKnot = request.Type.Corrections.LandingHeadwindPerKnot,
        TailwindPerKnot = request.Type.Corrections.LandingTailwindPerKnot,
        SlopePerPercent = request.Type.Corrections.LandingDownslopePerPercent,
        Grass = request.Type.Corrections.LandingGrass,
        Wet = request.Type.Corrections.LandingWet,
        RuleFactor = request.Rules.LandingFactor,
    };
}
