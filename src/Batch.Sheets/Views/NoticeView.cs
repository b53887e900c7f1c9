using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A notice that holds during the leg.</summary>
internal sealed record NoticeView
{
    [Value("What it is about; several that one text closes or limits alike stand in one notice, such as XAND 05, XAND 23")]
    public required string Subject { get; init; }

    [Value("Effect in words")]
    public required string Effect { get; init; }

    [Value("Text as written")]
    public required string Text { get; init; }

    [Value("Start; nothing for open; its local time is UTC")]
    public required ClockTime? From { get; init; }

    [Value("End; nothing for open; its local time is UTC")]
    public required ClockTime? Until { get; init; }

    /// <summary>The notices, those that say the same of several subjects gathered into one.</summary>
    /// <param name="notices">Notices, in order.</param>
    public static ImmutableArray<NoticeView> Gathered(IEnumerable<Notice> notices) =>
        [.. notices.GroupBy(notice => (notice.Effect, notice.Text, notice.From, notice.To))
            .Select(alike => Of(alike.First(), string.Join(", ", alike.Select(notice => notice.Subject).Distinct(StringComparer.Ordinal))))];

    private static NoticeView Of(Notice notice, string subject) => new()
    {
        Subject = subject,
        Effect = Words.Of(notice.Effect),
        Text = notice.Text,
        From = notice.From is { } from ? new ClockTime(from, DateTimeZone.Utc) : null,
        Until = notice.To is { } to ? new ClockTime(to, DateTimeZone.Utc) : null,
    };
}
