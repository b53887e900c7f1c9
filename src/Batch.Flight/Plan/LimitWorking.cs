using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Working of the most fuel and the payload that can be added: every limit with what it leaves.</summary>
internal static class LimitWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        var (zeroFuel, taxi, trip) = (plan.Load.ZeroFuel.Weight, plan.Fuel.Taxi, plan.Fuel.Trip);
        var (departure, arrival) = (Weight(plan.Departure), Weight(plan.Arrival));
        foreach (var (name, limit, weight) in new[]
                 {
                     ("zero-fuel weight", plan.Type.MaximumZeroFuel, zeroFuel), ("ramp weight", plan.Type.MaximumRamp, plan.Load.Ramp.Weight),
                     ("takeoff weight", plan.Type.MaximumTakeoff, plan.Load.Takeoff.Weight),
                     ("landing weight", plan.Type.MaximumLanding, plan.Load.Landing.Weight),
                 })
        {
            if (limit is not { } most) continue;
            yield return new WorkingStep
            {
                Part = "limit",
                Name = "margin of the " + name,
                Formula = "limit − weight",
                Value = (most - weight).Value,
                Unit = "lb",
                Inputs = [new("limit", most.Value, "lb", Cell(plan, name)), new("weight", weight.Value, "lb")],
            };
        }

        yield return new WorkingStep
        {
            Part = "limit",
            Name = "most fuel",
            Formula = plan.Fuel.MostBoundBy.Length > 0
                ? $"the least that a limit leaves for fuel, not below nothing; {plan.Fuel.MostBoundBy} binds"
                : "no limit is known: what is aboard",
            Value = plan.Fuel.Most.Value,
            Unit = "lb",
            Inputs = [.. Inputs(plan, LoadLimits.FuelLimits(plan.Type, zeroFuel, taxi, trip, departure, arrival))],
        };
        if (plan.PayloadSpare is not { } spare) yield break;
        yield return new WorkingStep
        {
            Part = "limit",
            Name = "payload that can be added",
            Formula = $"the least that a limit leaves at the planned fuel; {plan.PayloadSpareBoundBy} binds",
            Value = spare.Value,
            Unit = "lb",
            Inputs = [.. Inputs(plan, LoadLimits.PayloadLimits(plan.Type, zeroFuel, plan.Fuel.Aboard, taxi, trip, departure, arrival))],
        };
    }

    private static IEnumerable<WorkingInput> Inputs(LegPlan.Planned plan, IEnumerable<(Pounds? Value, string Name)> limits) =>
        limits.Where(limit => limit.Value is not null)
            .Select(limit => new WorkingInput("left by " + limit.Name, (limit.Value ?? Pounds.Zero).Value, "lb", Cell(plan, limit.Name)));

    private static string Cell(LegPlan.Planned plan, string limit) => limit switch
    {
        "tank" => plan.Type.Origin.Cell(nameof(AircraftType.UsableFuel)),
        "ramp weight" => plan.Type.Origin.Cell(nameof(AircraftType.MaximumRamp)),
        "takeoff weight" => plan.Type.Origin.Cell(nameof(AircraftType.MaximumTakeoff)),
        "landing weight" => plan.Type.Origin.Cell(nameof(AircraftType.MaximumLanding)),
        "zero-fuel weight" => plan.Type.Origin.Cell(nameof(AircraftType.MaximumZeroFuel)),
        "departure runway" => Cell(plan.Departure),
        "arrival runway" => Cell(plan.Arrival),
        _ => "",
    };

    private static string Cell(RunwayResult result) => result is RunwayResult.Computed { Use.Runway.Origin: var origin } ? origin.ToString() : "";

    private static Pounds? Weight(RunwayResult result) => result is RunwayResult.Computed { Use: var use } ? use.WeightLimit : null;
}
