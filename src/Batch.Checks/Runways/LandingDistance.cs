using Batch.Checks.Rules;

namespace Batch.Checks.Runways;

/// <summary>Landing distance over the obstacle against the landing distance available.</summary>
internal sealed class LandingDistance : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-03";

    /// <inheritdoc/>
    public string Title => "Landing distance";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Landing table", "Runways", "temperature at the destination", "wind at the destination", "altimeter setting"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["factor"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff: false);
        if (use is not null)
        {
            var factor = ruling.Amount("factor");
            yield return Distances.Compare(leg, ruling, use, isTakeoff: false, factor.Value, use.Available, "landing distance available", factor);
        }
        else if (missing is not null)
        {
            yield return missing;
        }
    }
}
