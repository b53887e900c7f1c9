using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>Flight time in every 24 hours that end with a leg.</summary>
internal sealed class FlightTimeInDay : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-01";

    /// <inheritdoc/>
    public string Title => "Flight time in 24 hours";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["one pilot", "two pilots"];

    private static readonly Duration Day = Duration.FromHours(24);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) =>
        ruling.AmountOrNone(leg.Plan.SecondPilot is null ? "one pilot" : "two pilots") is { } limit
            ? leg.Seats.Select(seat => Look(leg, ruling, seat, limit))
            : [ruling.LeftToOperator("The limit of flight time in 24 hours", "hours for one pilot / for two, such as 8/10")];

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat, RuleAmount limit)
    {
        var record = leg.Duty(seat.Code);
        var end = leg.Plan.Times.OnBlocks;
        var flown = record.FlightTime(end - Day, end).TotalHours;
        var answer = ruling.AtMost($"The flight time of {seat.Code} in the 24 hours to the end of this leg", flown, limit.Value, "h", leg.Plan.SecondPilot is null ? "limit for one pilot" : "limit for two pilots", limit, seat.Cell);
        return answer.Verdict != Verdict.Pass
            ? answer
            : record.Unplanned(end - Day, end) is { } unplanned
            ? ruling.NotChecked($"leg {unplanned.Leg} of {seat.Code} in these 24 hours could not be planned; without it {seat.Code} flies {Words.Amount(flown, "h")}", seat.Cell)
            : record.Missing(end - Day, end) is { } missing
            ? ruling.NotChecked($"{missing}; {Words.Amount(flown, "h")} are known of the {Words.Amount(limit.Value, "h")} allowed in these 24 hours", seat.Cell)
            : answer;
    }
}
