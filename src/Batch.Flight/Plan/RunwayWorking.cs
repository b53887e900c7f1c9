namespace Batch.Flight.Plan;

/// <summary>Working of takeoff and landing distances.</summary>
internal static class RunwayWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan) =>
        Steps("takeoff", plan.From.Ident, plan.From.Elevation, plan.Departure, plan.Planning.Runway.TakeoffFactor, plan.Planning.Runway.TakeoffCitation)
            .Concat(Steps("landing", plan.To.Ident, plan.To.Elevation, plan.Arrival, plan.Planning.Runway.LandingFactor, plan.Planning.Runway.LandingCitation));

    private static IEnumerable<WorkingStep> Steps(string what, string airport, Feet elevation, RunwayResult result, double ruleFactor, string citation)
    {
        if (result is not RunwayResult.Computed { Use: var use }) yield break;
        var at = $"{airport} {use.Runway.Ident}";
        WorkingInput[] wind =
        [
            new("wind from", use.WindFrom.Value, "deg true"),
            new("wind speed", use.WindSpeed.Value, "kt"),
            new("runway bearing", use.Runway.TrueBearing.Value, "deg true", use.Runway.Origin.Cell(nameof(use.Runway.TrueBearing))),
        ];
        yield return Step($"{what} headwind, {at}", "wind × cosine of its angle to the runway", use.Headwind.Value, "kt",
            [.. wind]) with
        { Source = WindSource(use) };
        yield return Step($"{what} crosswind, {at}", "wind × sine of its angle to the runway, from the right positive", use.Crosswind.Value, "kt",
            [.. wind]) with
        { Source = WindSource(use) };
        yield return Step($"pressure altitude, {at}", "elevation of the threshold with the altimeter setting, where one is known", use.PressureAltitude.Value,
            "ft",
            new WorkingInput("elevation", (use.Runway.ThresholdElevation
                ?? elevation).Value, "ft", use.Runway.ThresholdElevation is null ? "" : use.Runway.Origin.Cell(nameof(use.Runway.ThresholdElevation))));
        WorkingInput[] corrections = [.. use.Factors.Select(factor => new WorkingInput(factor.Name, factor.Factor, ""))];
        yield return Step($"{what} ground roll, {at}", "table roll × corrections", use.CorrectedRoll.Value, "ft",
            [new("table roll", use.TableRoll.Value, "ft"), .. corrections]);
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
                .. corrections,
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
                new("available", use.Available.Value, "ft", use.Runway.Origin.Cell(string.Equals(what, "landing", StringComparison.Ordinal)
                    ? nameof(use.Runway.LandingDistance)
                    : nameof(use.Runway.TakeoffRun))),
            ],
            Source = citation,
        };
        if (use is { TableStop: { } tableStop, CorrectedStop: { } stop, StopAvailable: { } stopAvailable })
        {
            yield return Step($"accelerate-stop distance, {at}", "table distance × corrections of the takeoff", stop.Value, "ft",
                new WorkingInput("table distance", tableStop.Value, "ft"),
                new WorkingInput("available", stopAvailable.Value, "ft", use.Runway.Origin.Cell(nameof(use.Runway.AccelerateStop))));
        }

        yield return Step($"{what} distance to spare, {at}", "available − required", (use.Available - use.Required).Value, "ft",
            new WorkingInput("available", use.Available.Value, "ft"), new WorkingInput("required", use.Required.Value, "ft"));
        yield return Step($"{what} room, {at}", "the least of what is available less what is required", use.Margin.Value, "ft");
        if (use.GreatestWeight is { } weight)
        {
            yield return Step(
                $"{what} greatest weight, {at}", use.IsGreatestWeightTableEnd
                    ? "the last weight of the table; the runway would bear more"
                    : "the weight at which what is required is what is available, by halving in the table", weight.Value, "lb",
                new WorkingInput("pressure altitude", use.PressureAltitude.Value, "ft"), new WorkingInput("temperature", use.Temperature.Value, "°C"),
                new WorkingInput("available", use.Available.Value, "ft"));
        }

        if (use.HighestTemperature is { } temperature)
        {
            yield return Step($"{what} highest temperature, {at}", "the temperature at which what is required is what is available, by halving in the table",
                temperature.Value, "°C",
                new WorkingInput("pressure altitude", use.PressureAltitude.Value, "ft"), new WorkingInput("weight", use.Weight.Value, "lb"),
                new WorkingInput("available", use.Available.Value, "ft"));
        }

        foreach (var speed in use.Speeds)
            yield return Step($"{what} speed {speed.Name}, {at}", "Speeds table at the weight", speed.Speed.Value, "kt",
                new WorkingInput("weight", use.Weight.Value, "lb"));
    }

    private static string WindSource(RunwayUse use) =>
        use.IsWindAssumed ? "no surface wind known: calm" : use.IsWindFromAloft ? "no surface wind known: the wind aloft" : "report or forecast of the airport";

    private static WorkingStep Step(string name, string formula, double value, string unit, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "runway", Name = name, Formula = formula, Value = value, Unit = unit, Inputs = inputs };
}
