using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>The Notices sheet: what is closed or not served, and when.</summary>
internal static class NoticesSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Notices", "week", "Notices about airports, runways, fixes, airways and aircraft.");

    private static readonly Column<string> Subject = Plan.Add(
        ColumnKinds.Ident("Subject", nameof(Notice.Subject), "Airport, airport and runway such as XAND 09, fix, airway or registration.", ColumnKinds.Starred));
    private static readonly Column<Instant> From = Plan.Add(ColumnKinds.Start("From", nameof(Notice.From), "Start, UTC; empty for open."));
    private static readonly Column<Instant> To = Plan.Add(ColumnKinds.End("To", nameof(Notice.To), "End, UTC; empty for open."));
    private static readonly Column<NoticeEffect> Effect = Plan.Add(ColumnKinds.Word(
        "Effect",
        nameof(Notice.Effect),
        "What it does.",
        [("closed", NoticeEffect.Closed), ("runway closed", NoticeEffect.RunwayClosed), ("no fuel", NoticeEffect.NoFuel), ("no lights", NoticeEffect.NoLights),
            ("other", NoticeEffect.Other)]));
    private static readonly Column<string> Text = Plan.Add(ColumnKinds.Text("Text", nameof(Notice.Text), "Text of the notice."));

    /// <summary>Reads the notices in book order. One whose times could not be read is kept open at that end: too long is safer than too short.</summary>
    /// <param name="shelf">All books.</param>
    /// <param name="subjects">Airports, fixes, airways and aircraft of the books.</param>
    /// <param name="doubt">Takes the subject of a notice with what of it could not be read.</param>
    public static ImmutableArray<Notice> Read(Shelf shelf, IReadOnlySet<string> subjects, Action<string, IReadOnlyList<Problem>> doubt)
    {
        var notices = ImmutableArray.CreateBuilder<Notice>();
        foreach (var row in shelf.Rows(Plan))
        {
            var notice = new Notice
            {
                Subject = row.NeededText(Subject),
                From = row.Optional(From),
                To = row.Optional(To),
                Effect = row.Optional(Effect) ?? NoticeEffect.Other,
                Text = row.Text(Text),
                Origin = row.Origin,
            };
            if (notice.From >= notice.To) row.Fail(To, "To is not after From", "a later time");
            if (row.Fails.Count > 0) doubt(notice.Subject, row.Fails);
            if (row.IsLost) continue;
            var first = notice.Subject.Split([' ', '/'], 2)[0];
            if (!subjects.Contains(notice.Subject) && !subjects.Contains(first))
            {
                var near = Likely.Words(first, subjects);
                row.Complain(State.Caution, Subject,
                    $"{notice.Subject} is no airport, fix, airway or aircraft of the books; the notice touches no leg" + Likely.Question(near),
                    near.Length > 0 ? string.Join(", ", near) : "an airport, fix, airway or registration");
            }

            notices.Add(notice);
        }

        return notices.ToImmutable();
    }
}
