using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Enroute;

/// <summary>Cruise level against the minimum altitude of each stretch.</summary>
internal sealed class MinimumAltitude : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-03";

    /// <inheritdoc/>
    public string Title => "Minimum altitude";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Airways: minimum altitude, or AltitudeGrid"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => false;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var plan = leg.Plan;
        var unknown = new List<string>();
        var low = 0;
        if (plan.Profile.Slices.All(slice => slice.Phase != FlightPhase.Cruise))
        {
            yield return ruling.NotChecked(
                "the leg has no cruise: it climbs and descends all the way, and what lies below the climb and the descent is not looked at",
                leg.Cell(nameof(Leg.Level)));
            yield break;
        }

        foreach (var (segment, index) in plan.Route.Segments.Select((segment, index) => (segment, index)))
        {
            var cruise = plan.Profile.Slices.Where(slice => slice.Segment == index && slice.Phase == FlightPhase.Cruise).ToImmutableArray();
            if (cruise.IsEmpty)
            {
                continue;
            }

            var stretch = $"{segment.From.Ident} to {segment.To.Ident}";
            if (segment.MinimumAltitude is not { } minimum)
            {
                unknown.Add(stretch);
                continue;
            }

            var lowest = cruise.Min(slice => Math.Min(slice.StartFt, slice.EndFt));
            if (minimum.Value - lowest > Ruling.Noise)
            {
                low++;
                if (plan.Rules == FlightRules.Vfr && plan.Daylight.Night == Duration.Zero)
                {
                    yield return ruling.NotChecked(
                        $"by day under VFR the height above the ground counts, which the book does not hold; from {stretch} the level {Words.Amount(lowest, "ft")} is below the safe altitude {Words.Amount(minimum)}",
                        leg.Cell(nameof(Leg.Level)));
                    continue;
                }

                yield return ruling.AtLeast(
                    $"The level from {stretch}", lowest, minimum.Value, "ft",
                    $"minimum altitude ({(segment.MinimumSource.Length > 0 ? segment.MinimumSource : "source not said")})", null, leg.Cell(nameof(Leg.Level)),
                    leg.Cell(nameof(Leg.Route)));
            }
        }

        if (unknown.Count > 0)
        {
            yield return ruling.NotChecked($"no minimum altitude is given from {Words.List(unknown)}", leg.Cell(nameof(Leg.Route)));
        }
        else if (low == 0)
        {
            yield return ruling.Pass($"The cruise at {Flown(plan)} is at or above the minimum altitude of every stretch.");
        }
    }

    /// <summary>The levels flown in cruise, the lowest and the highest where the route steps.</summary>
    private static string Flown(LegPlan.Planned plan)
    {
        var levels = plan.Profile.Slices.Where(slice => slice.Phase == FlightPhase.Cruise).Select(slice => slice.EndFt).ToImmutableArray();
        var (lowest, highest) = (Words.Amount(levels.Min(), "ft"), Words.Amount(levels.Max(), "ft"));
        return lowest == highest ? lowest : $"{lowest} to {highest}";
    }
}
