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
            new WorkingInput("pilots in the empty weight", plan.Aircraft.PilotsIncluded, "persons", plan.Aircraft.Origin.Cell(nameof(Aircraft.PilotsIncluded))));
        if (!load.HasMoments) yield break;
        yield return Step("zero-fuel moment", "empty moment + sum of weight × arm", load.ZeroFuel.Moment.Value, "lb·in",
        [
            new WorkingInput("empty moment", load.BasicEmpty.Moment.Value, "lb·in", plan.Aircraft.Origin.Cell(nameof(Aircraft.BasicEmptyMoment))),
            .. load.Items.Select((item, i) => new WorkingInput($"{Label(item, i)} at {item.Arm.Value.ToString("0.##", CultureInfo.InvariantCulture)} in", item.Moment.Value, "lb·in", item.Cell)),
        ]);
        yield return Centre("centre of gravity at zero fuel", load.ZeroFuel);
        yield return Centre("centre of gravity at takeoff", load.Takeoff);
        yield return Centre("centre of gravity on landing", load.Landing);
        if (plan.Type.Chord is { } chord)
        {
            foreach (var (when, state) in new[] { ("at zero fuel", load.ZeroFuel), ("at takeoff", load.Takeoff), ("on landing", load.Landing) })
            {
                yield return Step($"centre of gravity {when}, percent of the mean aerodynamic chord", "(arm − leading edge) ÷ chord × 100", chord.PercentAt(state.CentreOfGravity), "%",
                    new WorkingInput("arm", state.CentreOfGravity.Value, "in"),
                    new WorkingInput("leading edge", chord.LeadingEdge.Value, "in", plan.Type.Origin.Cell(nameof(MeanAerodynamicChord.LeadingEdge))),
                    new WorkingInput("chord", chord.Length.Value, "in", plan.Type.Origin.Cell(nameof(MeanAerodynamicChord.Length))));
            }
        }

        foreach (var test in load.Tests)
        {
            yield return Step($"margin of the centre of gravity, {test.When}", "to the nearest edge of the envelope in arm; below zero outside", test.ArmMargin.Value, "in",
                new WorkingInput("weight", test.Point.Weight.Value, "lb"), new WorkingInput("arm", test.Point.Arm.Value, "in"), new WorkingInput("margin in weight", test.WeightMargin.Value, "lb"));
        }

        if (load.Spread is not { } spread) yield break;
        yield return Centre("centre of gravity at takeoff, passengers as far forward as they can sit", spread.Forward.Takeoff) with { Source = spread.Assumption };
        yield return Centre("centre of gravity at takeoff, passengers as far aft as they can sit", spread.Aft.Takeoff) with { Source = spread.Assumption };
    }

    /// <summary>A label without a person's name.</summary>
    private static string Label(LoadItem item, int index) => string.Create(CultureInfo.InvariantCulture, $"item {index + 1}, {item.Kind.ToString().ToLowerInvariant()} in {item.Station}");

    private static WorkingStep Centre(string name, WeightAndBalance state) => Step(name, "moment ÷ weight", state.CentreOfGravity.Value, "in",
        new WorkingInput("moment", state.Moment.Value, "lb·in"), new WorkingInput("weight", state.Weight.Value, "lb"));

    private static WorkingStep Step(string name, string formula, double value, string unit, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "weight", Name = name, Formula = formula, Value = value, Unit = unit, Inputs = inputs };
}
