using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>Duty in 7, 14 and 28 consecutive days, those of the departure counted from midnight.</summary>
internal sealed class DutyInDays : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-14";

    /// <inheritdoc/>
    public string Title => "Duty in 7, 14 and 28 days";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged", "Logged: duty on and off", "Operator: report", "Operator: release"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["duty in 7 days", "duty in 14 days", "duty in 28 days"];

    /// <summary>The spans by the name of their amount.</summary>
    internal static ImmutableArray<(string Amount, int Days)> Spans { get; } = [("duty in 7 days", 7), ("duty in 14 days", 14), ("duty in 28 days", 28)];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var limits = Spans.SelectMany(span => ruling.AmountOrNone(span.Amount) is { } limit
            ? [(span.Days, limit)]
            : Array.Empty<(int Days, RuleAmount Limit)>()).ToImmutableArray();
        return limits.IsEmpty
            ? [ruling.LeftToOperator("The limit of duty in 7, 14 and 28 days", "hours, those that there are, such as 60/110/190")]
            : leg.Seats.SelectMany(seat => limits.Select(limit => Look(leg, ruling, seat, limit.Days, limit.Limit)));
    }

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat, int days, RuleAmount limit)
    {
        var record = leg.Duty(seat.Code);
        var span = Words.Count(days, "day", "days");
        var zone = leg.Plan.From.Zone;
        var from = leg.Plan.Times.OffBlocks.InZone(zone).Date.PlusDays(1 - days).AtStartOfDayInZone(zone).ToInstant();
        var done = leg.Plan.Times.OnBlocks + (leg.Operator.Release ?? Duration.Zero);
        var hours = record.Duty(from, done).TotalHours;
        var answer = ruling.AtMost(
            $"The duty of {seat.Code} in {span} to the release after this leg", hours, limit.Value, "h", $"limit for {span}", limit, seat.Cell);
        return answer.Verdict != Verdict.Pass ? answer
            : record.Missing(from, done) is { } missing
            ? ruling.NotChecked($"{missing}; {Words.Amount(hours, "h")} of duty are known of the {Words.Amount(limit.Value, "h")} allowed in {span}", seat.Cell)
            : record.Untimed(from, done) is { } untimed
            ? ruling.NotChecked($"the duty of {seat.Code} on {Words.Day(untimed)} is logged without its times; without it {Words.Amount(hours, "h")} of the {Words.Amount(limit.Value, "h")} allowed in {span}", seat.Cell)
            : ReportAndRelease.Known(leg, ruling, answer);
    }
}
