using System.Globalization;
using Batch.Flight.Route;

namespace Batch.Flight.Plan;

/// <summary>
/// The same leg with the same fuel aboard at the neighbouring usable levels, at one far below, and on the backup route: what the crew reads off when cleared
/// otherwise than planned.
/// </summary>
internal static class LevelOptions
{
    private const int LevelsEachWay = 2;

    /// <summary>The options by level, highest first, the backup route after the planned one; contains the plan itself with its own figures.</summary>
    /// <param name="context">The week's context.</param>
    /// <param name="setup">The leg.</param>
    /// <param name="plan">The planned flight.</param>
    /// <param name="ladder">The planned fuel.</param>
    public static ImmutableArray<LevelOption> Of(PlanningContext context, LegSetup setup, FlightProfile plan, FuelLadder ladder)
    {
        var candidates = LevelCandidates.Of(setup.Route, setup.Rules, setup.Type, plan.Setting, setup.Ceiling,
            Feet.Max(setup.From.Elevation, setup.To.Elevation));
        var levels = candidates.Where(level => level > plan.Level).Order().Take(LevelsEachWay)
            .Concat(Below([.. candidates.Where(level => level < plan.Level).OrderDescending()]))
            .OrderDescending();
        var options = ImmutableArray.CreateBuilder<LevelOption>();
        options.Add(Option(setup, plan, setup.Route, ladder, isPlan: true));
        foreach (var level in levels)
        {
            if (Fly(context, setup, setup.Route, plan, level) is { } profile) options.Add(Option(setup, profile, setup.Route, ladder, isPlan: false));
        }

        if (setup.Backup is { } backup && Fly(context, setup, backup, plan, plan.Level) is { } other)
            options.Add(Option(setup, other, backup, ladder, isPlan: false));
        return [.. options.OrderBy(option => option.IsBackupRoute).ThenByDescending(option => option.Level)];
    }

    /// <summary>The levels next below, and the one halfway from there to the lowest usable, for a clearance far below the plan.</summary>
    private static IEnumerable<Feet> Below(ImmutableArray<Feet> lower) =>
        lower.Where((_, index) => index < LevelsEachWay || index == LevelsEachWay + (lower.Length - LevelsEachWay) / 2);

    private static FlightProfile? Fly(PlanningContext context, LegSetup setup, FlownRoute route, FlightProfile plan, Feet level) =>
        ProfileFlyer.Fly(new ProfileRequest
        {
            Route = route,
            Type = setup.Type,
            Level = level,
            Setting = plan.Setting,
            TakeoffWeight = plan.TakeoffWeight,
            Takeoff = setup.Takeoff,
            StartElevation = setup.From.Elevation,
            EndElevation = setup.To.Elevation,
            Air = context.Air,
            BurnBias = setup.Aircraft.BurnBias,
            MayUseTableEdge = context.Week.Operator.MayUseTableEdge,
        }) is ProfileResult.Flown { Profile: var profile } ? profile : null;

    private static LevelOption Option(LegSetup setup, FlightProfile profile, FlownRoute route, FuelLadder ladder, bool isPlan)
    {
        var landing = ladder.Takeoff - profile.TripFuel;
        var margin = landing - ladder.RequiredOnLanding;
        var minimum = route.Segments.Max(segment => segment.MinimumAltitude);
        var why = margin.Value < 0 ? string.Create(CultureInfo.InvariantCulture, $"{-margin.Value:#,0} lb short of the reserve")
            : minimum is { } least && profile.Level < least ? string.Create(CultureInfo.InvariantCulture, $"below the minimum altitude of {least.Value:#,0} ft")
            : "";
        return new LevelOption
        {
            Level = profile.Level,
            Route = route.Text,
            IsPlan = isPlan,
            IsBackupRoute = !isPlan && !ReferenceEquals(route, setup.Route),
            Time = profile.Time,
            Trip = profile.TripFuel,
            Landing = landing,
            Margin = margin,
            State = why.Length > 0 ? State.Fail : State.Note,
            Why = why,
            CruiseHeadwind = CruiseHeadwind(profile),
        };
    }

    private static Knots CruiseHeadwind(FlightProfile profile)
    {
        double hours = 0, headwindNm = 0;
        foreach (var slice in profile.Slices)
        {
            if (slice.Phase != FlightPhase.Cruise) continue;
            hours += slice.Hours;
            headwindNm += slice.Hours * slice.Air.WindSpeed.Value * Math.Cos((slice.Air.WindFrom.Value - slice.TrueCourseDeg) * Math.PI / 180);
        }

        return new Knots(hours > 0 ? headwindNm / hours : 0);
    }
}
