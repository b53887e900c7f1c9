using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>What each aircraft does in the week, leg after leg.</summary>
internal static class AircraftChain
{
    /// <summary>The week of one aircraft.</summary>
    /// <param name="registration">Registration.</param>
    /// <param name="aircraft">The aircraft; null where the Aircraft sheet does not have it.</param>
    /// <param name="plans">Its legs in any order.</param>
    public static AircraftWeek Of(string registration, Aircraft? aircraft, IEnumerable<LegPlan> plans)
    {
        var legs = plans.ToImmutableArray();
        var planned = legs.OfType<LegPlan.Planned>().ToImmutableArray();
        return new AircraftWeek
        {
            Registration = registration,
            Steps = Chain.Of(legs, aircraft?.Home ?? ""),
            Block = Total(planned, plan => plan.Times.Block),
            Air = Total(planned, plan => plan.Times.Air),
            Landings = planned.Length,
            Uplift = planned.Aggregate(Pounds.Zero, (sum, plan) => sum + plan.Fuel.Uplift),
            Burned = planned.Aggregate(Pounds.Zero, (sum, plan) => sum + plan.Fuel.Taxi + plan.Fuel.Trip),
        };
    }

    private static Duration Total(IEnumerable<LegPlan.Planned> plans, Func<LegPlan.Planned, Duration> time) =>
        plans.Aggregate(Duration.Zero, (sum, plan) => sum + time(plan));
}
