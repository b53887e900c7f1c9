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
    public ImmutableArray<string> Needs => ["the plan", "Logged", "Crew: types, of the second pilot", "Crew: seats, of the second pilot"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["one pilot", "two pilots"];

    private static readonly Duration Day = Duration.FromHours(24);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) =>
        ruling.AmountOrNone(LimitOf(leg)) is { } limit
            ? leg.Seats.Select(seat => Look(leg, ruling, seat, limit))
            : [ruling.LeftToOperator("The limit of flight time in 24 hours", "hours for one pilot / for two, such as 8/10")];

    /// <summary>The amount that holds: that of two pilots where the second is not known to be unqualified, for the rule means two qualified ones.</summary>
    /// <param name="leg">The leg.</param>
    public static string LimitOf(LegUnderCheck leg) => IsSecondQualified(leg) == false ? "one pilot" : "two pilots";

    /// <summary>Whether the second pilot is on the type and may assist, by the Crew sheet; false where there is none, null where it does not say.</summary>
    private static bool? IsSecondQualified(LegUnderCheck leg) => leg.Plan.SecondPilot is not { } second || second.MayAssist == false ? false
        : second.Types.IsEmpty ? null
        : !second.Types.Contains(leg.Type.Name, StringComparer.OrdinalIgnoreCase) ? false
        : second.MayAssist;

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat, RuleAmount limit)
    {
        var record = leg.Duty(seat.Code);
        var end = leg.Plan.Times.OnBlocks;
        var flown = record.FlightTime(end - Day, end).TotalHours;
        var answer = ruling.AtMost($"The flight time of {seat.Code} in the 24 hours to the end of this leg", flown, limit.Value, "h",
            LimitOf(leg) == "one pilot" ? "limit for one pilot" : "limit for two pilots", limit, seat.Cell);
        return answer.Verdict != Verdict.Pass
            ? answer
            : record.Unplanned(end - Day, end) is { } unplanned
            ? ruling.NotChecked(
                $"leg {unplanned.Leg} of {seat.Code} in these 24 hours could not be planned; without it {seat.Code} flies {Words.Amount(flown, "h")}",
                seat.Cell)
            : record.Missing(end - Day, end) is { } missing
            ? ruling.NotChecked($"{missing}; {Words.Amount(flown, "h")} are known of the {Words.Amount(limit.Value, "h")} allowed in these 24 hours", seat.Cell)
            : IsSecondQualified(leg) is null && ruling.AmountOrNone("one pilot") is { } alone && flown > alone.Value + Ruling.Noise
            ? ruling.NotChecked($"whether the second pilot {leg.Plan.Leg.SecondPilot} is qualified on {leg.Type.Name} is not given; {seat.Code} flies {Words.Amount(flown, "h")} in these 24 hours, more than the {Words.Amount(alone.Value, "h")} for one pilot", seat.Cell)
            : answer;
    }
}
