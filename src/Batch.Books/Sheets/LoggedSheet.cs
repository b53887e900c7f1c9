using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Logged sheet: what pilots have flown already.</summary>
internal static class LoggedSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Logged", "operator",
        "What pilots have flown already, one row a day of duty. The last day of the sheet, whoever flew on it, is how far it is kept; a day without a row before that was free.");

    private static readonly Column<string> Crew =
        Plan.Add(ColumnKinds.Ident("Crew", nameof(LoggedDuty.Crew), "Code of the pilot.", ColumnKinds.Starred, "Code", "Pilot"));
    private static readonly Column<LocalDate> Date = Plan.Add(ColumnKinds.Date("Date", nameof(LoggedDuty.Date), "Day.", ColumnKinds.Starred));
    private static readonly Column<double> Time = Plan.AddAmount(ColumnKinds.Span(Quantity.Hours, "Flight time", nameof(LoggedDuty.FlightTime),
        "Flight time, block to block; 0 without times of duty for a day off.", ColumnKinds.Starred, "Block time"));
    private static readonly Column<Cells.WrittenTime> On = Plan.Add(ColumnKinds.UtcClock("Duty on", nameof(LoggedDuty.DutyOn), "Start of duty, UTC."));
    private static readonly Column<Cells.WrittenTime> Off = Plan.Add(ColumnKinds.UtcClock("Duty off", nameof(LoggedDuty.DutyOff), "End of duty, UTC."));
    private static readonly Column<ImmutableArray<string>> Airports = Plan.Add(
        ColumnKinds.List("Airports", nameof(LoggedDuty.Airports), "Idents of the airports landed at on the day, with commas.", false, "Airport", "Landed at"));

    private static readonly Column<double> Overrun = Plan.AddAmount(ColumnKinds.Span(Quantity.Minutes, "Overrun", nameof(LoggedDuty.Overrun),
        "How far flight time went over the limit of the day for causes beyond control; 0 for a day within it."));

    /// <summary>The rows in book order.</summary>
    public static ImmutableArray<LoggedDuty> Read(Shelf shelf, Register<CrewMember> crew)
    {
        var logged = ImmutableArray.CreateBuilder<LoggedDuty>();
        foreach (var row in shelf.Rows(Plan))
        {
            var code = row.NeededText(Crew);
            CrewLinks.Resolve(crew, row, Crew, code);
            var date = row.Needed(Date);
            var time = row.Needed(Time);
            if (!row.IsLost && time > 24) row.Complain(State.Caution, Time, "Flight time is more than 24 hours in one day", "hours, or h:mm");
            var on = At(row, On, date, null);
            var off = At(row, Off, date, on);
            crew.Doubt(code, row.Fails);
            if (row.IsLost || crew.Find(code) is null) continue;
            logged.Add(new LoggedDuty
            {
                Crew = code,
                Date = date,
                FlightTime = Spans.OfHours(time),
                DutyOn = on,
                DutyOff = off,
                Overrun = row.Minutes(Overrun),
                Airports = row.Optional(Airports) ?? [],
                Origin = row.Origin
            });
        }

        return logged.ToImmutable();
    }

    // A time without a date is of the day of the row; an end before its start is of the day after.
    private static Instant? At(Row row, Column<Cells.WrittenTime> column, LocalDate date, Instant? after)
    {
        if (row.IsLost || row.Optional(column) is not { } written) return null;
        if (written.Time is not { } time)
        {
            row.Fail(column, $"{column.Name} has no time of day", "a time in UTC such as 0600Z");
            return null;
        }

        var offset = written.Offset ?? Offset.Zero;
        var at = (written.Date ?? date).At(time).WithOffset(offset).ToInstant();
        if (after is { } start && at <= start && written.Date is null) at += Duration.FromDays(1);
        if (after is { } begin && at <= begin)
        {
            row.Fail(column, "Duty off is not after Duty on", "a later time");
            return null;
        }

        return at;
    }
}
