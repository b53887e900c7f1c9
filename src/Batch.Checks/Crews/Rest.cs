using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Crews;

/// <summary>Rest in the 24 hours before the planned completion, and the length of the duty.</summary>
internal sealed class Rest : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-02";

    /// <inheritdoc/>
    public string Title => "Rest and duty";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged", "Logged: duty on and off", "Operator: report", "Operator: release"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["rest", "duty"];

    private static readonly Duration Day = Duration.FromHours(24);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) =>
        ruling.AmountOrNone("rest") is { } rest && ruling.AmountOrNone("duty") is { } duty
            ? leg.Seats.SelectMany(seat => Look(leg, ruling, seat, rest, duty))
            : [ruling.LeftToOperator("The least rest in 24 hours and the longest duty", "hours of rest / of duty, such as 10/14")];

    private static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat, RuleAmount needed, RuleAmount longest)
    {
        var record = leg.Duty(seat.Code);
        var done = leg.Plan.Times.OnBlocks + (leg.Operator.Release ?? Duration.Zero);
        var (atBest, known) = record.LongestRest(done - Day, done);
        var what = $"The longest rest of {seat.Code} in the 24 hours to the release after this leg";
        if (known.TotalHours >= needed.Value || atBest.TotalHours < needed.Value)
        {
            yield return ReportAndRelease.Known(leg, ruling, ruling.AtLeast(what, (known.TotalHours >= needed.Value ? known : atBest).TotalHours, needed.Value,
                "h", "required", needed, seat.Cell, leg.Cell(nameof(Leg.OffBlocks))));
        }
        else
        {
            yield return ruling.NotChecked($"{record.Missing(done - Day, done) ?? $"the duty of {seat.Code} in the 24 hours to the release after this leg is not logged with its times"}; {Words.Amount(needed.Value, "h")} of rest are required in them", seat.Cell);
        }

        if (record.DutyOf(leg.Plan) is { } duty)
        {
            yield return ReportAndRelease.Known(leg, ruling, ruling.AtMost($"The duty of {seat.Code} to the release after this leg",
                (done - duty.Report).TotalHours, longest.Value, "h", "usual limit", longest, seat.Cell));
        }
    }
}
