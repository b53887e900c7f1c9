using System.Globalization;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Working of weights and centres of gravity.</summary>
internal static class WeightWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        var load = plan.Load;
        var empty = new WorkingInput("basic empty", load.BasicEmpty.Weight.Value, "lb", plan.Aircraft.Origin.Cell(nameof(Aircraft.BasicEmptyWeight)));
        yield return Step("zero-fuel weight", "basic empty + every item", load.ZeroFuel.Weight.Value, "lb",
            [empty, .. load.Items.Select((item, i) => new WorkingInput(Label(item, i), item.Weight.Value, "lb", item.Cell))]);
        yield return Step("ramp weight", "zero fuel + block fuel", load.Ramp.Weight.Value, "lb",
            new WorkingInput("zero fuel", load.ZeroFuel.Weight.Value, "lb"), new WorkingInput("block fuel", plan.Fuel.Aboard.Value, "lb"));
        yield return Step("takeoff weight", "ramp − taxi fuel", load.Takeoff.Weight.Value, "lb",
            new WorkingInput("ramp", load.Ramp.Weight.Value, "lb"), new WorkingInput("taxi fuel", plan.Fuel.Taxi.Value, "lb"));
        yield return Step("landing weight", "takeoff − trip fuel", load.Landing.Weight.Value, "lb",
            new WorkingInput("takeoff", load.Takeoff.Weight.Value, "lb"), new WorkingInput("trip fuel", plan.Fuel.Trip.Value, "lb"));
        yield return Step("occupants", "passengers + pilots beyond those in the empty weight", load.Occupants, "persons",
            new WorkingInput("passengers", load.Passengers, "persons"),
            new WorkingInput("pilots", load.Pilots, "persons"),
            new WorkingInput("pilots in the empty weight", plan.Aircraft.PilotsIncluded, "persons",
                plan.Aircraft.Origin.Cell(nameof(Aircraft.PilotsIncluded))));
        yield return Step("weight of the occupants", "persons beyond those in the empty weight", load.OccupantWeight.Value, "lb",
            [.. Items(load, item => item.Kind is LoadItemKind.Pilot or LoadItemKind.Passenger)]);
        yield return Step("bags and cargo", "sum of their weights", load.Baggage.Value, "lb",
            [.. Items(load, item => item.Kind is not (LoadItemKind.Pilot or LoadItemKind.Passenger))]);
        yield return Step("payload", "passengers + bags + cargo", load.Payload.Value, "lb", [.. Items(load, item => item.Kind != LoadItemKind.Pilot)]);
        if (load.Occupants > 0)
        {
            yield return Step("average weight of an occupant", "weight of the occupants ÷ occupants, printed rounded up",
                load.OccupantWeight.Value / load.Occupants, "lb",
                new WorkingInput("weight of the occupants", load.OccupantWeight.Value, "lb"), new WorkingInput("occupants", load.Occupants, "persons"));
        }

        foreach (var station in load.Stations)
        {
            yield return Step($"load at {station.Station.Name}", "sum of what stands there", station.Weight.Value, "lb",
            [
                .. Items(load, item => string.Equals(item.Station, station.Station.Name, StringComparison.OrdinalIgnoreCase)),
                .. station.Station.Maximum is { } most
                    ? new[] { new WorkingInput("greatest weight allowed", most.Value, "lb", station.Station.Origin.Cell(nameof(station.Station.Maximum))) }
                    : [],
                new WorkingInput("arm", station.Station.Arm.Value, "in", station.Station.Origin.Cell(nameof(station.Station.Arm))),
            ]);
        }

        if (load.Items.Any(item => item.Station.Length == 0))
        {
            yield return Step("load without a place", "persons without a seat, bags and cargo without a station",
                load.Items.Where(item => item.Station.Length == 0).Sum(item => item.Weight.Value), "lb",
                [.. Items(load, item => item.Station.Length == 0)]);
        }

        if (!load.HasMoments) yield break;
        yield return Step("basic empty centre of gravity", "moment ÷ weight", load.BasicEmpty.CentreOfGravity.Value, "in",
            new WorkingInput("empty moment", load.BasicEmpty.Moment.Value, "lb·in", plan.Aircraft.Origin.Cell(nameof(Aircraft.BasicEmptyMoment))), empty);
        yield return Step("zero-fuel moment", "empty moment + sum of weight × arm", load.ZeroFuel.Moment.Value, "lb·in",
        [
            new WorkingInput("empty moment", load.BasicEmpty.Moment.Value, "lb·in", plan.Aircraft.Origin.Cell(nameof(Aircraft.BasicEmptyMoment))),
            .. load.Items.Select((item, i) => new WorkingInput($"{Label(item, i)} at {item.Arm.Value.ToString("0.##", CultureInfo.InvariantCulture)} in",
                item.Moment.Value, "lb·in", item.Cell)),
        ]);
        yield return Centre("centre of gravity at zero fuel", load.ZeroFuel, load.ZeroFuel, plan);
        yield return Centre("centre of gravity on the ramp", load.Ramp, load.ZeroFuel, plan);
        yield return Centre("centre of gravity at takeoff", load.Takeoff, load.ZeroFuel, plan);
        yield return Centre("centre of gravity on landing", load.Landing, load.ZeroFuel, plan);
        if (plan.Type.Chord is { } chord)
        {
            foreach (var (when, state) in new[] { ("at zero fuel", load.ZeroFuel), ("at takeoff", load.Takeoff), ("on landing", load.Landing) })
            {
                yield return Step($"centre of gravity {when}, percent of the mean aerodynamic chord", "(arm − leading edge) ÷ chord × 100",
                    chord.PercentAt(state.CentreOfGravity), "%",
                    new WorkingInput("arm", state.CentreOfGravity.Value, "in"),
                    new WorkingInput("leading edge", chord.LeadingEdge.Value, "in", plan.Type.Origin.Cell(nameof(MeanAerodynamicChord.LeadingEdge))),
                    new WorkingInput("chord", chord.Length.Value, "in", plan.Type.Origin.Cell(nameof(MeanAerodynamicChord.Length))));
            }
        }

        foreach (var test in load.Tests)
        {
            yield return Step($"margin of the centre of gravity, {test.When}", "to the nearest edge of the envelope in arm; below zero outside",
                test.ArmMargin.Value, "in",
                new WorkingInput("weight", test.Point.Weight.Value, "lb"), new WorkingInput("arm", test.Point.Arm.Value, "in"),
                new WorkingInput("margin in weight", test.WeightMargin.Value, "lb"));
            foreach (var (name, limit) in new[] { ("forward", test.ForwardLimit), ("aft", test.AftLimit) })
            {
                if (limit is { } edge)
                    yield return Step($"{name} limit of the centre of gravity, {test.When}",
                        "the edge of the envelope at the weight, linear between its corners", edge.Value, "in",
                        new WorkingInput("weight", test.Point.Weight.Value, "lb"));
            }
        }

        if (load.Spread is not { } spread) yield break;
        yield return Centre("centre of gravity at takeoff, passengers as far forward as they can sit", spread.Forward.Takeoff, spread.Forward.ZeroFuel,
            plan) with
        { Source = spread.Assumption };
        yield return Centre("centre of gravity at takeoff, passengers as far aft as they can sit", spread.Aft.Takeoff, spread.Aft.ZeroFuel,
            plan) with
        { Source = spread.Assumption };
    }

    /// <summary>A label without a person's name.</summary>
    private static IEnumerable<WorkingInput> Items(LoadSheet load, Func<LoadItem, bool> isMeant) =>
        load.Items.Select((item, i) => (Item: item, Index: i)).Where(one => isMeant(one.Item))
            .Select(one => new WorkingInput(Label(one.Item, one.Index), one.Item.Weight.Value, "lb", one.Item.Cell));

    private static string Label(LoadItem item, int index) => string.Create(CultureInfo.InvariantCulture,
        $"item {index + 1}, {item.Kind.ToString().ToLowerInvariant()} {(item.Station.Length > 0 ? "in " + item.Station : "without a place")}");

    /// <summary>A centre of gravity: with fuel aboard, its moment read again from the fuel arms of the type.</summary>
    private static WorkingStep Centre(string name, WeightAndBalance state, WeightAndBalance zeroFuel, LegPlan.Planned plan)
    {
        var fuel = state.Weight - zeroFuel.Weight;
        var weight = new WorkingInput("weight", state.Weight.Value, "lb");
        if (fuel.Value == 0)
            return Step(name, "moment ÷ weight", state.CentreOfGravity.Value, "in", new WorkingInput("moment", state.Moment.Value, "lb·in"), weight);
        return Step(name, "(zero-fuel moment + fuel moment) ÷ weight; the fuel moment lies on the straight line between the moments of the two rows of FuelArms around the fuel", state.CentreOfGravity.Value, "in",
            new WorkingInput("zero-fuel moment", zeroFuel.Moment.Value, "lb·in"),
            new WorkingInput("fuel", fuel.Value, "lb"),
            new WorkingInput("fuel moment", new LoadFuelCurve(plan.Type.FuelMoments).Moment(fuel).Value, "lb·in"),
            weight);
    }

    private static WorkingStep Step(string name, string formula, double value, string unit, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "weight", Name = name, Formula = formula, Value = value, Unit = unit, Inputs = inputs };
}
