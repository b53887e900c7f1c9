using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Alternates;

/// <summary>Whether the destination of a leg under IFR has an instrument approach.</summary>
internal sealed class ApproachExists : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-05";

    /// <inheritdoc/>
    public string Title => "Instrument approach at the destination";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Airports: instrument approach"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var to = leg.Plan.To;
        var kind = to.ApproachKind.Trim();
        var cell = to.Origin.Cell(nameof(Airport.ApproachKind));
        yield return kind.Length == 0
            ? ruling.NotChecked($"whether {to.Ident} has an instrument approach is not given", cell)
            : string.Equals(kind, "none", StringComparison.OrdinalIgnoreCase)
            ? ruling.Trips($"{to.Ident} has no instrument approach, and the leg is under IFR.", cell, leg.Cell(nameof(Leg.Rules)))
            : ruling.Pass($"{to.Ident} has an instrument approach: {kind}.", null, cell);
    }
}
