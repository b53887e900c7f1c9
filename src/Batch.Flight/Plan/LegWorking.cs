namespace Batch.Flight.Plan;

/// <summary>The working of a planned leg, step by step, taken from the parts that the plan keeps.</summary>
public static class LegWorking
{
    /// <summary>Every step: times, route, fuel, weights, runways.</summary>
    /// <param name="plan">The leg.</param>
    public static ImmutableArray<WorkingStep> Of(LegPlan.Planned plan) =>
    [
        .. TimeWorking.Of(plan),
        .. ProfileWorking.Of(plan),
        .. FuelWorking.Of(plan),
        .. WeightWorking.Of(plan),
        .. RunwayWorking.Of(plan),
    ];
}
