using Batch.Flight.Plan;

namespace Batch.Checks;

/// <summary>A planned week with the answers of all checks.</summary>
public sealed record CheckedWeek
{
    /// <summary>The plan.</summary>
    public required PlannedWeek Plan { get; init; }

    /// <summary>Name of the rule set with its date, as printed on every sheet.</summary>
    public required string RuleSet { get; init; }

    /// <summary>Every entry of the rule set.</summary>
    public ImmutableArray<RuleText> Rules { get; init; } = [];

    /// <summary>Legs in the order of the plan.</summary>
    public required ImmutableArray<CheckedLeg> Legs { get; init; }

    /// <summary>Trips that are kept from the crew, by name: one leg held holds the whole trip.</summary>
    public IEnumerable<string> HeldTrips => Legs.Where(leg => leg.IsHeld).Select(leg => leg.Plan.Key.Trip).Distinct(StringComparer.OrdinalIgnoreCase)
        .Order(StringComparer.Ordinal);

    /// <summary>Duty, flight time and rest by person, in the order of the plan.</summary>
    public ImmutableArray<DutyTable> DutyTables { get; init; } = [];
}
