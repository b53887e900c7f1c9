using Batch.Checks.Rules;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Checks.Crews;

/// <summary>Three landings of the captain within 90 days, at night for a leg in the night.</summary>
internal sealed class Recency : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-08";

    /// <inheritdoc/>
    public string Title => "Recent landings";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Crew", "Crew: third last landing", "Crew: third last night landing", "Types: required pilots, without passengers"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public string Actor => "chief pilot";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["days"];

    private static readonly Duration Hour = Duration.FromHours(1);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        if (ruling.AmountOrNone("days") is null)
        {
            return [ruling.Pass("A leg without passengers on a type for one pilot asks for no recent landings.")];
        }

        var isAll = ruling.Condition("second pilot too") is not null;
        return leg.Seats.Where(seat => seat.IsCaptain || isAll).Select(seat => seat.Member is { } member
            ? Look(leg, ruling, seat, member)
            : ruling.NotChecked($"the {seat.Role} {seat.Code} is not in the Crew sheet", seat.Cell));
    }

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat, CrewMember member)
    {
        var times = leg.Plan.Times;
        if (ruling.Condition("at night by night landings") is not null
            && (IsDeepNight(times.Takeoff, leg.Plan.From) || IsDeepNight(times.Landing, leg.Plan.To)))
        {
            return Look(leg, ruling, seat, "landing at night", member.ThirdLastNightLanding, member.Origin.Cell(nameof(CrewMember.ThirdLastNightLanding)));
        }

        // A set of landings at night satisfies the rule for the day. An old one alone says nothing: there may be later ones by day.
        var isEnough = member.ThirdLastNightLanding is { } night && (member.ThirdLastLanding is { } day
            ? night > day
            : Period.DaysBetween(night, leg.EndDate) <= ruling.Amount("days").Value);
        var last = isEnough ? member.ThirdLastNightLanding : member.ThirdLastLanding;
        return Look(leg, ruling, seat, "landing", last, member.Origin.Cell(nameof(CrewMember.ThirdLastLanding)));
    }

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat pilot, string what, LocalDate? third, string cell)
    {
        if (third is not { } last)
        {
            return ruling.NotChecked($"the third last {what} of {pilot.Code} is not given", cell);
        }

        var days = ruling.Amount("days");
        var ago = Period.DaysBetween(last, leg.EndDate);
        return last > leg.EndDate
            ? ruling.NotChecked($"the third last {what} of {pilot.Code} is dated {Words.Day(last)}, after this leg", cell)
            : ruling.AtMostSaid($"The third last {what} of {pilot.Code} was on {Words.Day(last)}, {Words.Count(ago, "day", "days")} before the day of this leg; the limit is {Words.Amount(days.Value, "days")}.",
                ago, days.Value, "days", days, cell, pilot.Cell);
    }

    /// <summary>Whether an instant lies between one hour after sunset and one hour before sunrise.</summary>
    private static bool IsDeepNight(Instant at, Airport airport) =>
        Sun.IsBetweenSunsetAndSunrise(at - Hour, airport.Position)
            && Sun.IsBetweenSunsetAndSunrise(at, airport.Position)
            && Sun.IsBetweenSunsetAndSunrise(at + Hour, airport.Position);
}
