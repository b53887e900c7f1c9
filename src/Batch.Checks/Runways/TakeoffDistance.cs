using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Runways;

/// <summary>Takeoff distance over the obstacle against the takeoff distance available.</summary>
internal sealed class TakeoffDistance : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-01";

    /// <inheritdoc/>
    public string Title => "Takeoff distance";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Takeoff table", "Runways", "temperature at the departure", "wind at the departure", "altimeter setting"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["factor"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff: true);
        if (use is not null)
        {
            var factor = ruling.Amount("factor");
            yield return Distances.Compare(leg, ruling, use, isTakeoff: true, factor.Value, use.Available, "takeoff distance available", factor);
            if (use is { CorrectedStop: { } stop, StopAvailable: { } available })
                yield return Distances.OnKnownAir(ruling, use, leg.Plan.From.Ident,
                    ruling.AtMost($"The accelerate-stop distance at {leg.Plan.From.Ident} runway {use.Runway.Ident}", stop.Value, available.Value, "ft",
                        "accelerate-stop distance available", null, leg.Cell(nameof(Leg.DepartureRunway)), use.Runway.Origin.ToString()));
        }
        else if (missing is not null)
        {
            yield return missing;
        }
    }
}
