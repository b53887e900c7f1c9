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
    public ImmutableArray<string> Needs => ["the plan"];

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
                $"{Words.Amount(level)} does not suit the magnetic course {wrong[0].MagneticCourse.Value.ToString("000", CultureInfo.InvariantCulture)} from {wrong[0].From.Ident} to {wrong[0].To.Ident}; {Suiting(leg, wrong[0])}.",
                leg.Cell(nameof(Leg.Level)))];
    }

    /// <summary>The levels next to the one flown that suit, with the rule in words.</summary>
    private static string Suiting(LegUnderCheck leg, RouteSegment segment)
    {
        var (rules, level) = (leg.Plan.Rules, leg.Plan.Profile.Level);
        var isEastbound = Semicircular.IsEastbound(segment.MagneticCourse);
        var most = Feet.Min(leg.Type.Ceiling ?? level + new Feet(double.MaxValue), leg.Aircraft.Ceiling ?? level + new Feet(double.MaxValue));
        var suiting = Semicircular.Levels(rules, isEastbound).Where(one => one <= most).ToImmutableArray();
        var next = new[] { suiting.LastOrDefault(one => one < level), suiting.FirstOrDefault(one => one > level) }.Where(one => one > Feet.Zero).Select(one => Words.Amount(one));
        return $"{string.Join(" or ", next)} would (it is {(isEastbound ? "eastbound: odd" : "westbound: even")} thousands{(rules == FlightRules.Vfr ? " and 500 ft" : "")})";
    }
}
