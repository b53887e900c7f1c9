using System.Collections.Concurrent;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>What was planned once, kept by the row of the leg (the very object) and the fuel it starts from, so that a week with one cell changed plans only what that cell reaches. Safe for several threads.</summary>
/// <param name="beneath">Where to look before planning anew; null for nowhere.</param>
/// <param name="fresh">Trips whose load differs from what is beneath.</param>
internal sealed class PlanMemo(PlanMemo? beneath, ImmutableHashSet<string> fresh)
{
    private readonly ConcurrentDictionary<Leg, SetupResult> _setups = new(ReferenceEqualityComparer.Instance);
    private readonly ConcurrentDictionary<Start, LegPlan> _plans = [];
    private readonly ConcurrentDictionary<Start, LegTrial?> _trials = [];
    private readonly ConcurrentDictionary<Start, Pounds?> _wants = [];

    /// <summary>A memo with nothing in it.</summary>
    public PlanMemo()
        : this(null, [])
    {
    }

    /// <summary>The leg made ready.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="make">Makes it ready.</param>
    public SetupResult Setup(Leg leg, Func<SetupResult> make)
    {
        for (var memo = this; memo is not null; memo = memo.Beneath(leg))
            if (memo._setups.TryGetValue(leg, out var kept)) return kept;
        return _setups[leg] = make();
    }

    /// <summary>The plan of a leg.</summary>
    /// <param name="start">What it starts from.</param>
    /// <param name="make">Plans it.</param>
    public LegPlan Plan(Start start, Func<LegPlan> make) => Kept(memo => memo._plans, start, make);

    /// <summary>A leg flown to see what it needs; null where it cannot be flown.</summary>
    /// <param name="start">What it starts from.</param>
    /// <param name="make">Flies it.</param>
    public LegTrial? Trial(Start start, Func<LegTrial?> make) => Kept(memo => memo._trials, start, make);

    /// <summary>The fuel that a leg wants at off blocks; null where it cannot be flown.</summary>
    /// <param name="start">What it starts from.</param>
    /// <param name="make">Works it out.</param>
    public Pounds? Want(Start start, Func<Pounds?> make) => Kept(memo => memo._wants, start, make);

    private T Kept<T>(Func<PlanMemo, ConcurrentDictionary<Start, T>> shelf, Start start, Func<T> make)
    {
        for (var memo = this; memo is not null; memo = memo.Beneath(start.Leg))
            if (shelf(memo).TryGetValue(start, out var kept)) return kept;
        return shelf(this)[start] = make();
    }

    private PlanMemo? Beneath(Leg leg) => fresh.Contains(leg.Key.Trip) ? null : beneath;

    /// <summary>A leg with what it starts from; the leg is the same only where it is the very object.</summary>
    /// <param name="Leg">The leg.</param>
    /// <param name="Source">The fuel.</param>
    /// <param name="Note">What is to be said about the fuel bought ahead.</param>
    internal readonly record struct Start(Leg Leg, FuelSource Source, string Note)
    {
        /// <inheritdoc/>
        public bool Equals(Start other) => ReferenceEquals(Leg, other.Leg) && Source == other.Source && string.Equals(Note, other.Note, StringComparison.Ordinal);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(Leg), Source);
    }
}
