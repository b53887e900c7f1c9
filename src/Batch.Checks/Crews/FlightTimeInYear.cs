using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>
/// Flight time in the calendar quarter, two consecutive quarters, the calendar year, 28 days and 12 months: those for which the rules name a limit.
/// </summary>
internal sealed class FlightTimeInYear : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-03";

    /// <inheritdoc/>
    public string Title => "Flight time over longer periods";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["calendar quarter", "two consecutive quarters", "calendar year", "28 days", "12 months"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) =>
        Spans(leg.Plan.Times.OffBlocks.InZone(leg.Plan.From.Zone).Date).Any(span => ruling.AmountOrNone(span.Amount) is not null)
            ? leg.Seats.SelectMany(seat => Look(leg, ruling, seat))
            : [ruling.LeftToOperator("The limit of flight time over longer periods",
                "hours in the calendar quarter / two quarters / calendar year / 28 days / 12 months, those that there are, such as //900/100/1000")];

    /// <summary>The times that rules look at, by the name of their amount, with their first day and how they are said.</summary>
    /// <param name="day">Day of the leg.</param>
    internal static ImmutableArray<(string Amount, string Words, LocalDate From)> Spans(LocalDate day) =>
    [
        ("calendar quarter", "the calendar quarter", DutyRecord.QuarterOf(day)),
        ("two consecutive quarters", "two consecutive quarters", DutyRecord.QuarterOf(day).PlusMonths(-3)),
        ("calendar year", "the calendar year", new LocalDate(day.Year, 1, 1)),
        ("28 days", "28 days", day.PlusDays(-27)),
        ("12 months", "12 calendar months", new LocalDate(day.Year, day.Month, 1).PlusMonths(-11)),
    ];

    private static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        var zone = leg.Plan.From.Zone;
        var day = leg.Plan.Times.OffBlocks.InZone(zone).Date;
        var unknown = new List<string>();
        var missing = (string?)null;
        foreach (var (name, words, from) in Spans(day))
        {
            if (ruling.AmountOrNone(name) is not { } limit)
            {
                continue;
            }

            var hours = record.FlightTime(from, leg.Plan.Times.OnBlocks, day).TotalHours;
            var open = record.Missing(from.AtStartOfDayInZone(zone).ToInstant(), leg.Plan.Times.OnBlocks);
            var answer = ruling.AtMost(
                $"The flight time of {seat.Code} since {Words.Day(from)}", hours, limit.Value, "h", $"limit for {words}", limit, seat.Cell);
            if (answer.Verdict != Verdict.Pass || open is null)
            {
                yield return answer;
            }
            else
            {
                missing = open;
                unknown.Add($"{Words.Amount(hours, "h")} of {Words.Amount(limit.Value, "h")} since {Words.Day(from)}");
            }
        }

        if (unknown.Count > 0)
        {
            yield return ruling.NotChecked($"{missing}; known are {Words.List(unknown)}", seat.Cell);
        }
    }
}
