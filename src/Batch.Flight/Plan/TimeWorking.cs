using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Working of the times of a leg.</summary>
internal static class TimeWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        var times = plan.Times;
        var offBlocks = MinutesOfDay(times.OffBlocks);
        yield return Step("takeoff", "off blocks + taxi", MinutesOfDay(times.Takeoff),
            new WorkingInput("off blocks", offBlocks, "min after 00:00 UTC", plan.Leg.Origin.Cell(nameof(Leg.OffBlocks))),
            new WorkingInput("taxi", (times.Takeoff - times.OffBlocks).TotalMinutes, "min",
                plan.Leg.Taxi is null ? "" : plan.Leg.Origin.Cell(nameof(Leg.Taxi))));
        yield return Step("top of climb", "takeoff + time to the top of climb", MinutesOfDay(times.TopOfClimb),
            new WorkingInput("takeoff", MinutesOfDay(times.Takeoff), "min after 00:00 UTC"),
            new WorkingInput("time to the top of climb", plan.Profile.TopOfClimb.Elapsed.TotalMinutes, "min"));
        yield return Step("top of descent", "takeoff + time to the top of descent", MinutesOfDay(times.TopOfDescent),
            new WorkingInput("takeoff", MinutesOfDay(times.Takeoff), "min after 00:00 UTC"),
            new WorkingInput("time to the top of descent", plan.Profile.TopOfDescent.Elapsed.TotalMinutes, "min"));
        yield return Step("landing", "takeoff + time in the air", MinutesOfDay(times.Landing),
            new WorkingInput("takeoff", MinutesOfDay(times.Takeoff), "min after 00:00 UTC"),
            new WorkingInput("time in the air", plan.Profile.Time.TotalMinutes, "min"));
        yield return Step("on blocks", "landing + taxi in", MinutesOfDay(times.OnBlocks),
            new WorkingInput("landing", MinutesOfDay(times.Landing), "min after 00:00 UTC"),
            new WorkingInput("taxi in", (times.OnBlocks - times.Landing).TotalMinutes, "min"));
        var block = Step("block time", "on blocks − off blocks", times.Block.TotalMinutes,
            new WorkingInput("taxi", (times.Takeoff - times.OffBlocks).TotalMinutes, "min"),
            new WorkingInput("time in the air", times.Air.TotalMinutes, "min"),
            new WorkingInput("taxi in", (times.OnBlocks - times.Landing).TotalMinutes, "min"));
        yield return block with { Unit = "min" };
    }

    private static WorkingStep Step(string name, string formula, double value, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "time", Name = name, Formula = formula, Value = value, Unit = "min after 00:00 UTC", Inputs = inputs };

    private static double MinutesOfDay(Instant at) => at.InUtc().TimeOfDay.NanosecondOfDay / 60e9;
}
