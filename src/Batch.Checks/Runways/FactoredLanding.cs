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
    public string Needs => "Landing table; Runways landing distance available; Bulletins (rain)";

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["share of landing distance available"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff: false);
        if (use is not null)
        {
            var share = ruling.Amount("share of landing distance available");
            var place = $"{leg.Plan.To.Ident} {use.Runway.Ident}";
            yield return Within($"Landing distance on {place}", use.CorrectedDistance.Value, share);
            if (use.IsWet && ruling.AmountOrNone("wet factor") is { } wet)
            {
                var dry = use.CorrectedDistance.Value / use.Factors.Where(factor => factor.Name == "wet").Aggregate(1.0, (all, factor) => all * factor.Factor);
                yield return Within($"Dry landing distance on {place} times {Words.Amount(wet.Value, "")} for a wet runway,", dry * wet.Value, wet);
            }

            Finding Within(string what, double distanceFt, RuleAmount by) => ruling.AtMost(
                what,
                distanceFt,
                use.Available.Value * share.Value / 100,
                "ft",
                $"{Words.Amount(share.Value, "%")} of the landing distance available",
                by,
                leg.Cell(nameof(Leg.ArrivalRunway)),
                use.Runway.Origin.ToString());
        }
        else if (missing is not null)
        {
            yield return missing;
        }
    }
}
