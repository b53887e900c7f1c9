using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Crews;

/// <summary>A longer rest after a day whose flight time went over its limit for causes beyond control.</summary>
internal sealed class RestAfterOverrun : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-04";

    /// <inheritdoc/>
    public string Title => "Rest after an overrun";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Logged", "Logged: overrun, where more was flown than one pilot may", "Logged: duty off", "Operator: report"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => Look(leg, ruling, seat));

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        if (leg.Duty(seat.Code).DutyOf(leg.Plan) is not { } duty)
        {
            return ruling.NotChecked($"the week holds no duty of {seat.Code} with this leg", seat.Cell);
        }

        if (leg.Week.Crew(seat.Code)?.Duties.FirstOrDefault() is { } first && first.Report < duty.Report)
        {
            return ruling.NotApplicable($"The duty of {seat.Code} before this one is a planned one; whether it overran is known after it.");
        }

        // On the day of this duty a row without its end may have ended before it: where that would ask for a longer rest nobody can say how long it was.
        var today = duty.Report.InZone(leg.Plan.From.Zone).Date;
        if (leg.Week.Logged(seat.Code).LastOrDefault(row => row.DutyOff is null && row.Date == today && !DutyRecord.IsDayOff(row)) is { } open
            && After(leg, ruling, seat, open, duty.Report) is { Verdict: Verdict.NotChecked } unknown)
        {
            return unknown;
        }

        var before = leg.Week.Logged(seat.Code).Where(row => (row.DutyOff ?? EndOf(leg, row)) <= duty.Report).OrderBy(row => row.DutyOff ?? EndOf(leg, row))
            .ToImmutableArray();
        var last = Running(leg, seat, duty.Report) ?? before.LastOrDefault(row => !DutyRecord.IsDayOff(row)) ?? before.LastOrDefault();
        return last is null
            ? ruling.NotChecked($"nothing is logged for {seat.Code} before this duty", seat.Cell)
            : leg.Duty(seat.Code).Missing(last.DutyOff ?? EndOf(leg, last), duty.Report) is { } missing
            ? ruling.NotChecked($"{missing}, so whether the duty before this one overran is not known", seat.Cell)
            : After(leg, ruling, seat, last, duty.Report);
    }

    /// <summary>A logged duty, not the same flying as a planned one, that has begun and not ended at a report; null where there is none.</summary>
    private static LoggedDuty? Running(LegUnderCheck leg, LegUnderCheck.Seat seat, Instant report) =>
        leg.Duty(seat.Code).DutyBefore(report) is { } before && before.To > report
            ? leg.Week.Logged(seat.Code).FirstOrDefault(row => row.DutyOn == before.From && row.DutyOff == before.To)
            : null;

    private static Finding After(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat, LoggedDuty last, Instant report)
    {
        var limit = ruling.Amount("flight time that is no overrun");
        if (DutyRecord.IsDayOff(last))
        {
            return ruling.Pass($"Only days off are logged for {seat.Code} before this duty, the last on {Words.Day(last.Date)}: no overrun.", limit);
        }

        var cell = last.Origin.Cell(nameof(LoggedDuty.Overrun));
        if (last.Overrun is not { } overrun)
        {
            return last.FlightTime.TotalHours <= limit.Value + Ruling.Noise
                ? ruling.Pass($"{seat.Code} flew {Words.Amount(last.FlightTime.TotalHours, "h")} on {Words.Day(last.Date)}, no overrun.", limit)
                : ruling.NotChecked(
                    $"{seat.Code} flew {Words.Amount(last.FlightTime.TotalHours, "h")} on {Words.Day(last.Date)}, and whether that was an overrun is not given",
                    cell);
        }

        if (overrun <= Duration.Zero)
        {
            return ruling.Pass($"The duty of {seat.Code} on {Words.Day(last.Date)} had no overrun.", limit);
        }

        var rest = ruling.Amount(overrun.TotalMinutes <= 30
            ? "rest after 30 minutes over or less"
            : overrun.TotalMinutes <= 60 ? "rest after 60 minutes over or less" : "rest after more than 60 minutes over");
        return last.DutyOff is { } off
            ? ReportAndRelease.Known(leg, ruling, ruling.AtLeast($"Rest of {seat.Code} after the overrun of {Words.Time(overrun)} on {Words.Day(last.Date)}",
                Math.Max((report - off).TotalHours, 0), rest.Value, "h", "required", rest, cell, seat.Cell))
            : ruling.NotChecked($"{seat.Code} overran by {Words.Time(overrun)} on {Words.Day(last.Date)}, and when that duty ended is not given; {Words.Amount(rest.Value, "h")} of rest are required",
                last.Origin.Cell(nameof(LoggedDuty.DutyOff)));
    }

    private static Instant EndOf(LegUnderCheck leg, LoggedDuty row) => row.Date.PlusDays(1).AtStartOfDayInZone(leg.Plan.From.Zone).ToInstant();
}
