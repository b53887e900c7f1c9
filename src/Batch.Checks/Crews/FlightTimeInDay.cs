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
    public string Needs => "Legs crew; Logged";

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["one pilot", "two pilots"];

    private static readonly Duration Day = Duration.FromHours(24);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => Look(leg, ruling, seat));

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        var end = leg.Plan.Times.OnBlocks;
        var limit = ruling.Amount(leg.Plan.SecondPilot is null ? "one pilot" : "two pilots");
        var flown = record.FlightTime(end - Day, end).TotalHours;
        var answer = ruling.AtMost($"Flight time of {seat.Code} in the 24 hours to the end of this leg", flown, limit.Value, "h", leg.Plan.SecondPilot is null ? "limit for one pilot" : "limit for two pilots", limit, seat.Cell);
        return answer.Verdict != Verdict.Pass
            ? answer
            : record.Unplanned(end - Day, end) is { } unplanned
            ? ruling.NotChecked($"leg {unplanned.Leg} of {seat.Code} in these 24 hours could not be planned; without it {seat.Code} flies {Words.Amount(flown, "h")}", seat.Cell)
            : record.KnownSince is { } since && since <= end - Day || record.KnownFrom is not null
            ? answer
            : ruling.NotChecked($"nothing is logged for {seat.Code} in the hours before the week; {Words.Amount(flown, "h")} are known of the {Words.Amount(limit.Value, "h")} in 24 hours", seat.Cell);
    }
}
