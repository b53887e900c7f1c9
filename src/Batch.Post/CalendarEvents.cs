using Batch.Post.Words;

namespace Batch.Post;

/// <summary>Legs as calendar events. They name no passenger: calendars are shared and kept in many places.</summary>
public static class CalendarEvents
{
    private const string Aid = "The sheet in the packet counts, not this entry. Planning aid: the pilot in command decides.";

    /// <summary>The calendar file of a person: every leg the person is told of that is not held, and the dropped ones as cancelled.</summary>
    /// <param name="week">The run.</param>
    /// <param name="issue">What the person is told.</param>
    public static byte[] File(WeekRecord week, CrewIssue issue) => CalendarFile.Write(
        Name(issue),
        week.Operator,
        week.OperatorMail,
        CalendarMethod.Publish,
        week.MadeAt,
        [.. issue.Legs.Where(leg => !leg.IsHeld).Select(leg => Of(leg, issue.Person.Code)), .. Dropped(issue)]);

    /// <summary>The calendar file that takes the dropped legs out, for programs that heed its method; null where there are none.</summary>
    /// <param name="week">The run.</param>
    /// <param name="issue">What the person is told.</param>
    public static byte[]? Cancellation(WeekRecord week, CrewIssue issue) =>
        issue.Dropped.IsEmpty
            ? null
            : CalendarFile.Write(Name(issue), week.Operator, week.OperatorMail, CalendarMethod.Cancel, week.MadeAt, [.. Dropped(issue)]);

    /// <summary>The event of a leg.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="person">Code of the person whose calendar it is for.</param>
    public static CalendarEvent Of(IssuedLeg leg, string person)
    {
        var facts = leg.Facts;
        var isCaptain = string.Equals(facts.Captain, person, StringComparison.OrdinalIgnoreCase);
        string[] lines =
        [
            $"{facts.Key}, {facts.Aircraft}, {facts.From} to {facts.To}",
            leg.Report is { } report ? $"Report {LocalTimes.DayAndClock(LocalTimes.At(report, facts.FromZone))} local time of {facts.From}." : "",
            isCaptain
                ? facts.SecondPilot.Length > 0 ? $"You are captain, second pilot {facts.SecondPilot}." : "You are captain."
                : $"You are second pilot, captain {facts.Captain}.",
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Passengers: {facts.Passengers}."),
            Aid,
        ];
        return new CalendarEvent
        {
            Uid = leg.Uid,
            Sequence = leg.Sequence,
            Start = LocalTimes.Zoned(facts.OffBlocks, facts.FromZone),
            End = LocalTimes.Zoned(Instant.Max(facts.OffBlocks, facts.OnBlocks), facts.ToZone),
            Summary = $"{facts.Key} {facts.From}-{facts.To} {facts.Aircraft}",
            Location = leg.Place.Length > 0 ? $"{leg.Place} ({facts.From})" : facts.From,
            Description = string.Join('\n', lines.Where(line => line.Length > 0)),
        };
    }

    /// <summary>
    /// The name of a leg's event for one person: it begins with trip, leg and the day of the first issue, and stays when the day changes, because the ledger
    /// keeps it.
    /// </summary>
    internal static string Uid(string person, LegFacts leg, string operatorMail)
    {
        var domain = operatorMail.IndexOf('@', StringComparison.Ordinal) is >= 0 and var at ? operatorMail[(at + 1)..] : "tripbatch";
        return $"{leg.Trip}-{leg.Leg.ToString(System.Globalization.CultureInfo.InvariantCulture)}-{NodaTime.Text.LocalDatePattern.Iso.Format(leg.OffBlocks.InUtc().Date)}-{person.ToUpperInvariant()}@{domain}";
    }

    private static string Name(CrewIssue issue) => "Flights of " + issue.Person.Code;

    private static IEnumerable<CalendarEvent> Dropped(CrewIssue issue) => issue.Dropped.Select(leg => Of(leg, issue.Person.Code) with { IsCancelled = true });
}
