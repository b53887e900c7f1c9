using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Crews;

/// <summary>Whether each pilot has landed at the destination lately: by the airports of the Logged sheet and by the legs of the week before this one.</summary>
internal sealed class Familiarity : ICheck
{
    /// <inheritdoc/>
    public string Id => "ADM-08";

    /// <inheritdoc/>
    public string Title => "Destination familiar";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged", "Logged: airports"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["days"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => Look(leg, ruling, seat));

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var days = ruling.Amount("days");
        var to = leg.Plan.To.Ident;
        var off = leg.Plan.Times.OffBlocks;
        var date = off.InZone(leg.Plan.From.Zone).Date;
        var since = date.PlusDays(-(int)days.Value);
        if (Flown(leg, seat.Code, to, off) is { } flown)
        {
            return ruling.Pass($"{seat.Code} lands at {to} on leg {flown} before this one.", days);
        }

        // Rows of the day itself count: what is logged was flown before.
        var rows = leg.Week.Logged(seat.Code).Where(row => row.Date <= date && !DutyRecord.IsDayOff(row)).ToImmutableArray();
        var last = rows.LastOrDefault(row => row.Airports.Contains(to, StringComparer.OrdinalIgnoreCase));
        if (last is not null && last.Date >= since)
        {
            return ruling.Pass($"{seat.Code} landed at {to} on {Words.Day(last.Date)}, {Words.Count(Period.DaysBetween(last.Date, date), "day", "days")} before this leg; {Words.Amount(days.Value, "days")} are allowed.",
                days, last.Origin.Cell(nameof(LoggedDuty.Airports)));
        }

        if (leg.Duty(seat.Code).Missing(since.AtStartOfDayInZone(leg.Plan.From.Zone).ToInstant(), off) is { } missing)
        {
            return ruling.NotChecked(
                $"{missing}, so whether {seat.Code} landed at {to} in the {Words.Amount(days.Value, "days")} before is not known", seat.Cell);
        }

        if (rows.FirstOrDefault(row => row.Date >= since && row.FlightTime > Duration.Zero && row.Airports.IsEmpty) is { } open)
        {
            return ruling.NotChecked($"the airports of {seat.Code} on {Words.Day(open.Date)} are not logged, so whether {to} was among them is not known",
                open.Origin.Cell(nameof(LoggedDuty.Airports)));
        }

        return ruling.Trips(
            days,
            $"{seat.Code} has not landed at {to} in the {Words.Amount(days.Value, "days")} before this leg{(last is null ? "" : $" (last on {Words.Day(last.Date)})")}: the briefing of the operations manual comes before the flight.",
            seat.Cell,
            leg.Cell(nameof(Leg.To)));
    }

    /// <summary>A planned leg of the pilot that lands at an airport before an instant; null where there is none.</summary>
    private static LegKey? Flown(LegUnderCheck leg, string code, string airport, Instant before) => (leg.Week.Crew(code)?.Steps ?? [])
        .Select(step => leg.Week.Leg(step.Leg)).OfType<LegPlan.Planned>()
        .Where(plan => plan.Key != leg.Plan.Key && plan.Times.OnBlocks <= before && string.Equals(plan.To.Ident, airport, StringComparison.OrdinalIgnoreCase))
        .Select(plan => (LegKey?)plan.Key).LastOrDefault();
}
