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
    public string Needs => "Legs crew; Logged duty on and off; Operator report and release";

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["rest", "duty"];

    private static readonly Duration Day = Duration.FromHours(24);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.SelectMany(seat => Look(leg, ruling, seat));

    private static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        var done = leg.Plan.Times.OnBlocks + (leg.Operator.Release ?? Duration.Zero);
        var needed = ruling.Amount("rest");
        var (atBest, known) = record.LongestRest(done - Day, done);
        var what = $"Longest rest of {seat.Code} in the 24 hours before this leg is completed:";
        if (known.TotalHours >= needed.Value || atBest.TotalHours < needed.Value)
        {
            yield return ruling.AtLeast(what, (known.TotalHours >= needed.Value ? known : atBest).TotalHours, needed.Value, "h", "required", needed, seat.Cell, leg.Cell(nameof(Leg.OffBlocks)));
        }
        else
        {
            yield return ruling.NotChecked($"the duty of {seat.Code} in the 24 hours before this leg is completed is not logged with its times; {Words.Amount(needed.Value, "h")} of rest are required", seat.Cell);
        }

        if (record.DutyOf(leg.Plan) is { } duty)
        {
            var longest = ruling.Amount("duty");
            yield return ruling.AtMost($"Duty of {seat.Code} to the end of this leg", (done - duty.Report).TotalHours, longest.Value, "h", "usual limit", longest, seat.Cell);
        }
    }
}
