using System.Globalization;
using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Route;
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
        var level = plan.Profile.Level;
        if (plan.Rules == FlightRules.Vfr && level.Value >= Semicircular.VisualBelowFt)
        {
            return [ruling.NotApplicable("So high a visual flight flies the level that it is assigned.")];
        }

        var wrong = plan.Route.Segments
            .Where((segment, index) => plan.Profile.Slices.Any(slice => slice.Segment == index && slice.Phase == FlightPhase.Cruise)
                && !Semicircular.Fits(plan.Rules, segment.MagneticCourse, level, Feet.Min(plan.From.Elevation, plan.To.Elevation)))
            .ToImmutableArray();
        return wrong.IsEmpty
            ? [ruling.Pass($"{Words.Amount(level)} suits the magnetic course of every stretch.")]
            : [ruling.Trips(
                $"{Words.Amount(level)} does not suit the magnetic course {wrong[0].MagneticCourse.Value.ToString("000", CultureInfo.InvariantCulture)} from {wrong[0].From.Ident} to {wrong[0].To.Ident}; eastbound levels are odd thousands, westbound even{(plan.Rules == FlightRules.Vfr ? ", plus 500 ft under VFR" : "")}.",
                leg.Cell(nameof(Leg.Level)))];
    }
}
