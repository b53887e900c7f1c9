using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Alternates;

/// <summary>Higher minima for a captain with few hours in type.</summary>
internal sealed class HighMinimaCaptain : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-06";

    /// <inheritdoc/>
    public string Title => "Captain new to the type";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Crew: hours in type"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["hours in type"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var captain = leg.Seats.First();
        var limit = ruling.Amount("hours in type");
        var cell = captain.Member?.Origin.Cell(nameof(CrewMember.HoursInType)) ?? captain.Cell;
        if (captain.Member?.HoursInType is not { } hours)
        {
            yield return ruling.NotChecked($"the hours in type of {captain.Code} are not given", cell);
            yield break;
        }

        var isEnough = hours >= limit.Value;
        yield return (isEnough
            ? ruling.Pass($"{captain.Code} has {Words.Amount(hours, "h")} in type.", limit, cell)
            : ruling.Trips(limit, $"{captain.Code} has {Words.Amount(hours, "h")} in type, fewer than {Words.Amount(limit.Value, "h")}: landing minima are 100 ft and 1/2 mile higher.", cell))
            with
        { Required = limit.Value, Actual = hours, Margin = hours - limit.Value, Unit = "h" };
        if (!isEnough && ruling.AmountOrNone("higher ceiling") is { } ceiling && ruling.AmountOrNone("higher visibility") is { } visibility)
        {
            yield return Raised(leg, ruling, ceiling, visibility);
        }
    }

    /// <summary>The forecast against the higher minima; they go no higher than those of the airport as an alternate.</summary>
    private static Finding Raised(LegUnderCheck leg, Ruling ruling, RuleAmount ceiling, RuleAmount visibility)
    {
        var to = leg.Plan.To;
        if (to is not { ApproachMinimum: { } minimum, ApproachVisibilityM: { } metres })
        {
            return ruling.NotChecked($"the landing minima of {to.Ident} are not given, so whether the higher ones are met is open",
                to.Origin.Cell(nameof(Airport.ApproachMinimum)));
        }

        var (mostFt, mostM) = to.ApproachKind.Trim().Length == 0 ? (double.PositiveInfinity, double.PositiveInfinity)
            : (ruling.Amount(AlternateForecast.KindOf(to) + " ceiling").Value,
                Visibilities.Metres(ruling.Amount(AlternateForecast.KindOf(to) + " visibility")));
        return Minima.Look(
            leg,
            ruling,
            to,
            leg.Plan.Times.Landing,
            new Feet(Math.Max(minimum.Value, Math.Min(minimum.Value + ceiling.Value, mostFt))),
            Math.Max(metres, Math.Min(metres + Visibilities.Metres(visibility), mostM)),
            "landing minima of a captain new to the type",
            ceiling);
    }
}
