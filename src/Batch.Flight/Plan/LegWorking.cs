namespace Batch.Flight.Plan;

/// <summary>The working of a planned leg, step by step, taken from the parts that the plan keeps.</summary>
public static class LegWorking
{
    /// <summary>Every step: times, route, profile, navigation log, fuel, weights, runways, limits, level options, daylight.</summary>
    /// <param name="plan">The leg.</param>
    public static ImmutableArray<WorkingStep> Of(LegPlan.Planned plan) =>
    [
        .. TimeWorking.Of(plan),
        .. RouteWorking.Of(plan),
        .. ProfileWorking.Of(plan),
        .. LogWorking.Of(plan),
        .. FuelWorking.Of(plan),
        .. WeightWorking.Of(plan),
        .. RunwayWorking.Of(plan),
        .. LimitWorking.Of(plan),
        .. OptionWorking.Of(plan),
        .. DaylightWorking.Of(plan),
    ];
}
