using System.Text.Json;
using Batch.Post.Reading;

namespace Batch.Post;

/// <summary>A run as its <c>run.json</c> tells it, as far as the post needs it.</summary>
public sealed record WeekRecord
{
    /// <summary>When the run was made.</summary>
    public required Instant MadeAt { get; init; }

    /// <summary>Name of the operator; may be empty.</summary>
    public string Operator { get; init; } = "";

    /// <summary>Sender address of the operator; empty where the book gives none.</summary>
    public string OperatorMail { get; init; } = "";

    /// <summary>How weights are written in words.</summary>
    public PrintedWeight Weights { get; init; } = PrintedWeight.Pounds;

    /// <summary>Whether every leg of the books is in <see cref="Legs"/>.</summary>
    public bool IsWhole { get; init; } = true;

    /// <summary>Legs in the order of the record.</summary>
    public required ImmutableArray<LegRecord> Legs { get; init; }

    /// <summary>Persons by code: those who fly, and those of the legs.</summary>
    public required ImmutableArray<PersonRecord> Persons { get; init; }

    /// <summary>Trips that are kept from the crew: a leg was not planned, or fails and nobody gave a reason.</summary>
    public IEnumerable<string> HeldTrips => Legs.Where(leg => leg.IsHeld).Select(leg => leg.Trip).Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads a record.</summary>
    /// <param name="run">Root of <c>run.json</c>.</param>
    /// <exception cref="KeyNotFoundException">A fixed name is missing: this is not a record of a run.</exception>
    /// <exception cref="InvalidOperationException">A value is of another kind than the schema says.</exception>
    public static WeekRecord Of(JsonElement run) => RecordReader.Read(run);
}
