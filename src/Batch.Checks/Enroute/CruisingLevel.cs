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
        var level = plan.Profile.Highest;
        if (plan.Rules == FlightRules.Vfr && level.Value >= Semicircular.VisualBelowFt)
        {
            return [ruling.NotApplicable("So high a visual flight flies the level that it is assigned.")];
        }

        // The level that is flown on each stretch: the route may step up on the way.
        var flown = plan.Profile.Slices.Where(slice => slice.Phase == FlightPhase.Cruise)
            .Select(slice => (Segment: plan.Route.Segments[slice.Segment], Level: new Feet(slice.EndFt))).Distinct().ToImmutableArray();
        var wrong = flown.Where(stretch =>
            !Semicircular.Fits(plan.Rules, stretch.Segment.MagneticCourse, stretch.Level, Feet.Min(plan.From.Elevation, plan.To.Elevation))).ToImmutableArray();
        if (wrong.IsEmpty)
        {
            var levels = flown.Select(stretch => Words.Amount(stretch.Level)).DefaultIfEmpty(Words.Amount(level)).Distinct().ToImmutableArray();
            return [ruling.Pass($"{Words.List(levels)} {(levels.Length > 1 ? "suit" : "suits")} the magnetic course of every stretch.")];
        }

        var (segment, at) = wrong[0];
        return [ruling.Trips(
            $"{Words.Amount(at)} does not suit the magnetic course {segment.MagneticCourse.Value.ToString("000", CultureInfo.InvariantCulture)} from {segment.From.Ident} to {segment.To.Ident}; {Suiting(leg, segment, at)}.",
            leg.Cell(nameof(Leg.Level)))];
    }

    /// <summary>The levels next to the one flown that suit, with the rule in words.</summary>
    private static string Suiting(LegUnderCheck leg, RouteSegment segment, Feet level)
    {
        var rules = leg.Plan.Rules;
        var isEastbound = Semicircular.IsEastbound(segment.MagneticCourse);
        var most = Feet.Min(leg.Type.Ceiling ?? level + new Feet(double.MaxValue), leg.Aircraft.Ceiling ?? level + new Feet(double.MaxValue));
        var suiting = Semicircular.Levels(rules, isEastbound).Where(one => one <= most).ToImmutableArray();
        var next = new[] { suiting.LastOrDefault(one => one < level), suiting.FirstOrDefault(one => one > level) }.Where(one => one > Feet.Zero)
            .Select(one => Words.Amount(one));
        return $"{string.Join(" or ", next)} would (it is {(isEastbound ? "eastbound: odd" : "westbound: even")} thousands{(rules == FlightRules.Vfr ? " and 500 ft" : "")})";
    }
}
