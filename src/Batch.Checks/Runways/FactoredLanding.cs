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
    public string Needs => "Landing table; Runways landing distance available";

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
            var answer = ruling.AtMost(
                $"Landing distance on {leg.Plan.To.Ident} {use.Runway.Ident}",
                use.CorrectedDistance.Value,
                use.Available.Value * share.Value / 100,
                "ft",
                $"{Words.Amount(share.Value, "%")} of the landing distance available",
                share,
                leg.Cell(nameof(Leg.ArrivalRunway)),
                use.Runway.Origin.ToString());
            yield return answer;
        }
        else if (missing is not null)
        {
            yield return missing;
        }
    }
}
