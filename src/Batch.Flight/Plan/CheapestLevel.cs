using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// A route flown at the usable level that burns least; where it is too short for every usable level, at the highest that leaves two minutes of cruise.
/// </summary>
internal static class CheapestLevel
{
    /// <summary>Estimates within this factor of the least are flown.</summary>
    private const double NearEnough = 1.12;

    /// <summary>On shorter routes than this [NM] climb and descent outweigh the cruise that the estimate looks at: every level is flown.</summary>
    private const double ShortNm = 150;

    /// <summary>The flight.</summary>
    /// <param name="request">What to fly; its level is not looked at.</param>
    /// <param name="rules">Flight rules.</param>
    /// <param name="ceiling">Ceiling [ft]; null for none.</param>
    /// <param name="known">The level that was best at nearly the same weight, round which to look; null to look at all.</param>
    /// <param name="choice">Whether the level is only estimated, and that one flown, or found by flying.</param>
    /// <param name="note">One sentence where the route is too short for every usable
    /// level, with the minimum altitude where that is not kept; empty else.</param>
    /// <returns>The profile; not flyable where no usable level is left or none can be flown.</returns>
    public static ProfileResult Fly(ProfileRequest request, FlightRules rules, Feet? ceiling, Feet? known, LevelChoice choice, out string note)
    {
        note = "";
        var surface = Feet.Max(request.StartElevation, request.EndElevation);
        var candidates = LevelCandidates.Of(request.Route, rules, request.Type, request.Setting, ceiling, surface);
        if (candidates.IsEmpty) return new ProfileResult.NotFlyable("No usable level lies between the minimum altitudes and the ceiling.", "");
        if (known is { } before && LevelFinder.BestNear(request, candidates, before) is { Result: ProfileResult.Flown near }) return near;
        var (likely, thriftiest) = Likely(request, candidates);
        if (choice == LevelChoice.Estimated && thriftiest is { } guess && ProfileFlyer.Fly(request with { Level = guess }) is ProfileResult.Flown estimated)
            return estimated;
        if (likely.Length < candidates.Length && LevelFinder.Best(request, likely) is { Result: ProfileResult.Flown best }) return best;
        if (LevelFinder.Best(request, candidates).Result is var flown and not ProfileResult.TooShort) return flown;

        var result = LevelFinder.FlyHighest(request with { Level = candidates[0] }, rules, out _);
        if (result is not ProfileResult.Flown { Profile: var profile }) return result;
        var least = request.Route.Segments.Max(segment => segment.MinimumAltitude);
        note = $"the route is too short for every usable level; {ProfileTrack.Altitude(profile.Level.Value)} is the highest that leaves two minutes of cruise"
            + (least is { } minimum && profile.Level < minimum ? $", below the minimum altitude of {ProfileTrack.Altitude(minimum.Value)}." : ".");
        return result;
    }

    // The levels whose estimate comes near the best, so that the thriftiest is among them, and the one whose estimate is the best; on routes that are not short
    // the estimate is within a few percent of the flight.
    private static (ImmutableArray<Feet> Likely, Feet? Thriftiest) Likely(ProfileRequest request, ImmutableArray<Feet> candidates)
    {
        var estimates = new double?[candidates.Length];
        var leastLb = double.PositiveInfinity;
        for (var index = 0; index < candidates.Length; index++)
        {
            estimates[index] = LevelEstimate.BurnLb(request, candidates[index]);
            leastLb = Math.Min(leastLb, estimates[index] ?? double.PositiveInfinity);
        }

        if (double.IsInfinity(leastLb)) return (candidates, null);
        var thriftiest = candidates[Array.IndexOf(estimates, leastLb)];
        if (request.Route.Length.Value < ShortNm) return (candidates, thriftiest);
        var likely = ImmutableArray.CreateBuilder<Feet>(candidates.Length);
        for (var index = 0; index < candidates.Length; index++)
            if (estimates[index] is not { } lb || lb <= leastLb * NearEnough) likely.Add(candidates[index]);
        return (likely.ToImmutable(), thriftiest);
    }
}
