using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Airports;

/// <summary>Notices about the airports, the runways used and the route.</summary>
internal sealed class Closures : ICheck
{
    /// <inheritdoc/>
    public string Id => "ADM-07";

    /// <inheritdoc/>
    public string Title => "Closures and notices";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Notices", "Runways"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var plan = leg.Plan;
        var answers = At(leg, ruling, plan.From, plan.Departure, plan.Times.Takeoff, "takeoff")
            .Concat(At(leg, ruling, plan.To, plan.Arrival, plan.Times.Landing, "landing"))
            .Concat(plan.Alternates.SelectMany(alternate => Alternate(leg, ruling, alternate)))
            .Concat(OnRoute(leg, ruling))
            .ToImmutableArray();
        return answers.Any(answer => answer.Verdict is not Verdict.Note)
            ? answers
            : answers.Prepend(ruling.Pass("No notice closes an airport, a runway or the route of this leg."));
    }

    private static IEnumerable<Finding> At(LegUnderCheck leg, Ruling ruling, Airport airport, RunwayResult result, Instant at, string what)
    {
        foreach (var notice in leg.Week.Notices(airport.Ident, at))
        {
            var cell = notice.Origin.ToString();
            if (notice.Effect == NoticeEffect.Closed)
            {
                yield return ruling.Trips($"{airport.Ident} is closed by notice at the {what}.", cell);
            }
            else if (notice.Effect == NoticeEffect.RunwayClosed)
            {
                yield return ruling.NotChecked(
                    $"a notice closes a runway at {airport.Ident} without naming it; write it as {airport.Ident} and the runway", cell);
            }
            else if (notice.Effect == NoticeEffect.Other)
            {
                yield return ruling.Note($"Notice for {airport.Ident} at the {what}: {notice.Text}", cell);
            }
        }

        if (result is RunwayResult.NotComputed
            && airport.Runways.Any(runway => leg.Week.Notices(airport.Ident, runway.Ident, at)
                .Any(notice => notice.Effect is NoticeEffect.Closed or NoticeEffect.RunwayClosed)))
        {
            yield return ruling.NotChecked($"a notice closes a runway at {airport.Ident}, and which runway the {what} uses could not be computed");
        }

        foreach (var notice in (result as RunwayResult.Computed)?.Use.Runway.Ident is { } runway ? leg.Week.Notices(airport.Ident, runway, at) : [])
        {
            yield return notice.Effect is NoticeEffect.Closed or NoticeEffect.RunwayClosed
                ? ruling.Trips($"Runway {notice.Subject} is closed by notice at the {what}.", notice.Origin.ToString())
                : ruling.Note($"Notice for {notice.Subject} at the {what}: {notice.Text}", notice.Origin.ToString());
        }
    }

    private static IEnumerable<Finding> Alternate(LegUnderCheck leg, Ruling ruling, AlternatePlan alternate) =>
        leg.Week.Notices(alternate.Airport, leg.Plan.Times.Landing + alternate.Time)
            .Where(notice => notice.Effect == NoticeEffect.Closed)
            .Select(notice => ruling.Trips($"The alternate {alternate.Airport} is closed by notice when it would be reached.", notice.Origin.ToString()));

    private static IEnumerable<Finding> OnRoute(LegUnderCheck leg, Ruling ruling)
    {
        var names = leg.Plan.Route.Segments.SelectMany(segment => new[] { segment.Via, segment.To.Ident })
            .Where(name => name != "DCT" && name != leg.Plan.To.Ident).Distinct(StringComparer.OrdinalIgnoreCase);
        foreach (var name in names)
        {
            foreach (var notice in leg.Week.Board.About(name, leg.Plan.Times.Takeoff, leg.Plan.Times.Landing))
            {
                yield return notice.Effect == NoticeEffect.Closed
                    ? ruling.Trips($"{name} on the route is closed by notice.", notice.Origin.ToString(), leg.Cell(nameof(Leg.Route)))
                    : ruling.Note($"Notice for {name} on the route: {notice.Text}", notice.Origin.ToString());
            }
        }
    }
}
