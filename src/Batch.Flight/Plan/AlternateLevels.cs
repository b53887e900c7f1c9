using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// The levels of flights to alternates. They are found by flying at a weight near the one asked for, in the air that holds when the flight begins, so that
/// every round of the fuel iteration, every leg to the same place and every change tried on the week shares them. An answer depends on what is asked alone, not
/// on what was asked before. Safe for several threads.
/// </summary>
internal sealed class AlternateLevels
{
    /// <summary>
    /// Weights at which levels are found lie this factor apart; a weight is rounded down, because what is too high for it then shows when it is flown.
    /// </summary>
    private const double WeightStep = 1.05;

    /// <summary>No flight to an alternate takes longer, save the oddest.</summary>
    private static readonly Duration LongFlight = Duration.FromHours(2);

    private readonly ConcurrentDictionary<Case, Found?> _found = [];

    /// <summary>
    /// The usable level that burns least at about the weight and moment of a flight; null where none was found there, or the air changes under way.
    /// </summary>
    /// <param name="request">What to fly; its level is not looked at.</param>
    /// <param name="from">The airport it begins at.</param>
    /// <param name="to">The airport it ends at.</param>
    /// <param name="rules">Flight rules.</param>
    /// <param name="ceiling">Ceiling [ft]; null for none.</param>
    public Found? Of(ProfileRequest request, Airport from, Airport to, FlightRules rules, Feet? ceiling)
    {
        // Where the wind changes under way the moment of the flight decides: it is not shared.
        if (!(request.TakeoffWeight.Value > 0) || request.Air.ChangesBetween(request.Takeoff, request.Takeoff + LongFlight)) return null;
        var step = (int)Math.Floor(Math.Log(request.TakeoffWeight.Value) / Math.Log(WeightStep));
        var holdsSince = request.Air.HoldsSince(request.Takeoff);
        var asked = new Case(from, to, request.Type, request.Setting, rules, ceiling, request.BurnBias, LevelCandidates.IsMostlyEastbound(request.Route), step,
            holdsSince);
        return _found.GetOrAdd(
            asked,
            static (_, it) => CheapestLevel.Fly(it.Request, it.Rules, it.Ceiling, null, LevelChoice.Flown,
                out var note) is ProfileResult.Flown { Profile: var profile } ? new Found(profile.Level, note) : null,
            (Request: request with { TakeoffWeight = new Pounds(Math.Pow(WeightStep, step)), Takeoff = holdsSince, MayUseTableEdge = true }, Rules: rules,
                Ceiling: ceiling));
    }

    /// <summary>A level.</summary>
    /// <param name="Level">The level [ft].</param>
    /// <param name="Note">What was decided, as a sentence; empty where nothing is to be said.</param>
    internal sealed record Found(Feet Level, string Note);

    private readonly record struct Case(
        Airport From, Airport To, AircraftType Type, string Setting, FlightRules Rules, Feet? Ceiling, double BurnBias, bool IsEastbound, int Weight,
        Instant HoldsSince)
    {
        public bool Equals(Case other) =>
            ReferenceEquals(From, other.From) && ReferenceEquals(To, other.To) && ReferenceEquals(Type, other.Type) && string.Equals(Setting, other.Setting,
                StringComparison.Ordinal)
            && (Rules, Ceiling, BurnBias, IsEastbound, Weight, HoldsSince) == (other.Rules, other.Ceiling, other.BurnBias, other.IsEastbound, other.Weight,
                other.HoldsSince);

        public override int GetHashCode() =>
            HashCode.Combine(RuntimeHelpers.GetHashCode(From), RuntimeHelpers.GetHashCode(To), RuntimeHelpers.GetHashCode(Type), Setting, Ceiling, Weight,
                IsEastbound, HoldsSince);
    }
}
