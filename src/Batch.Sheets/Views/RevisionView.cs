using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>How a trip stands to what was issued of it.</summary>
internal sealed record RevisionView
{
    [Value("Revision of the trip as it stands now, 1 or more")]
    public required int Number { get; init; }

    [Value("The last revision that was issued to the crew; the same number where nothing changed")]
    public required int Issued { get; init; }

    [Value("When that revision was first issued; its local time is UTC")]
    public required ClockTime IssuedAt { get; init; }

    [Value("What changed since, one sentence a leg")]
    public required ImmutableArray<string> Changes { get; init; }

    public static RevisionView? Of(SheetRevision? revision) => revision is null ? null : new RevisionView
    {
        Number = revision.Number,
        Issued = revision.Issued,
        IssuedAt = new ClockTime(revision.IssuedAt, DateTimeZone.Utc),
        Changes = revision.Changes,
    };
}
