using System.Globalization;
using Batch.Books.Units;

namespace Batch.Books.Cells;

/// <summary>Reads dates, times of day and instants from text and from a workbook's numbers.</summary>
internal static class ClockReading
{
    /// <summary>The caution about an end without a time of day.</summary>
    public const string EndOfDay = "has no time of day; the end of that day is taken";

    /// <summary>A date.</summary>
    public static Reading<LocalDate> Date(RawCell cell)
    {
        if (cell.Kind == CellKind.Text)
        {
            var written = TimeText.Read(cell.Text);
            return written.IsGood && written.Value is { Date: { } day, Time: { } time } && time == LocalTime.Midnight
                ? Reading<LocalDate>.Good(day)
                : DateText.Read(cell.Text);
        }

        if (cell.Kind != CellKind.Number) return Reading<LocalDate>.Bad(DateText.NoDate, DateText.Expected);
        if (cell.Look == NumberLook.Plain && double.IsInteger(cell.Number) && cell.Number is >= 19500101 and <= 21001231)
        {
            return DateText.Read(cell.Number.ToString("0", CultureInfo.InvariantCulture));
        }

        // Days 18264 to 73415 are 1950 to 2100.
        if (cell.Number is < 18264 or > 73415) return Reading<LocalDate>.Bad(DateText.NoDate, DateText.Expected);
        return Reading<LocalDate>.Good(RawCell.DayZero.PlusDays((int)Math.Floor(cell.Number + (0.5 / 86400))));
    }

    /// <summary>
    /// A date, a time of day or both, with the offset where one is marked or the column has one. A column that is not in UTC takes times marked local.
    /// </summary>
    public static Reading<WrittenTime> Written(RawCell cell, CellSetting setting) =>
        cell.Kind == CellKind.Text && setting.Unit is not { Dimension: Dimension.UniversalTime }
            ? Marked(cell with { Text = TimeText.WithoutLocalMark(cell.Text) }, setting)
            : Marked(cell, setting);

    private static Reading<WrittenTime> Marked(RawCell cell, CellSetting setting)
    {
        var reading = cell.Kind switch
        {
            CellKind.Text => TimeText.Read(cell.Text),
            CellKind.Number => OfNumber(cell),
            CellKind.Blank or CellKind.Boolean or CellKind.Error => Reading<WrittenTime>.Bad(TimeText.NoTime, TimeText.Expected),
        };
        if (setting.Unit is not { Dimension: Dimension.UniversalTime }) return reading;
        // Beside a column in UTC the likely time would not say which clock it is of.
        if (reading.Complaint == TimeText.NoTime) return Reading<WrittenTime>.Bad(TimeText.NoTime, TimeText.Expected);
        if (!reading.IsGood || reading.Value.Offset is not null) return reading;
        return reading.Then(written => written with { Offset = Offset.Zero });
    }

    /// <summary>A local time of day.</summary>
    public static Reading<LocalTime> TimeOfDay(RawCell cell)
    {
        var written = Written(cell, default);
        if (!written.IsGood) return Reading<LocalTime>.Bad(written.Complaint, "a local time such as 07:30 or 0730");
        return written.Value is { Date: null, Time: { } time, Offset: null }
            ? Reading<LocalTime>.Good(time)
            : Reading<LocalTime>.Bad("is not a local time of day", "a local time such as 07:30 or 0730");
    }

    /// <summary>
    /// An instant: UTC unless another offset is marked. A date alone is its start, or, where <paramref name="isEnd"/>, its end, which is said.
    /// </summary>
    public static Reading<Instant> Instant(RawCell cell, CellSetting setting, bool isEnd)
    {
        var written = Marked(cell, setting);
        const string Expected = "a date and time in UTC such as 2026-12-07T06:00Z";
        if (!written.IsGood) return Reading<Instant>.Bad(written.Complaint, written.Complaint == TimeText.NoTime ? Expected : written.Expected);
        if (written.Value.Date is not { } date) return Reading<Instant>.Bad("has no date", Expected);
        var offset = written.Value.Offset ?? Offset.Zero;
        if (written.Value.Time is { } time) return Reading<Instant>.Good(date.At(time).WithOffset(offset).ToInstant());
        var end = date.PlusDays(isEnd ? 1 : 0).AtMidnight().WithOffset(offset).ToInstant();
        return Reading<Instant>.Good(end, isEnd ? EndOfDay : "");
    }

    private static Reading<WrittenTime> OfNumber(RawCell cell)
    {
        var bad = Reading<WrittenTime>.Bad(TimeText.NoTime, cell.Look == NumberLook.Plain ? LikelyTime.Of(cell.Number) : TimeText.Expected);
        if (cell.Number < 0) return bad;
        if (cell.Number < 1 && (cell.Look != NumberLook.Plain || cell.Number > 0 || cell.Text == "0"))
        {
            var seconds = (int)Math.Round(cell.Number * 86400);
            return seconds < 86400 ? Reading<WrittenTime>.Good(new WrittenTime(null, LocalTime.FromSecondsSinceMidnight(seconds), null)) : bad;
        }

        // 0730 typed into a spreadsheet becomes the number 730. 7 may be 0700 or 0007.
        if (cell.Look == NumberLook.Plain && double.IsInteger(cell.Number) && cell.Number is < 1 or (> 24 and <= 2359))
        {
            var time = TimeText.TimeOfDay(cell.Number.ToString("0000", CultureInfo.InvariantCulture));
            return time is null ? bad : Reading<WrittenTime>.Good(new WrittenTime(null, time, null));
        }

        if (cell.Number is < 18264 or > 73415) return bad;
        var at = RawCell.DayZero.AtMidnight().PlusSeconds((long)Math.Round(cell.Number * 86400));
        var hasTime = (cell.Look & NumberLook.Clock) != NumberLook.Plain || at.TimeOfDay != LocalTime.Midnight;
        return Reading<WrittenTime>.Good(new WrittenTime(at.Date, hasTime ? at.TimeOfDay : null, null));
    }
}
