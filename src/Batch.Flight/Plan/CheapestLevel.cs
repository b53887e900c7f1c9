using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>A route flown at the usable level that burns least; where it is too short for every usable level, at the highest that leaves two minutes of cruise.</summary>
internal static class CheapestLevel
{
    /// <summary>The flight.</summary>
    /// <param name="request">What to fly; its level is not looked at.</param>
    /// <param name="rules">Flight rules.</param>
    /// <param name="ceiling">Ceiling [ft]; null for none.</param>
    /// <returns>The profile; not flyable where no usable level is left or none can be flown.</returns>
    public static ProfileResult Fly(ProfileRequest request, FlightRules rules, Feet? ceiling)
    {
        var surface = Feet.Max(request.StartElevation, request.EndElevation);
        var candidates = LevelCandidates.Of(request.Route, rules, request.Type, request.Setting, ceiling, surface);
        if (candidates.IsEmpty) return new ProfileResult.NotFlyable("No usable level lies between the minimum altitudes and the ceiling.", "");
        var trials = LevelFinder.Rank(request, candidates);
        if (trials[0].Result is ProfileResult.Flown flown) return flown;
        return trials.Any(trial => trial.Result is ProfileResult.TooShort)
            ? LevelFinder.FlyHighest(request with { Level = candidates[0] }, rules, out _)
            : trials[^1].Result;
    }
}
