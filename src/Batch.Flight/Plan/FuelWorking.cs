using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Working of the fuel ladder.</summary>
internal static class FuelWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        var fuel = plan.Fuel;
        var rules = plan.Planning.Fuel;
        yield return Taxi(plan);
        yield return Step("trip fuel", "climb + cruise + descent + approach", fuel.Trip, "", [.. Phases(plan)]);
        yield return Step("contingency", "the greater of fraction × trip fuel and the holding floor", fuel.Contingency, rules.ContingencyCitation,
            new WorkingInput("fraction", rules.ContingencyFraction, ""),
            new WorkingInput("trip fuel", fuel.Trip.Value, "lb"),
            new WorkingInput("holding floor", rules.ContingencyFloor.TotalMinutes, "min"));
        foreach (var step in Alternates(plan)) yield return step;
        yield return Step("alternate",
            plan.Alternates.IsEmpty ? "holding where no alternate is filed" : "the farthest filed alternate, missed approach included", fuel.Alternate,
            plan.Alternates.IsEmpty ? rules.WithoutAlternateCitation : rules.AlternateCitation,
            [.. plan.Alternates.Select(alternate => new WorkingInput(alternate.Airport, alternate.Fuel.Value, "lb"))]);
        yield return ReserveFlow(plan);
        yield return Step("final reserve", rules.FinalReserveBasis == ReserveBasis.Cruise ? "cruise flow × time" : "holding flow × time", fuel.FinalReserve,
            rules.FinalReserveCitation,
            new WorkingInput("flow", fuel.FinalReserveFlow.Value, "lb/h"),
            new WorkingInput("time", fuel.FinalReserveTime.TotalMinutes, "min"));
        foreach (var step in Additional(plan)) yield return step;
        yield return Step("fuel required", "taxi + trip + contingency + alternate + final reserve + additional", fuel.Required, plan.Planning.Name,
            new WorkingInput("taxi", fuel.Taxi.Value, "lb"),
            new WorkingInput("trip", fuel.Trip.Value, "lb"),
            new WorkingInput("contingency", fuel.Contingency.Value, "lb"),
            new WorkingInput("alternate", fuel.Alternate.Value, "lb"),
            new WorkingInput("final reserve", fuel.FinalReserve.Value, "lb"),
            new WorkingInput("additional", fuel.Additional.Value, "lb"));
        yield return Step("fuel required on landing", "alternate + final reserve + additional", fuel.RequiredOnLanding, plan.Planning.Name,
            new WorkingInput("alternate", fuel.Alternate.Value, "lb"),
            new WorkingInput("final reserve", fuel.FinalReserve.Value, "lb"),
            new WorkingInput("additional", fuel.Additional.Value, "lb"));
        if (fuel.NeededAfterLanding.Value > 0)
            yield return Step("fuel needed after landing", "what later departures that sell none take, reckoned backward from the last of them",
                fuel.NeededAfterLanding, "");
        yield return Step("discretionary fuel", "the extra beyond the requirement that the fuel plan asks for", fuel.Discretionary, "",
            new WorkingInput("extra", fuel.Discretionary.Value, "lb", plan.Leg.Origin.Cell(nameof(plan.Leg.FuelPlan))));
        yield return Step("fuel aboard", "before + uplift", fuel.Aboard, "",
            new WorkingInput("before", fuel.Before.Value, "lb", plan.Leg.FuelAboard is null ? "" : plan.Leg.Origin.Cell(nameof(plan.Leg.FuelAboard))),
            new WorkingInput("uplift", fuel.Uplift.Value, "lb", plan.Leg.Origin.Cell(nameof(plan.Leg.FuelPlan))));
        yield return Step("fuel at takeoff", "aboard − taxi", fuel.Takeoff, "", new WorkingInput("aboard", fuel.Aboard.Value, "lb"),
            new WorkingInput("taxi", fuel.Taxi.Value, "lb"));
        yield return Step("fuel on landing", "takeoff − trip", fuel.Landing, "", new WorkingInput("takeoff", fuel.Takeoff.Value, "lb"),
            new WorkingInput("trip", fuel.Trip.Value, "lb"));
        var left = fuel.Landing;
        foreach (var (name, amount) in new[] { ("contingency", fuel.Contingency), ("alternate", fuel.Alternate), ("final reserve", fuel.FinalReserve),
            ("additional", fuel.Additional) })
        {
            yield return Step($"fuel left after {name}", "left before − " + name, left - amount, "", new WorkingInput("left before", left.Value, "lb"),
                new WorkingInput(name, amount.Value, "lb"));
            left -= amount;
        }

        if (plan.Profile.CruiseFlow.Value > 0)
        {
            var flow = plan.Profile.CruiseFlow;
            var endurance = Step("endurance", "fuel at takeoff ÷ cruise flow", fuel.Takeoff, "", new WorkingInput("fuel at takeoff", fuel.Takeoff.Value, "lb"),
                new WorkingInput("cruise flow", flow.Value, "lb/h"));
            yield return endurance with { Value = fuel.Takeoff.Value / flow.Value * 60, Unit = "min" };
        }

        if (plan.Type.FuelDensity is { } density)
        {
            var cell = plan.Type.Origin.Cell(nameof(AircraftType.FuelDensity));
            var volume = Step("uplift, volume", "uplift ÷ density", fuel.Uplift, "", new WorkingInput("uplift", fuel.Uplift.Value, "lb"),
                new WorkingInput("density", density, "lb/USG", cell));
            yield return volume with { Value = fuel.Uplift.Value / density, Unit = "USG" };
        }

        yield return Step("fuel margin", "aboard − required", fuel.Margin, "", new WorkingInput("aboard", fuel.Aboard.Value, "lb"),
            new WorkingInput("required", fuel.Required.Value, "lb"));
    }

    private static WorkingStep Taxi(LegPlan.Planned plan)
    {
        var usual = plan.Type.TaxiFuel ?? Pounds.Zero;
        var ofType = new WorkingInput("taxi fuel of the type", usual.Value, "lb", plan.Type.Origin.Cell(nameof(AircraftType.TaxiFuel)));
        return plan.Fuel.Taxi == usual
            ? Step("taxi fuel", "as the type says", plan.Fuel.Taxi, "", ofType)
            : Step("taxi fuel", "taxi fuel of the type × taxi ÷ usual taxi", plan.Fuel.Taxi, "", ofType,
                new WorkingInput("taxi", (plan.Times.Takeoff - plan.Times.OffBlocks).TotalMinutes, "min", plan.Leg.Origin.Cell(nameof(plan.Leg.Taxi))),
                new WorkingInput("usual taxi", (plan.Times.Takeoff - plan.Times.OffBlocks).TotalMinutes * (usual / plan.Fuel.Taxi), "min"));
    }

    /// <summary>The flow of the final reserve: with what its table is read, and what it gives without the bias.</summary>
    private static WorkingStep ReserveFlow(LegPlan.Planned plan)
    {
        var bias = new WorkingInput("burn bias", plan.Aircraft.BurnBias, "", plan.Aircraft.Origin.Cell(nameof(Aircraft.BurnBias)));
        var flow = plan.Fuel.FinalReserveFlow.Value;
        var table = new WorkingInput("flow of the table", flow / (1 + plan.Aircraft.BurnBias), "lb/h");
        var profile = plan.Profile;
        if (plan.Planning.Fuel.FinalReserveBasis == ReserveBasis.Holding && plan.Type.Tables.Holding is { } holding)
        {
            var farthest = plan.Alternates.FirstOrDefault(alternate => alternate.IsFarthest);
            return Flow("holding flow",
                "Holding table at the altitude and the weight on arrival at the farthest alternate, else at the destination × (1 + burn bias)", holding.Name,
                new WorkingInput("weight", (plan.Load.Landing.Weight - (farthest?.Fuel ?? Pounds.Zero)).Value, "lb"), table, bias);
        }

        // The flow of the last step of the cruise, at the weight at its end.
        var last = profile.Slices.Last(slice => slice.Phase == FlightPhase.Cruise);
        return Flow("cruise flow", "Cruise table at the last level, the weight at the end of the cruise and the deviation of its last step × (1 + burn bias)",
            plan.Type.Tables.Cruise.GetValueOrDefault(profile.Setting)?.Name ?? "",
            new WorkingInput("level", last.EndFt, "ft"),
            new WorkingInput("weight", (profile.TakeoffWeight.Value - profile.Slices.TakeWhile(slice => slice.Phase is FlightPhase.Climb or FlightPhase.Cruise)
                .Sum(slice => slice.BurnLb)), "lb"),
            new WorkingInput("temperature", last.Air.Temperature.Value, "°C"),
            new WorkingInput("deviation from the standard temperature", StandardAtmosphere.DeviationK(last.Air.Temperature, new Feet(last.EndFt)), "°C"),
            table,
            bias);

        WorkingStep Flow(string name, string formula, string source, params ImmutableArray<WorkingInput> inputs) =>
            new() { Part = "fuel", Name = name, Formula = formula, Value = flow, Unit = "lb/h", Source = source, Inputs = inputs };
    }

    /// <summary>The farthest filed alternate, each part of each.</summary>
    private static IEnumerable<WorkingStep> Alternates(LegPlan.Planned plan)
    {
        var approach = plan.Type.ApproachFuel ?? Pounds.Zero;
        var biasFactor = 1 + plan.Aircraft.BurnBias;
        foreach (var alternate in plan.Alternates)
        {
            yield return Step($"fuel to {alternate.Airport}",
                "missed approach (the approach allowance once more) × burn bias + climb + cruise + descent + approach", alternate.Fuel, "",
                new WorkingInput("missed approach", approach.Value, "lb", plan.Type.Origin.Cell(nameof(AircraftType.ApproachFuel))),
                new WorkingInput("burn bias", biasFactor, "", plan.Aircraft.Origin.Cell(nameof(Aircraft.BurnBias))),
                new WorkingInput("flight", (alternate.Fuel - approach * biasFactor).Value, "lb"),
                new WorkingInput("level", alternate.Level.Value, "ft"),
                new WorkingInput("distance", alternate.Distance.Value, "NM"),
                new WorkingInput("magnetic course", alternate.MagneticCourse.Value, "deg"),
                new WorkingInput("time", alternate.Time.TotalMinutes, "min"));
        }
    }

    /// <summary>The worst point of each failure, then the amount; nothing where the rules ask for none.</summary>
    private static IEnumerable<WorkingStep> Additional(LegPlan.Planned plan)
    {
        if (!plan.Planning.Fuel.AsksForAdditional) yield break;
        foreach (var point in plan.Fuel.CriticalPoints)
        {
            var failure = point.Failure == CriticalFailure.CabinPressure ? "loss of cabin pressure" : "engine failure";
            yield return Step($"additional for {failure}",
                $"descent + level flight to {point.Airport} + descent and approach + 15 min holding − what the other items leave there", point.Shortfall, "",
                new WorkingInput("point after departure", point.Distance.Value, "NM"),
                new WorkingInput("time since takeoff", point.Elapsed.TotalMinutes, "min"),
                new WorkingInput("latitude", point.Position.LatitudeDeg, "deg N"),
                new WorkingInput("longitude", point.Position.LongitudeDeg, "deg E"),
                new WorkingInput("altitude", point.Altitude.Value, "ft"),
                new WorkingInput("weight", point.Weight.Value, "lb"),
                new WorkingInput($"distance to {point.Airport}", point.AirportDistance.Value, "NM"),
                new WorkingInput("altitude flown on at", point.Level.Value, "ft"),
                new WorkingInput("descent", point.Descent.Value, "lb"),
                new WorkingInput("level flight", point.Cruise.Value, "lb"),
                new WorkingInput("descent and approach", point.Approach.Value, "lb"),
                new WorkingInput("holding", point.Holding.Value, "lb"),
                new WorkingInput("needed", point.Needed.Value, "lb"),
                new WorkingInput("left there", point.Left.Value, "lb"));
        }

        yield return Step("additional", "the greatest of the shortfalls, not below zero", plan.Fuel.Additional, "",
            [.. plan.Fuel.CriticalPoints.Select(point =>
                new WorkingInput(point.Failure == CriticalFailure.CabinPressure ? "loss of cabin pressure" : "engine failure", point.Shortfall.Value, "lb"))]);
    }

    private static IEnumerable<WorkingInput> Phases(LegPlan.Planned plan) =>
        plan.Profile.Slices.GroupBy(slice => slice.Phase).OrderBy(group => group.Key)
            .Select(group => new WorkingInput(group.Key.ToString().ToLowerInvariant(), group.Sum(slice => slice.BurnLb), "lb"));

    private static WorkingStep Step(string name, string formula, Pounds value, string source, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "fuel", Name = name, Formula = formula, Value = value.Value, Unit = "lb", Source = source, Inputs = inputs };
}
