using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Loading;

/// <summary>Zero-fuel weight against its maximum.</summary>
internal sealed class ZeroFuelWeight : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-01";

    /// <inheritdoc/>
    public string Title => "Zero-fuel weight";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Types: zero-fuel maximum weight", "Manifest", "Cargo"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return leg.Type.MaximumZeroFuel is { } limit
            ? ruling.AtMost("Zero-fuel weight", leg.Plan.Load.ZeroFuel.Weight.Value, limit.Value, "lb", "maximum zero-fuel weight", null,
                leg.TypeCell(nameof(AircraftType.MaximumZeroFuel)))
            : ruling.NotChecked($"the maximum zero-fuel weight of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.MaximumZeroFuel)));
    }
}
