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
        yield return captain.Member?.HoursInType is not { } hours
            ? ruling.NotChecked($"the hours in type of {captain.Code} are not given", cell)
            : hours >= limit.Value
            ? ruling.Pass($"{captain.Code} has {Words.Amount(hours, "h")} in type.", limit, cell) with { Required = limit.Value, Actual = hours, Margin = hours - limit.Value, Unit = "h" }
            : ruling.Trips(limit, $"{captain.Code} has {Words.Amount(hours, "h")} in type, fewer than {Words.Amount(limit.Value, "h")}: landing minima are 100 ft and 1/2 mile higher.", cell)
                with
            { Required = limit.Value, Actual = hours, Margin = hours - limit.Value, Unit = "h" };
    }
}
