using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>Rests of 24 consecutive hours in the calendar quarter: those had, and one for each full week that is left.</summary>
internal sealed class LongRests : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-05";

    /// <inheritdoc/>
    public string Title => "Days of rest in the quarter";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged", "Logged: duty on and off"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["rests in the quarter"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => Look(leg, ruling, seat));

    /// <summary>Full weeks from the day after a date to the end of its quarter.</summary>
    /// <param name="quarter">First day of the quarter.</param>
    /// <param name="date">The date.</param>
    public static int WeeksLeft(LocalDate quarter, LocalDate date) => Math.Max(0, (Period.DaysBetween(date, quarter.PlusMonths(3)) - 1) / 7);

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        var zone = leg.Plan.From.Zone;
        var done = leg.Plan.Times.OnBlocks + (leg.Operator.Release ?? Duration.Zero);
        var quarter = DutyRecord.QuarterOf(leg.Plan.Times.OffBlocks.InZone(zone).Date);
        var wanted = ruling.Amount("rests in the quarter");
        var had = record.LongRests(quarter.AtStartOfDayInZone(zone).ToInstant(), done);
        var left = WeeksLeft(quarter, done.InZone(zone).Date);
        var seen = $"{seat.Code} has {Words.Count(had, "rest", "rests")} of 24 hours in the quarter up to the end of this leg; with one in each full week left in it ({Words.Amount(left, "")}) that makes {Words.Amount(had + left, "")}";
        if (record.Missing(quarter.AtStartOfDayInZone(zone).ToInstant(), done) is { } missing)
        {
            return ruling.NotChecked($"{missing}, so the rests since {Words.Day(quarter)} are not known", seat.Cell);
        }

        var answer = had + left >= wanted.Value
            ? ruling.Pass($"{seen}, and {Words.Amount(wanted.Value, "")} are required.", wanted)
            : ruling.Trips(wanted, $"{seen}, and {Words.Amount(wanted.Value, "")} are required.", seat.Cell);
        return answer with { Required = wanted.Value, Actual = had + left, Margin = had + left - wanted.Value, Unit = "rests" };
    }
}
