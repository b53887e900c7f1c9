using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>Rest between the last duty and this one: as long as that duty was, and a least at the home base and away.</summary>
internal sealed class RestBeforeDuty : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-15";

    /// <inheritdoc/>
    public string Title => "Rest before the duty";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged", "Logged: duty on and off", "Operator: report", "Operator: release", "Crew: base"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["rest at the base", "rest away from the base"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => Look(leg, ruling, seat));

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        if (record.DutyOf(leg.Plan) is not { } duty)
        {
            return ruling.NotChecked($"the week holds no duty of {seat.Code} with this leg", seat.Cell);
        }

        if (duty.Legs[0] != leg.Plan.Key)
        {
            return ruling.NotApplicable($"The rest of {seat.Code} before this duty is looked at with its first leg, {duty.Legs[0]}.");
        }

        if (record.DutyBefore(duty.Report) is not { } last)
        {
            return ruling.NotChecked($"no duty of {seat.Code} before this one is logged with its times", seat.Cell);
        }

        if (seat.Member is not { Base.Length: > 0 } member)
        {
            return ruling.NotChecked($"the base of {seat.Code} is not given, and the rest required depends on it",
                seat.Member?.Origin.Cell(nameof(Flight.Fleet.CrewMember.Base)) ?? seat.Cell);
        }

        var isHome = string.Equals(member.Base, leg.Plan.From.Ident, StringComparison.OrdinalIgnoreCase);
        var least = ruling.Amount(isHome ? "rest at the base" : "rest away from the base");
        var length = (last.To - last.From).TotalHours;
        var isByLength = length > least.Value;
        var answer = ruling.AtLeast(
            $"The rest of {seat.Code} before this duty",
            Math.Max(0, (duty.Report - last.To).TotalHours),
            Math.Max(length, least.Value),
            "h",
            isByLength
                ? $"required: as long as the duty before, which ended {Words.LocalDay(last.To, leg.Plan.From.Zone)}"
                : $"required before a duty that starts {(isHome ? "at the base" : "away from the base")}",
            least,
            seat.Cell,
            leg.Cell(nameof(Flight.Week.Leg.OffBlocks)));
        return answer.Verdict != Verdict.Pass ? answer
            : record.Missing(last.To, duty.Report) is { } missing ? ruling.NotChecked($"{missing}, so the duty before this one is not known", seat.Cell)
            : record.Untimed(last.To, duty.Report) is { } untimed
                ? ruling.NotChecked($"the duty of {seat.Code} on {Words.Day(untimed)} is logged without its times, so the rest after it is not known",
                    seat.Cell)
            : record.Unplanned(last.To, duty.Report) is { } unplanned
                ? ruling.NotChecked($"leg {unplanned.Leg} of {seat.Code} before this duty could not be planned, so the rest after it is not known", seat.Cell)
            : ReportAndRelease.Known(leg, ruling, answer);
    }
}
