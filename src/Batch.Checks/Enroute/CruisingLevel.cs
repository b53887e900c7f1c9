using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Enroute;

/// <summary>Semicircular cruising levels.</summary>
internal sealed class CruisingLevel : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-09";

    /// <inheritdoc/>
    public string Title => "Level for the direction";

    /// <inheritdoc/>
    public string Needs => "Legs level and route";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var plan = leg.Plan;
        var level = plan.Profile.Level.Value;
        if (plan.Rules == FlightRules.Vfr && level <= plan.From.Elevation.Value + LowestVisual)
        {
            yield return ruling.NotApplicable("Low visual flight has no cruising levels.");
            yield break;
        }

        var wrong = plan.Route.Segments
            .Where((segment, index) => plan.Profile.Slices.Any(slice => slice.Segment == index && slice.Phase == FlightPhase.Cruise) && !IsUsual(level, segment.MagneticCourse.Value, plan.Rules))
            .ToImmutableArray();
        yield return wrong.IsEmpty
            ? ruling.Pass($"{Words.Amount(plan.Profile.Level)} suits the magnetic course of every stretch.")
            : ruling.Trips(
                $"{Words.Amount(plan.Profile.Level)} does not suit the magnetic course {wrong[0].MagneticCourse.Value.ToString("000", System.Globalization.CultureInfo.InvariantCulture)} from {wrong[0].From.Ident} to {wrong[0].To.Ident}; eastbound levels are odd, westbound even{(plan.Rules == FlightRules.Vfr ? ", plus 500 ft under VFR" : "")}.",
                leg.Cell(nameof(Leg.Level)));
    }

    /// <summary>Height above the departure up to which the visual rule is silent [ft], 3,000 above the surface (14 CFR 91.159).</summary>
    private const double LowestVisual = 3000;

    /// <summary>Whether a level is one of the direction: courses 000 to 179 odd thousands, 180 to 359 even ones, every fourth thousand above 41,000 ft; 500 ft more under VFR.</summary>
    /// <param name="levelFt">Level [ft].</param>
    /// <param name="magneticCourseDeg">Magnetic course [deg], 0 to 360.</param>
    /// <param name="rules">Flight rules.</param>
    internal static bool IsUsual(double levelFt, double magneticCourseDeg, FlightRules rules)
    {
        var thousands = (levelFt - (rules == FlightRules.Vfr ? 500 : 0)) / 1000;
        var whole = (int)Math.Round(thousands);
        if (Math.Abs(thousands - whole) > 1e-6)
        {
            return false;
        }

        var isEast = magneticCourseDeg < 180 || magneticCourseDeg >= 360;
        return whole > 41 ? whole % 4 == (isEast ? 1 : 3) : whole % 2 == (isEast ? 1 : 0);
    }
}
