using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Alternates;

/// <summary>Forecast at the landing against the landing minima.</summary>
internal sealed class DestinationForecast : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-01";

    /// <inheritdoc/>
    public string Title => "Forecast at the destination";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Bulletins: forecast at the destination", "Airports: approach minimum", "Airports: approach visibility"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var to = leg.Plan.To;
        if (to is not { ApproachMinimum: { } ceiling, ApproachVisibilityM: { } visibility })
        {
            yield return ruling.NotChecked($"the landing minima of {to.Ident} are not given", to.Origin.Cell(nameof(Airport.ApproachMinimum)));
            yield break;
        }

        var isByApproach = ruling.Condition("ceiling without a glide path") is not null;
        if (isByApproach && to.ApproachKind.Trim().Length == 0)
        {
            yield return ruling.NotChecked($"the instrument approach of {to.Ident} is not given", to.Origin.Cell(nameof(Airport.ApproachKind)));
            yield break;
        }

        var answer = Minima.Look(
            leg, ruling, to, leg.Plan.Times.Landing, ceiling, visibility, "landing minima", null, ruling.AmountOrNone(Around)?.Value
                ?? 0, isCeilingAsked: !isByApproach || !AlternateForecast.IsPrecise(to));
        yield return answer.Verdict > Verdict.NotChecked && leg.Plan.Alternates.Length > 1 && ruling.Condition("two alternates in its place") is { } two
            ? ruling.Pass($"{to.Ident} is forecast below its landing minima, and two alternates are filed, which is enough.", two,
                leg.Cell(nameof(Leg.Alternate)))
            : answer;
    }

    /// <summary>Name of the amount that is the time before and after the landing through which the forecast counts.</summary>
    public const string Around = "around the landing";
}
