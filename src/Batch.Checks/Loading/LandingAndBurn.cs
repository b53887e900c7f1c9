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
    public string Needs => "Types landing maximum weight; Aircraft arm or moment; Stations; FuelArms; Envelope";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var weight = leg.Type.MaximumLanding is { } limit
            ? ruling.AtMost("Landing weight", leg.Plan.Load.Landing.Weight.Value, limit.Value, "lb", "maximum landing weight", null, leg.TypeCell(nameof(AircraftType.MaximumLanding)), leg.Cell(nameof(Leg.FuelPlan)))
            : ruling.NotChecked($"the maximum landing weight of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.MaximumLanding)));
        return CentreOfGravity.Look(leg, ruling, test => test.When != "takeoff", "landing, zero fuel and the burn between").Prepend(weight);
    }
}
