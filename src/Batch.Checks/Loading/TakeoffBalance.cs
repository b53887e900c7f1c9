using Batch.Checks.Rules;

namespace Batch.Checks.Loading;

/// <summary>Centre of gravity at takeoff against the envelope.</summary>
internal sealed class TakeoffBalance : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-04";

    /// <inheritdoc/>
    public string Title => "Centre of gravity at takeoff";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Aircraft: arm or moment", "Stations", "FuelArms", "Envelope: takeoff"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => CentreOfGravity.Look(leg, ruling, test => test.When == "takeoff", "takeoff");
}
