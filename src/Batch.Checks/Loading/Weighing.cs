using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Loading;

/// <summary>Whether the last weighing is recent enough.</summary>
internal sealed class Weighing : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-09";

    /// <inheritdoc/>
    public string Title => "Weighing current";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Aircraft: weighed on, or weighing due"];

    /// <inheritdoc/>
    public string Actor => "maintenance";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["calendar months"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var months = ruling.Amount("calendar months");
        if (leg.Aircraft.WeighedOn is { } dated && dated > leg.EndDate)
        {
            yield return ruling.NotChecked($"the weighing of {leg.Aircraft.Registration} is dated {Words.Day(dated)}, after this leg",
                leg.Aircraft.Origin.Cell(nameof(Aircraft.WeighedOn)));
            yield break;
        }

        var last = leg.Aircraft.WeighingDue;
        if (leg.Aircraft.WeighedOn is { } weighed)
        {
            var byRule = weighed.PlusMonths((int)months.Value).With(DateAdjusters.EndOfMonth);
            last = last is { } due && due < byRule ? due : byRule;
        }

        if (last is not { } until)
        {
            yield return ruling.NotChecked($"neither the last weighing of {leg.Aircraft.Registration} nor when the next is due is given",
                leg.Aircraft.Origin.Cell(nameof(Aircraft.WeighedOn)));
            yield break;
        }

        var left = Period.DaysBetween(leg.EndDate, until);
        var answer = left >= 0
            ? ruling.Pass($"The weighing of {leg.Aircraft.Registration} holds until {Words.Day(until)}.", months,
                leg.Aircraft.Origin.Cell(nameof(Aircraft.WeighedOn)))
            : ruling.Trips(months,
                $"The weighing of {leg.Aircraft.Registration} held until {Words.Day(until)} ({Words.Amount(months.Value, "calendar months")}, or the date in the book where earlier).",
                leg.Aircraft.Origin.Cell(nameof(Aircraft.WeighedOn)));
        yield return answer with { Actual = left, Margin = left, Unit = "days" };
    }
}
