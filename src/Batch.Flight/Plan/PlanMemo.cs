using System.Collections.Concurrent;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// What was planned once, kept by the row of the leg (the very object) and the fuel it starts from, so that a week with one cell changed plans only what that
/// cell reaches. Safe for several threads.
/// </summary>
internal sealed class PlanMemo
{
    private readonly ConcurrentDictionary<Leg, SetupResult> _setups;
    private readonly ConcurrentDictionary<Start, LegPlan> _plans;
    private readonly ConcurrentDictionary<Start, LegTrial?> _trials;
    private readonly ConcurrentDictionary<Start, Pounds?> _wants;
    private readonly ConcurrentDictionary<Start, NearFlight?> _nears;
    private readonly PlanMemo? _beneath;
    private readonly Func<Leg, bool> _isFresh;
    private readonly bool _takesUp;

    /// <summary>A memo with nothing in it.</summary>
    public PlanMemo()
        : this(null, static _ => false, takesUp: false)
    {
    }

    private PlanMemo(PlanMemo? beneath, Func<Leg, bool> isFresh, bool takesUp)
    {
        (_beneath, _isFresh, _takesUp) = (beneath, isFresh, takesUp);
        (_setups, _plans, _trials, _wants, _nears) = (new(ReferenceEqualityComparer.Instance), [], [], [], []);
    }

    // The same without what is beneath.
    private PlanMemo(PlanMemo like)
    {
        (_setups, _plans, _trials, _wants, _nears, _isFresh) = (like._setups, like._plans, like._trials, like._wants, like._nears, static _ => false);
    }

    /// <summary>A memo over this one, for a week that is tried.</summary>
    /// <param name="isFresh">Whether a leg is planned with something that this memo has not seen.</param>
    public PlanMemo Over(Func<Leg, bool> isFresh) => new(this, isFresh, takesUp: false);

    /// <summary>A memo for the same week read again: it takes from this one what it needs, and the rest is forgotten with this one.</summary>
    /// <param name="isFresh">Whether a leg is planned with something that this memo has not seen.</param>
    public PlanMemo After(Func<Leg, bool> isFresh) => new(new PlanMemo(this), isFresh, takesUp: true);

    /// <summary>The leg made ready.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="make">Makes it ready.</param>
    public SetupResult Setup(Leg leg, Func<SetupResult> make)
    {
        for (var memo = this; memo is not null; memo = memo.Beneath(leg))
            if (memo._setups.TryGetValue(leg, out var kept)) return _takesUp ? _setups[leg] = kept : kept;
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

    /// <summary>The fuel of a leg worked out, to begin near it with other fuel; null where it cannot be flown.</summary>
    /// <param name="start">What it starts from.</param>
    /// <param name="make">Works it out.</param>
    public NearFlight? Near(Start start, Func<NearFlight?> make) => Kept(memo => memo._nears, start, make);

    private T Kept<T>(Func<PlanMemo, ConcurrentDictionary<Start, T>> shelf, Start start, Func<T> make)
    {
        for (var memo = this; memo is not null; memo = memo.Beneath(start.Leg))
            if (shelf(memo).TryGetValue(start, out var kept)) return _takesUp ? shelf(this)[start] = kept : kept;
        return shelf(this)[start] = make();
    }

    private PlanMemo? Beneath(Leg leg) => _isFresh(leg) ? null : _beneath;

    /// <summary>A leg with what it starts from; the leg is the same only where it is the very object.</summary>
    /// <param name="Leg">The leg.</param>
    /// <param name="Source">The fuel.</param>
    /// <param name="Note">What is to be said about the fuel bought ahead.</param>
    /// <param name="Trial">The trial near which it begins; the same only where it is the very object. Null for none.</param>
    internal readonly record struct Start(Leg Leg, FuelSource Source, string Note, LegTrial? Trial = null)
    {
        /// <inheritdoc/>
        public bool Equals(Start other) =>
            ReferenceEquals(Leg, other.Leg) && ReferenceEquals(Trial, other.Trial) && Source == other.Source
            && string.Equals(Note, other.Note, StringComparison.Ordinal);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(Leg), Source);
    }
}
