using Batch.Checks;
using Batch.Flight.Week;
using Batch.Sheets.Register;

namespace Batch.Sheets;

/// <summary>One row of the compliance register.</summary>
public sealed record RegisterRow
{
    /// <summary>Trip.</summary>
    public required string Trip { get; init; }

    /// <summary>Leg number; 0 where it could not be read.</summary>
    public required int Leg { get; init; }

    /// <summary>What names the leg, also where its number could not be read.</summary>
    public LegKey Key { get; init; }

    /// <summary>Row of the Legs sheet where the leg number could not be read; 0 elsewhere.</summary>
    public int Row { get; init; }

    /// <summary>The leg as a table shows it: its number, or <c>row 5</c> where that could not be read.</summary>
    public string LegWord => UnreadNumber.Word(Leg, Row);

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
