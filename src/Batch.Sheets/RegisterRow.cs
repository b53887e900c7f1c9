using Batch.Checks;
using Batch.Flight.Week;

namespace Batch.Sheets;

/// <summary>One row of the compliance register.</summary>
public sealed record RegisterRow
{
    /// <summary>Trip.</summary>
    public required string Trip { get; init; }

    /// <summary>Leg number.</summary>
    public required int Leg { get; init; }

    /// <summary>What names the leg, also where its number could not be read.</summary>
    public LegKey Key { get; init; }

    /// <summary>Registration as written; may be empty.</summary>
    public required string Aircraft { get; init; }

    /// <summary>Code of the captain as written; may be empty.</summary>
    public string Captain { get; init; } = "";

    /// <summary>Local date of off blocks at the departure; null where it could not be read.</summary>
    public required LocalDate? Date { get; init; }

    /// <summary>The state in words: pass, not applicable, not checked, note, caution, fail or unplanned.</summary>
    public required string State { get; init; }

    /// <summary>Why the leg is flown although this check fails; empty where nobody gave a reason or the check does not fail.</summary>
    public string Override { get; init; } = "";

    /// <summary>The answer.</summary>
    public required Finding Finding { get; init; }
}
