namespace Batch.Flight.Plan;

/// <summary>Working of takeoff and landing distances.</summary>
internal static class RunwayWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan) =>
        Steps("takeoff", plan.From.Ident, plan.Departure, plan.Planning.Runway.TakeoffFactor, plan.Planning.Runway.TakeoffCitation)
            .Concat(Steps("landing", plan.To.Ident, plan.Arrival, plan.Planning.Runway.LandingFactor, plan.Planning.Runway.LandingCitation));

    private static IEnumerable<WorkingStep> Steps(string what, string airport, RunwayResult result, double ruleFactor, string citation)
    {
        if (result is not RunwayResult.Computed { Use: var use }) yield break;
        yield return new WorkingStep
        {
            Part = "runway",
            Name = $"{what} distance, {airport} {use.Runway.Ident}",
            Formula = "table distance × corrections",
            Value = use.CorrectedDistance.Value,
            Unit = "ft",
            Inputs =
            [
                new("weight", use.Weight.Value, "lb"),
                new("pressure altitude", use.PressureAltitude.Value, "ft"),
                new("temperature", use.Temperature.Value, "°C"),
                new("table distance", use.TableDistance.Value, "ft"),
                .. use.Factors.Select(factor => new WorkingInput(factor.Name, factor.Factor, "")),
            ],
        };
        yield return new WorkingStep
        {
            Part = "runway",
            Name = $"{what} distance required, {airport} {use.Runway.Ident}",
            Formula = "distance × rule factor",
            Value = use.Required.Value,
            Unit = "ft",
            Inputs =
            [
                new("distance", use.CorrectedDistance.Value, "ft"),
                new("rule factor", ruleFactor, ""),
                new("available", use.Available.Value, "ft", use.Runway.Origin.Cell(string.Equals(what, "landing", StringComparison.Ordinal) ? nameof(use.Runway.LandingDistance) : nameof(use.Runway.TakeoffRun))),
            ],
            Source = citation,
        };
    }
}
