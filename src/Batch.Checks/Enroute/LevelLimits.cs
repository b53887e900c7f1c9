using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Enroute;

/// <summary>Level against the ceiling, and the approval for reduced vertical separation.</summary>
internal sealed class LevelLimits : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-08";

    /// <inheritdoc/>
    public string Title => "Ceiling and reduced vertical separation";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Types: ceiling", "Aircraft: ceiling", "Types: equipment"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => false;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var level = leg.Plan.Profile.Highest;
        var ceilings = new[] { (leg.Type.Ceiling, leg.TypeCell(nameof(AircraftType.Ceiling))),
            (leg.Aircraft.Ceiling, leg.Aircraft.Origin.Cell(nameof(Aircraft.Ceiling))) }
            .Where(pair => pair.Item1 is not null)
            .OrderBy(pair => pair.Item1)
            .ToImmutableArray();
        if (ceilings.IsEmpty)
        {
            yield return ruling.NotChecked($"the ceiling of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.Ceiling)));
        }
        else if (ceilings[0] is ({ } ceiling, var cell))
        {
            yield return ruling.AtMost("The cruise level", level.Value, ceiling.Value, "ft", "ceiling", null, leg.Cell(nameof(Leg.Level)), cell);
        }

        if (ruling.AmountOrNone("reduced separation from") is { } from
            && ruling.AmountOrNone("reduced separation to") is { } to
            && level.Value >= from.Value
            && level.Value <= to.Value)
        {
            yield return ReducedSeparation(leg, ruling, from);
        }
    }

    /// <summary>Flight-plan item 10 says it: W among the equipment, before the stroke.</summary>
    private static Finding ReducedSeparation(LegUnderCheck leg, Ruling ruling, RuleAmount from)
    {
        var equipment = leg.Type.Equipment.Split('/')[0];
        var cell = leg.TypeCell(nameof(AircraftType.Equipment));
        return equipment.Length == 0
            ? ruling.NotChecked($"the level lies where vertical separation is reduced, and the flight-plan equipment of {leg.Type.Name} is not given", cell)
            : equipment.Contains('W', StringComparison.OrdinalIgnoreCase)
                ? ruling.Pass($"The level lies where vertical separation is reduced, and {leg.Type.Name} carries W in its flight-plan equipment.", from, cell)
                : ruling.Trips(from, $"The level lies where vertical separation is reduced, and {leg.Type.Name} carries no W in its flight-plan equipment.",
                    cell, leg.Cell(nameof(Leg.Level)));
    }
}
