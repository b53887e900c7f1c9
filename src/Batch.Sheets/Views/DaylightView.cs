using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The sun at both ends and the night on the way.</summary>
internal sealed record DaylightView
{
    [Value("The sun at the departure on the day of takeoff")]
    public required SunView Departure { get; init; }

    [Value("The sun at the destination on the day of landing")]
    public required SunView Destination { get; init; }

    [Value("Time in the air at night")]
    public required Elapsed Night { get; init; }

    [Value("Whether takeoff is at night")]
    public required bool IsNightTakeoff { get; init; }

    [Value("Whether landing is at night")]
    public required bool IsNightLanding { get; init; }

    public static DaylightView Of(LegPlan.Planned plan) => new()
    {
        Departure = SunView.Of(plan.Daylight.Departure, plan.From.Zone),
        Destination = SunView.Of(plan.Daylight.Destination, plan.To.Zone),
        Night = new Elapsed(plan.Daylight.Night),
        IsNightTakeoff = plan.Daylight.IsNightTakeoff,
        IsNightLanding = plan.Daylight.IsNightLanding,
    };
}
