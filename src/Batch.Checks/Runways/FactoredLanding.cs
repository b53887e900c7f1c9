using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Runways;

/// <summary>Landing distance within a share of the landing distance available.</summary>
internal sealed class FactoredLanding : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-04";

    /// <inheritdoc/>
    public string Title => "Landing distance with margin";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Landing table", "Runways", "temperature at the destination", "wind at the destination", "altimeter setting",
        "Bulletins: rain", "Types: certification category, of two engines or more"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["share of landing distance available"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        if (ruling.AmountOrNone("share at the alternate") is { } away && !leg.Plan.Alternates.IsEmpty)
        {
            yield return ruling.NotChecked($"the landing distance at {Words.List(leg.Plan.Alternates.Select(alternate => alternate.Airport))} is not computed; by {away.Citation} it must be within {Words.Amount(away.Value, "%")} of the runway", leg.Cell(nameof(Leg.Alternate)));
        }

        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff: false);
        if (use is not null)
        {
            var share = ruling.Amount("share of landing distance available");
            var place = $"{leg.Plan.To.Ident} runway {use.Runway.Ident}";
            yield return Within($"The landing distance at {place}", use.CorrectedDistance.Value, share);
            if (use.IsWet && ruling.AmountOrNone("wet factor") is { } wet)
            {
                var dry = use.CorrectedDistance.Value / use.Factors.Where(factor => factor.Name == "wet").Aggregate(1.0, (all, factor) => all * factor.Factor);
                yield return Within($"The dry landing distance at {place} times {Words.Amount(wet.Value, "")} for a wet runway", dry * wet.Value, wet);
            }

            Finding Within(string what, double distanceFt, RuleAmount by) => Distances.OnKnownAir(ruling, use, leg.Plan.To.Ident, ruling.AtMost(
                what,
                distanceFt,
                use.Available.Value * share.Value / 100,
                "ft",
                $"{Words.Amount(share.Value, "%")} of the landing distance available that may be used",
                by,
                leg.Cell(nameof(Leg.ArrivalRunway)),
                use.Runway.Origin.ToString()));
        }
        else if (missing is not null)
        {
            yield return missing;
        }
    }
}
