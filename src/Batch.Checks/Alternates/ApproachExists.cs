using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Alternates;

/// <summary>Whether the destination of a leg under IFR has an instrument approach, and where the rules ask the departure too.</summary>
internal sealed class ApproachExists : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-05";

    /// <inheritdoc/>
    public string Title => "Instrument approach";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Airports: instrument approach", "Airports: instrument approach, at the departure"];

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
        if (ruling.Condition("departure") is { } departure)
        {
            yield return Departure(leg, ruling, departure);
        }
    }

    private static Finding Departure(LegUnderCheck leg, Ruling ruling, RuleAmount by)
    {
        var from = leg.Plan.From;
        var kind = from.ApproachKind.Trim();
        var cell = from.Origin.Cell(nameof(Airport.ApproachKind));
        return kind.Length == 0
            ? ruling.NotChecked(by, $"whether {from.Ident} has an instrument approach is not given", cell)
            : string.Equals(kind, "none", StringComparison.OrdinalIgnoreCase)
            ? ruling.Trips(by, $"{from.Ident} has no instrument approach, and the leg departs under IFR: see that the operations specifications allow it, or depart under VFR.", cell, leg.Cell(nameof(Leg.Rules)))
            : ruling.Pass($"{from.Ident} has an instrument approach: {kind}.", by, cell);
    }
}
