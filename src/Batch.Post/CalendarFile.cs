using Batch.Post.Calendars;

namespace Batch.Post;

/// <summary>Writes calendar files: iCalendar, RFC 5545, with the time zones they use.</summary>
/// <remarks>
/// Written by hand because the library at hand breaks characters outside the basic plane where it folds a line, and gives zones without summer time a yearly
/// change; it reads the files in the tests.
/// </remarks>
public static class CalendarFile
{
    /// <summary>Program that made the file, as RFC 5545, 3.7.3 asks.</summary>
    private const string Product = "-//tripbatch//Crew calendar//EN";

    /// <summary>A calendar file in UTF-8, lines ended by CR LF, folded at 75 octets.</summary>
    /// <remarks>RFC 5546 wants an organizer with every method: without an address of the operator the file names no method.</remarks>
    /// <param name="name">Name of the calendar, such as <c>Flights of RIM</c>.</param>
    /// <param name="organizer">The operator.</param>
    /// <param name="organizerMail">Mail address of the operator; empty where there is none.</param>
    /// <param name="method">What the reader is to do.</param>
    /// <param name="stamp">When the file is made.</param>
    /// <param name="events">The events.</param>
    public static byte[] Write(string name, string organizer, string organizerMail, CalendarMethod method, Instant stamp,
        IReadOnlyCollection<CalendarEvent> events)
    {
        var lines = new ContentLines();
        lines.Word("BEGIN", "VCALENDAR");
        lines.Word("VERSION", "2.0");
        lines.Word("PRODID", Product);
        lines.Word("CALSCALE", "GREGORIAN");
        if (organizerMail.Length > 0) lines.Word("METHOD", method switch { CalendarMethod.Publish => "PUBLISH", CalendarMethod.Cancel => "CANCEL" });
        lines.Text("X-WR-CALNAME", name);
        ZoneLines.Write(lines, events);
        foreach (var item in events) Event(lines, item, organizer, organizerMail, stamp);
        lines.Word("END", "VCALENDAR");
        return lines.ToUtf8();
    }

    private static void Event(ContentLines lines, CalendarEvent item, string organizer, string organizerMail, Instant stamp)
    {
        lines.Word("BEGIN", "VEVENT");
        lines.Text("UID", item.Uid);
        lines.Number("SEQUENCE", item.Sequence);
        lines.Utc("DTSTAMP", stamp);
        lines.Local("DTSTART", item.Start);
        lines.Local("DTEND", item.End);
        lines.Word("STATUS", item.IsCancelled ? "CANCELLED" : "CONFIRMED");
        if (organizerMail.Length > 0) lines.Address("ORGANIZER", organizer, organizerMail);
        lines.Text("SUMMARY", item.Summary);
        if (item.Location.Length > 0) lines.Text("LOCATION", item.Location);
        if (item.Description.Length > 0) lines.Text("DESCRIPTION", item.Description);
        lines.Word("TRANSP", item.IsCancelled ? "TRANSPARENT" : "OPAQUE");
        lines.Word("END", "VEVENT");
    }
}
