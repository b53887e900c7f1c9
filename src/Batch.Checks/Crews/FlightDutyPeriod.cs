using System.Globalization;
using Batch.Checks.Rules;
using Batch.Flight.Plan;

namespace Batch.Checks.Crews;

/// <summary>From the report to the last on blocks, against a table by the time of the report and the number of sectors.</summary>
internal sealed class FlightDutyPeriod : ICheck
{
    /// <summary>What the parts of the table begin with in the rule files; the time of the report from which the row holds follows.</summary>
    public const string Row = "report from ";

    /// <inheritdoc/>
    public string Id => "CREW-13";

    /// <inheritdoc/>
    public string Title => "Flight duty period";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Operator: report", "Crew", "Crew: base"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => Look(leg, ruling, seat));

    /// <summary>The row of the table for a time of day: the one that begins last before it; before the first one the last of the day before.</summary>
    /// <param name="ruling">The ruling.</param>
    /// <param name="report">Report by the clocks of the reference place.</param>
    /// <param name="sectors">Sectors, 1 or more.</param>
    public static RuleAmount Limit(Ruling ruling, LocalTime report, int sectors)
    {
        var rows = ruling.Parts(Row)
            .Select(part => (Part: part, From: NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(part[Row.Length..]).Value))
            .OrderBy(row => row.From).ToImmutableArray();
        var row = rows.LastOrDefault(row => row.From <= report, rows[^1]);
        var most = ruling.Amount(row.Part);
        var less = ruling.Amount("less for each sector from the third").Value * Math.Max(0, sectors - 2);
        return most with { Value = Math.Max(most.Value - less, ruling.Amount("never less than").Value) };
    }

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        if (record.DutyOf(leg.Plan) is not { } duty || leg.Week.Leg(duty.Legs[0]) is not LegPlan.Planned first)
        {
            return ruling.NotChecked($"the week holds no duty of {seat.Code} with this leg", seat.Cell);
        }

        if (record.Unplanned(duty.Report, leg.Plan.Times.OnBlocks) is { } unplanned)
        {
            return ruling.NotChecked($"leg {unplanned.Leg} of {seat.Code} in this duty could not be planned, so the number of sectors is open", seat.Cell);
        }

        if (seat.Member is not { } member || !leg.Week.Plan.Input.Airports.TryGetValue(member.Base, out var home))
        {
            return ruling.NotChecked(
                $"the base of {seat.Code} is not given or not in the Airports sheet, so whether {seat.Code} is acclimatised where the duty starts is open",
                seat.Member?.Origin.Cell(nameof(Flight.Fleet.CrewMember.Base)) ?? seat.Cell);
        }

        var away = Math.Abs((first.From.Zone.GetUtcOffset(duty.Report) - home.Zone.GetUtcOffset(duty.Report)).Seconds) / 3600d;
        if (away > ruling.Amount("acclimatised within").Value)
        {
            return ruling.NotChecked($"{seat.Code} reports where the clocks differ by {Words.Amount(away, "h")} from the base; the table is for those who are acclimatised, and that is not known", seat.Cell);
        }

        var report = duty.Report.InZone(first.From.Zone).TimeOfDay;
        var sectors = duty.Legs.IndexOf(leg.Plan.Key) + 1;
        var limit = Limit(ruling, report, sectors);
        var answer = ruling.AtMost(
            $"The flight duty period of {seat.Code} to the end of this leg",
            (leg.Plan.Times.OnBlocks - duty.Report).TotalHours,
            limit.Value,
            "h",
            $"limit for {Words.Count(sectors, "sector", "sectors")} from a report at {report.ToString("HH:mm", CultureInfo.InvariantCulture)} local",
            limit,
            seat.Cell);
        return ReportAndRelease.ReportKnown(leg, ruling, answer);
    }
}
