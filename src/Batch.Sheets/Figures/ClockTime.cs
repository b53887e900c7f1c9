using System.Globalization;
using Batch.Sheets.Templates;
using NodaTime.Text;

namespace Batch.Sheets.Figures;

/// <summary>An instant with the zone of the place it belongs to: UTC first, local beside.</summary>
/// <param name="At">The instant.</param>
/// <param name="Zone">The zone.</param>
internal sealed record ClockTime(Instant At, DateTimeZone Zone) : IPrintable
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");
    private static readonly LocalDatePattern Day = LocalDatePattern.Create("ddd d MMM", CultureInfo.InvariantCulture);

    [Value("Date in UTC, such as 2026-12-07")]
    public string UtcDate => LocalDatePattern.Iso.Format(InUtc.Date);

    [Value("Day in UTC, such as Mon 7 Dec")]
    public string UtcDay => Day.Format(InUtc.Date);

    [Value("Local date, such as 2026-12-07")]
    public string LocalDate => LocalDatePattern.Iso.Format(Local.Date);

    [Value("Local day, such as Mon 7 Dec")]
    public string LocalDay => Day.Format(Local.Date);

    [Value("Abbreviation of the local zone at this instant, such as EST; UTC−1 where it has none")]
    public string ZoneName => Zone.GetZoneInterval(Minute) is var interval && interval.Name.Length > 0 && interval.Name[0] is not ('+' or '-')
        ? interval.Name
        : "UTC" + interval.WallOffset.ToString("+H:mm", CultureInfo.InvariantCulture).Replace(":00", "", StringComparison.Ordinal).Replace('-', '\u2212');

    /// <summary>The date and time in UTC, rounded to the minute.</summary>
    public LocalDateTime InUtc => Minute.InUtc().LocalDateTime;

    /// <summary>The local date and time, rounded to the minute.</summary>
    public LocalDateTime Local => Minute.InZone(Zone).LocalDateTime;

    private Instant Minute => Instant.FromUnixTimeSeconds((long)Math.Floor((At.ToUnixTimeTicks() / (double)NodaConstants.TicksPerMinute) + 0.5) * 60);

    /// <summary>Time of day in UTC, such as 14:35.</summary>
    public string UtcClock() => Clock.Format(InUtc.TimeOfDay);

    /// <summary>Local time of day, such as 09:35.</summary>
    public string LocalClock() => Clock.Format(Local.TimeOfDay);

    /// <summary>Such as <c>14:35Z</c>.</summary>
    public override string ToString() => UtcClock() + "Z";
}
