using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Plans one leg: fuel and weight, then everything that follows from them.</summary>
internal static class LegPlanner
{
    /// <summary>The plan of a leg that was made ready.</summary>
    /// <param name="context">The week's context.</param>
    /// <param name="setup">The leg.</param>
    /// <param name="source">The fuel it starts from.</param>
    /// <param name="near">The same leg worked out from this or other fuel; null where it was not.</param>
    public static LegPlan Plan(PlanningContext context, LegSetup setup, FuelSource source, NearFlight? near = null) =>
        new FuelSolver(context, setup, source, near).Solve() switch
        {
            FuelOutcome.Solved solved => Complete(context, setup, solved),
            FuelOutcome.NotFlyable notFlyable => new LegPlan.Unplanned
            {
                Leg = setup.Leg,
                Why = notFlyable.Why,
                Where = notFlyable.Where,
                IsNotFlyable = true,
                Cells = notFlyable.IsByWeight ? WeightCells(setup) : [setup.Leg.Origin.Cell(nameof(Leg.Level)), setup.Leg.Origin.Cell(nameof(Leg.Route))],
            },
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The leg worked out as far as its fuel and the limits on it; null where it cannot be flown.</summary>
    /// <param name="context">The week's context.</param>
    /// <param name="setup">The leg.</param>
    /// <param name="source">The fuel it starts from.</param>
    /// <param name="near">The same leg worked out from other fuel; null where it was not.</param>
    public static LegTrial? Try(PlanningContext context, LegSetup setup, FuelSource source, NearFlight? near)
    {
        var outcome = new FuelSolver(context, setup, source, near).Solve();
        if (outcome is not FuelOutcome.Solved { Profile: var profile, Ladder: var ladder } || NearFlight.Of(outcome) is not { } flight) return null;
        var landing = setup.Takeoff + profile.Time;
        var load = Loading.WithFuel(setup.Load, ladder.Aboard, ladder.Taxi, ladder.Trip);
        var departure = RunwayPlanner.Takeoff(Request(context, setup, setup.From, setup.Leg.DepartureRunway, load.Takeoff.Weight, setup.Takeoff,
            Earth.Sun.IsNight(setup.Takeoff, setup.From.Position)));
        var arrival = RunwayPlanner.Landing(
            Request(context, setup, setup.To, setup.Leg.ArrivalRunway, load.Landing.Weight, landing, Earth.Sun.IsNight(landing, setup.To.Position)));
        var most = LoadLimits.MostFuel(setup.Type, load.ZeroFuel.Weight, ladder.Taxi, ladder.Trip, WeightLimit(departure), WeightLimit(arrival));
        return new LegTrial(flight, most.Most, load.Tests.All(test => test.IsInside));
    }

    /// <summary>What decides how heavy the leg is and can be changed for it: the fuel plan and the load.</summary>
    private static ImmutableArray<string> WeightCells(LegSetup setup) =>
        [.. setup.Load.Items.Select(item => item.Cell).Prepend(setup.Leg.Origin.Cell(nameof(Leg.FuelPlan))).Where(cell => cell.Length > 0)
            .Distinct(StringComparer.Ordinal)];

    private static LegPlan.Planned Complete(PlanningContext context, LegSetup setup, FuelOutcome.Solved solved)
    {
        var profile = solved.Profile;
        var ladder = solved.Ladder;
        var landing = setup.Takeoff + profile.Time;
        var times = new LegTimes(
            setup.Leg.OffBlocks,
            setup.Takeoff,
            setup.Takeoff + profile.TopOfClimb.Elapsed,
            setup.Takeoff + profile.TopOfDescent.Elapsed,
            landing,
            landing + setup.TaxiIn);
        var daylight = DaylightAlong.Of(setup.From, setup.To, setup.Route, profile, times);
        var load = Loading.WithFuel(setup.Load, ladder.Aboard, ladder.Taxi,
            ladder.Trip) with
        { Spread = LoadReseating.Of(setup.Load, ladder.Aboard, ladder.Taxi, ladder.Trip) };

        var departure = RunwayPlanner.Takeoff(
            Request(context, setup, setup.From, setup.Leg.DepartureRunway, load.Takeoff.Weight, setup.Takeoff, daylight.IsNightTakeoff));
        var arrival = RunwayPlanner.Landing(Request(context, setup, setup.To, setup.Leg.ArrivalRunway, load.Landing.Weight, landing, daylight.IsNightLanding));
        var most = LoadLimits.MostFuel(setup.Type, load.ZeroFuel.Weight, ladder.Taxi, ladder.Trip, WeightLimit(departure), WeightLimit(arrival));
        var spare = LoadLimits.PayloadSpare(
            setup.Type, load.ZeroFuel.Weight, ladder.Aboard, ladder.Taxi, ladder.Trip, WeightLimit(departure), WeightLimit(arrival));
        // A runway that bears no weight of its table leaves nothing to add, however little is aboard.
        if (spare.Spare is { } over && (WeightLimit(departure) == Pounds.Zero || WeightLimit(arrival) == Pounds.Zero))
            spare = spare with { Spare = Pounds.Max(over, -load.Payload) };
        ladder = ladder with { Most = most.Most ?? ladder.Aboard, MostBoundBy = most.BoundBy };

        return new LegPlan.Planned
        {
            Leg = setup.Leg,
            Aircraft = setup.Aircraft,
            Type = setup.Type,
            From = setup.From,
            To = setup.To,
            Captain = setup.Captain,
            SecondPilot = setup.SecondPilot,
            Rules = setup.Rules,
            Purpose = setup.Purpose,
            Planning = setup.Planning,
            Times = times,
            Route = setup.Route,
            Profile = profile,
            Log = NavigationLog.Of(profile, setup.Route, setup.Takeoff, ladder.Takeoff, setup.Date),
            Fuel = ladder,
            Load = load,
            PayloadSpare = spare.Spare,
            PayloadSpareBoundBy = spare.BoundBy,
            Departure = departure,
            Arrival = arrival,
            Alternates = solved.Alternates,
            Options = LevelOptions.Of(context, setup, profile, ladder),
            Daylight = daylight,
            Assumptions = [.. Assumptions(setup, solved, profile, load, departure, arrival)],
            Notes =
            [
                .. setup.Notes,
                .. solved.Notes,
                .. profile.Notes,
                .. context.Weather.SurfaceAt(setup.From, setup.Takeoff).Sources,
                .. context.Weather.SurfaceAt(setup.To, landing).Sources,
            ],
        };
    }

    private static RunwayRequest Request(PlanningContext context, LegSetup setup, Airport airport, string runway, Pounds weight, Instant at, bool isNight)
    {
        var surface = context.Weather.SurfaceAt(airport, at);
        return new RunwayRequest
        {
            Airport = airport,
            Type = setup.Type,
            NamedRunway = runway,
            ClosedRunways = context.Notices.ClosedRunways(airport.Ident, at),
            Weight = weight,
            Air = surface.Air,
            IsWindFromAloft = surface.IsWindFromAloft,
            AltimeterSetting = surface.AltimeterSetting,
            IsWet = surface.IsWet,
            Rules = setup.Planning.Runway,
            MayUseTableEdge = context.Week.Operator.MayUseTableEdge,
            NeedsLights = isNight,
        };
    }

    private static Pounds? WeightLimit(RunwayResult result) => result is RunwayResult.Computed { Use: var use } ? use.WeightLimit : null;

    private static IEnumerable<string> Assumptions(
        LegSetup setup, FuelOutcome.Solved solved, FlightProfile profile, LoadSheet load, RunwayResult departure, RunwayResult arrival)
    {
        var all = setup.Assumptions.AddRange(AirAssumptions(profile)).AddRange(solved.Assumptions).AddRange(load.Assumptions)
            .AddRange(RunwayAssumptions(departure)).AddRange(RunwayAssumptions(arrival));
        return all.Distinct(StringComparer.Ordinal);
    }

    private static IEnumerable<string> AirAssumptions(FlightProfile profile)
    {
        var winds = profile.Slices.Count(slice => slice.Air.WindAssumed);
        var temperatures = profile.Slices.Count(slice => slice.Air.TemperatureAssumed);
        if (winds == profile.Slices.Length) yield return "No wind known: still air taken.";
        else if (winds > 0) yield return "No wind known on part of the way: still air taken there.";
        if (temperatures == profile.Slices.Length) yield return "No temperature known: standard atmosphere taken.";
        else if (temperatures > 0) yield return "No temperature known on part of the way: standard atmosphere taken there.";
    }

    private static ImmutableArray<string> RunwayAssumptions(RunwayResult result) => result is RunwayResult.Computed { Use: var use } ? use.Assumptions : [];
}
