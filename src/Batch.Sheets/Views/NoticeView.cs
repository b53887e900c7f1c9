using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A notice that holds during the leg.</summary>
internal sealed record NoticeView
{
    [Value("What it is about")]
    public required string Subject { get; init; }

    [Value("Effect in words")]
    public required string Effect { get; init; }

    [Value("Text as written")]
    public required string Text { get; init; }

    [Value("Start; nothing for open; its local time is UTC")]
    public required ClockTime? From { get; init; }

    [Value("End; nothing for open; its local time is UTC")]
    public required ClockTime? Until { get; init; }

    public static NoticeView Of(Notice notice) => new()
    {
        Subject = notice.Subject,
        Effect = Words.Of(notice.Effect),
        Text = notice.Text,
        From = notice.From is { } from ? new ClockTime(from, DateTimeZone.Utc) : null,
        Until = notice.To is { } to ? new ClockTime(to, DateTimeZone.Utc) : null,
    };
}
