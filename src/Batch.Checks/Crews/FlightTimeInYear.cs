using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>Flight time in the calendar quarter, two consecutive quarters and the calendar year.</summary>
internal sealed class FlightTimeInYear : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-03";

    /// <inheritdoc/>
    public string Title => "Flight time in quarters and year";

    /// <inheritdoc/>
    public string Needs => "Legs crew; Logged";

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["calendar quarter", "two consecutive quarters", "calendar year"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.SelectMany(seat => Look(leg, ruling, seat));

    private static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        var day = leg.Plan.Times.OffBlocks.InZone(leg.Plan.From.Zone).Date;
        var quarter = DutyRecord.QuarterOf(day);
        var periods = new[] { ("calendar quarter", quarter), ("two consecutive quarters", quarter.PlusMonths(-3)), ("calendar year", new LocalDate(day.Year, 1, 1)) };
        var unknown = new List<string>();
        foreach (var (name, from) in periods)
        {
            var limit = ruling.Amount(name);
            var hours = record.FlightTime(from, leg.Plan.Times.OnBlocks, day).TotalHours;
            var answer = ruling.AtMost($"Flight time of {seat.Code} since {Words.Day(from)}", hours, limit.Value, "h", $"limit of the {name}", limit, seat.Cell);
            if (answer.Verdict != Verdict.Pass || record.KnownFrom <= from)
            {
                yield return answer;
            }
            else
            {
                unknown.Add($"{Words.Amount(hours, "h")} of {Words.Amount(limit.Value, "h")} since {Words.Day(from)}");
            }
        }

        if (unknown.Count > 0)
        {
            yield return ruling.NotChecked($"{(record.KnownFrom is { } first ? $"the log of {seat.Code} begins on {Words.Day(first)}" : $"nothing is logged for {seat.Code}")}; known are {Words.List(unknown)}", seat.Cell);
        }
    }
}
