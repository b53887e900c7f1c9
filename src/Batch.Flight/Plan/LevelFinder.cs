using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Finds the level to fly by flying.</summary>
public static class LevelFinder
{
    /// <summary>
    /// Flies every candidate. Those that can be flown come first, by fuel, then by time, then the higher first; after them the others, highest first, with
    /// their reasons.
    /// </summary>
    /// <param name="request">What to fly; its level is not looked at.</param>
    /// <param name="candidates">Levels [ft], see <see cref="LevelCandidates"/>.</param>
    public static ImmutableArray<LevelTrial> Rank(ProfileRequest request, ImmutableArray<Feet> candidates)
    {
        var trials = new LevelTrial[candidates.Length];
        for (var index = 0; index < trials.Length; index++)
            trials[index] = new LevelTrial(candidates[index], ProfileFlyer.Fly(request with { Level = candidates[index] }));
        Array.Sort(trials, Compare);
        return [.. trials];
    }

    /// <summary>
    /// The first of <see cref="Rank"/> with less flying: from the lowest up, and no higher once two levels running were too high for the route, because climb
    /// and descent only grow.
    /// </summary>
    /// <param name="request">What to fly; its level is not looked at.</param>
    /// <param name="candidates">Levels [ft], rising; at least one.</param>
    /// <returns>The best; where none can be flown one for which the route is too short, where there is none the lowest.</returns>
    internal static LevelTrial Best(ProfileRequest request, ImmutableArray<Feet> candidates)
    {
        LevelTrial? best = null, tooHigh = null, lowest = null;
        var running = 0;
        foreach (var level in candidates)
        {
            var trial = new LevelTrial(level, ProfileFlyer.Fly(request with { Level = level }));
            lowest ??= trial;
            running = trial.Result is ProfileResult.TooShort ? running + 1 : 0;
            if (running > 0) tooHigh ??= trial;
            if (running == 2) break;
            if (trial.Result is ProfileResult.Flown && (best is null || Compare(trial, best) < 0)) best = trial;
        }

        return best ?? tooHigh ?? lowest ?? throw new ArgumentException("No candidate.", nameof(candidates));
    }

    /// <summary>
    /// The best of the candidates round one that was best at nearly the same weight: from it the neighbours are flown, upward and downward, as long as each is
    /// better than the one before.
    /// </summary>
    /// <param name="request">What to fly; its level is not looked at.</param>
    /// <param name="candidates">Levels [ft], rising.</param>
    /// <param name="known">The one that was best.</param>
    /// <returns>The best; null where the known one is not a candidate.</returns>
    internal static LevelTrial? BestNear(ProfileRequest request, ImmutableArray<Feet> candidates, Feet known)
    {
        var start = candidates.IndexOf(known);
        if (start < 0) return null;
        var best = Try(start);
        foreach (var step in new[] { 1, -1 })
        {
            for (var index = start + step; index >= 0 && index < candidates.Length; index += step)
            {
                var trial = Try(index);
                if (Compare(trial, best) >= 0) break;
                best = trial;
            }
        }

        return best;

        LevelTrial Try(int index) => new(candidates[index], ProfileFlyer.Fly(request with { Level = candidates[index] }));
    }

    /// <summary>
    /// Flies a route at the requested level or, where the route is too short for it, at the highest lower level that leaves two minutes of cruise: whole
    /// thousands of feet, for visual flights every 500 ft, at least one step above the higher airport. Found by halving, so that some six levels are flown; a
    /// level that cannot be flown counts as too high as long as the lowest one can.
    /// </summary>
    /// <param name="request">What to fly.</param>
    /// <param name="rules">Flight rules.</param>
    /// <param name="note">One sentence where the level was lowered; empty where it was not.</param>
    /// <param name="known">The level that was highest at nearly the same weight, which is tried first; null for none.</param>
    /// <returns>The profile, whose own level tells what was flown; too short where even the
    /// lowest level is; not flyable as the requested or the lowest level is.</returns>
    public static ProfileResult FlyHighest(ProfileRequest request, FlightRules rules, out string note, Feet? known = null)
    {
        note = "";
        var result = ProfileFlyer.Fly(request);
        if (result is not ProfileResult.TooShort) return result;

        var stepFt = rules == FlightRules.Vfr ? 500.0 : 1000.0;
        var lowestFt = (Math.Floor(Feet.Max(request.StartElevation, request.EndElevation).Value / stepFt) + 1) * stepFt;
        if (request.Type.Tables.Cruise.TryGetValue(request.Setting, out var cruise))
            lowestFt = Math.Max(lowestFt, Math.Ceiling(cruise.Lowest(2) / stepFt) * stepFt);
        // The first known to be too high, in steps above the lowest.
        var tooHigh = (int)Math.Ceiling((request.Level.Value - lowestFt) / stepFt);
        if (tooHigh <= 0) return result;
        if (known is { } before && (int)Math.Round((before.Value - lowestFt) / stepFt) is >= 0 and var near && near < tooHigh
            && Fly(near) is ProfileResult.Flown again && (near + 1 == tooHigh || Fly(near + 1) is not ProfileResult.Flown))
        {
            note = Lowered(near);
            return again;
        }

        var best = Fly(0);
        var lowest = 0;
        // A heavy or hot curve of a table may begin higher than the table does.
        while (best is ProfileResult.NotFlyable && lowest + 1 < tooHigh) best = Fly(++lowest);
        if (best is not ProfileResult.Flown) return best is ProfileResult.NotFlyable ? best : result;
        while (tooHigh - lowest > 1)
        {
            var middle = (lowest + tooHigh) / 2;
            if (Fly(middle) is ProfileResult.Flown flown) (lowest, best) = (middle, flown);
            else tooHigh = middle;
        }

        note = Lowered(lowest);
        return best;

        string Lowered(int steps) => $"The route is too short for {ProfileTrack.Altitude(request.Level.Value)}; {ProfileTrack.Altitude(lowestFt + steps * stepFt)} is the highest level that leaves two minutes of cruise.";

        ProfileResult Fly(int steps) => ProfileFlyer.Fly(request with { Level = new Feet(lowestFt + steps * stepFt) });
    }

    private static int Compare(LevelTrial a, LevelTrial b)
    {
        if (a.Result is ProfileResult.Flown(var one) && b.Result is ProfileResult.Flown(var other))
        {
            var byFuel = one.TripFuel.CompareTo(other.TripFuel);
            if (byFuel != 0) return byFuel;
            var byTime = one.Time.CompareTo(other.Time);
            return byTime != 0 ? byTime : b.Level.CompareTo(a.Level);
        }

        var byFlown = (b.Result is ProfileResult.Flown).CompareTo(a.Result is ProfileResult.Flown);
        return byFlown != 0 ? byFlown : b.Level.CompareTo(a.Level);
    }
}
