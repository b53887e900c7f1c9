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
    public ImmutableArray<string> Needs => ["Crew", "Crew: third last landing", "Crew: third last night landing"];

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
        var captain = leg.Seats.First();
        if (captain.Member is not { } member)
        {
            yield return ruling.NotChecked($"the captain {captain.Code} is not in the Crew sheet", captain.Cell);
            yield break;
        }

        var times = leg.Plan.Times;
        var byNight = IsDeepNight(times.Takeoff, leg.Plan.From) || IsDeepNight(times.Landing, leg.Plan.To);
        if (!byNight)
        {
            // A set of landings at night satisfies the rule for the day.
            var last = member.ThirdLastNightLanding is { } night && (member.ThirdLastLanding is null || night > member.ThirdLastLanding) ? night : member.ThirdLastLanding;
            yield return Look(leg, ruling, captain, "landing", last, member.Origin.Cell(nameof(CrewMember.ThirdLastLanding)));
        }
        else
        {
            yield return Look(leg, ruling, captain, "landing at night", member.ThirdLastNightLanding, member.Origin.Cell(nameof(CrewMember.ThirdLastNightLanding)));
        }
    }

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat captain, string what, LocalDate? third, string cell)
    {
        if (third is not { } last)
        {
            return ruling.NotChecked($"the third last {what} of {captain.Code} is not given", cell);
        }

        var days = ruling.Amount("days");
        var ago = Period.DaysBetween(last, leg.EndDate);
        return ruling.AtMost($"The third last {what} of {captain.Code}", ago, days.Value, "days", "limit", days, cell, captain.Cell) with
        {
            Text = $"The third last {what} of {captain.Code} was on {Words.Day(last)}, {Words.Count(ago, "day", "days")} before the day of this leg; the limit is {Words.Amount(days.Value, "days")}.",
        };
    }

    /// <summary>Whether an instant lies between one hour after sunset and one hour before sunrise.</summary>
    private static bool IsDeepNight(Instant at, Airport airport) =>
        Sun.IsBetweenSunsetAndSunrise(at - Hour, airport.Position) && Sun.IsBetweenSunsetAndSunrise(at, airport.Position) && Sun.IsBetweenSunsetAndSunrise(at + Hour, airport.Position);
}
