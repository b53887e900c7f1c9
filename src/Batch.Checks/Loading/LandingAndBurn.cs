using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Loading;

/// <summary>Landing weight against its maximum, and the centre of gravity from takeoff to landing and to zero fuel.</summary>
internal sealed class LandingAndBurn : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-05";

    /// <inheritdoc/>
    public string Title => "Landing weight, and centre of gravity through the burn";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs =>
        ["the plan", "Types: landing maximum weight", "Aircraft: arm or moment", "Stations", "FuelArms", "Envelope: takeoff", "Envelope: landing, zero fuel"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var weight = leg.Type.MaximumLanding is { } limit
            ? ruling.AtMost("Landing weight", leg.Plan.Load.Landing.Weight.Value, limit.Value, "lb", "maximum landing weight", null,
                leg.TypeCell(nameof(AircraftType.MaximumLanding)), leg.Cell(nameof(Leg.FuelPlan)))
            : ruling.NotChecked($"the maximum landing weight of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.MaximumLanding)));
        var balance = CentreOfGravity.Look(leg, ruling, test => test.When != "takeoff", "landing, zero fuel and the burn between");
        var tests = leg.Plan.Load.Tests;
        var untested = tests.IsEmpty
            ? []
            : new[] { "during the flight", "landing", "zero fuel" }.Where(state => tests.All(test => test.When != state)).ToImmutableArray();
        return (untested is [] ? balance : balance.Append(ruling.NotChecked(
            $"the centre of gravity {Words.List(untested)} is not tested: the Envelope sheet of {leg.Type.Name} has no envelope for it", leg.TypeCell(""))))
            .Prepend(weight);
    }
}
