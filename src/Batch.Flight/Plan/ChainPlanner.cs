using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// Plans the legs of one aircraft in order. First, from the last leg backward, what fuel must be left for departures that sell none; then where fuel is bought
/// ahead because it is cheaper; then forward, each leg finding the fuel that the one before left.
/// </summary>
/// <param name="context">The week's context.</param>
/// <param name="legs">Legs of one aircraft in order of time.</param>
/// <param name="guard">Runs the planning of one leg.</param>
internal sealed class ChainPlanner(PlanningContext context, ImmutableArray<Leg> legs, Func<Leg, Func<LegPlan>, LegPlan> guard)
{
    /// <summary>The iteration of fuel and weight rests within a pound; where none is sold that pound must be there.</summary>
    private static readonly Pounds RestWithin = new(1);

    private readonly SetupResult?[] _setups = new SetupResult?[legs.Length];

    /// <summary>The plans in order.</summary>
    public ImmutableArray<LegPlan> Plan()
    {
        var needed = NeededAfterLanding();
        var carry = Carry(needed);
        var plans = ImmutableArray.CreateBuilder<LegPlan>(legs.Length);
        LegPlan? before = null;
        for (var i = 0; i < legs.Length; i++)
        {
            var index = i;
            before = guard(legs[i], () => Setup(index) switch
            {
                SetupResult.NotReady notReady => notReady.Plan,
                SetupResult.Ready { Setup: var setup } => PlanLeg(
                    setup,
                    Source(setup, (before as LegPlan.Planned)?.Fuel.Landing, needed[index]) with
                    {
                        CarriedAfterLanding = carry?.AfterLanding[index]
                        ?? Pounds.Zero
                    },
                    carry?.Notes[index] ?? "",
                    carry?.Trial(index)),
                _ => throw new System.Diagnostics.UnreachableException(),
            });
            plans.Add(before);
        }

        return plans.DrainToImmutable();
    }

    private LegPlan PlanLeg(LegSetup setup, FuelSource source, string carryNote, LegTrial? trial) =>
        context.Memo.Plan(
            new PlanMemo.Start(setup.Leg, source, carryNote, trial),
            () => LegPlanner.Plan(context, setup, source, trial?.Flight) is var plan && plan is LegPlan.Planned planned && carryNote.Length > 0
                ? planned with { Notes = planned.Notes.Add(carryNote) }
                : plan);

    /// <summary>The setup of a leg, made once. A leg whose preparation breaks down does so again, under its own guard, when its turn comes.</summary>
    private SetupResult Setup(int index) => _setups[index] ??= context.Memo.Setup(legs[index], () => LegPreparation.Prepare(context, legs[index]));

    /// <summary>For each leg the fuel that must be left on landing because the departures after it sell none.</summary>
    private Pounds[] NeededAfterLanding()
    {
        var needed = new Pounds[legs.Length];
        for (var i = legs.Length - 1; i > 0; i--)
        {
            if (legs[i].FuelAboard is not null) continue;
            var index = i;
            _ = guard(legs[i], () =>
            {
                if (Setup(index) is not SetupResult.Ready { Setup: var setup })
                    return NoPlan(index);
                if (IsSold(setup) != false)
                    return NoPlan(index);
                var trial = new FuelSource(Pounds.Zero, IsBeforeKnown: true, IsSoldHere: false, needed[index], IsTrial: true);
                var want = context.Memo.Want(new PlanMemo.Start(setup.Leg, trial, ""),
                    () => new FuelSolver(context, setup, trial).Solve() is FuelOutcome.Solved solved ? solved.Ladder.Aboard : null);
                if (want is { } aboard) needed[index - 1] = aboard + RestWithin;
                return NoPlan(index);
            });
        }

        return needed;
    }

    private LegPlan.Unplanned NoPlan(int index) => new() { Leg = legs[index], Why = "Looked at ahead." };

    /// <summary>Where fuel is bought ahead; null where no leg is asked to.</summary>
    private CarryChoice? Carry(Pounds[] needed)
    {
        if (!legs.Any(leg => leg.FuelPlan is FuelPlan.Carry)) return null;
        var setups = ImmutableArray.CreateBuilder<LegSetup?>(legs.Length);
        for (var i = 0; i < legs.Length; i++)
        {
            var index = i;
            LegSetup? found = null;
            _ = guard(legs[i], () =>
            {
                found = Setup(index) is SetupResult.Ready { Setup: var setup } ? setup : null;
                return NoPlan(index);
            });
            setups.Add(found);
        }

        var all = setups.MoveToImmutable();
        var trials = new ChainTrials(
            legs.Length,
            (leg, before) => all[leg] is { } setup ? Source(setup, before, needed[leg]) : null,
            leg => all[leg] is { } setup ? IsSold(setup) : null,
            (leg, source) =>
            {
                LegTrial? trial = null;
                _ = guard(legs[leg], () =>
                {
                    trial = all[leg] is { } setup
                        ? context.Memo.Trial(new PlanMemo.Start(setup.Leg, source, ""), () => LegPlanner.Try(context, setup, source, Unladen(setup)))
                        : null;
                    return NoPlan(leg);
                });
                return trial;
            });
        return new CarrySearch(all, [.. needed], trials).Best(context.Week.Operator.Currency);
    }

    /// <summary>
    /// The leg with what it needs for itself alone, near which its trials begin; the same whatever the chain, so that an answer does not depend on what was
    /// asked before.
    /// </summary>
    private NearFlight? Unladen(LegSetup setup)
    {
        var source = new FuelSource(Pounds.Zero, IsBeforeKnown: true, IsSold(setup), Pounds.Zero, IsTrial: true);
        return context.Memo.Near(new PlanMemo.Start(setup.Leg, source, ""), () => NearFlight.Of(new FuelSolver(context, setup, source).Solve()));
    }

    private FuelSource Source(LegSetup setup, Pounds? before, Pounds needed)
    {
        var isSold = IsSold(setup);
        if (setup.Leg.FuelAboard is { } stated) return new FuelSource(stated, IsBeforeKnown: true, isSold, needed, IsTrial: false);
        if (before is { } landed)
        {
            // What cannot be in the tanks is not carried on: fuel typed wrong for one leg fails that leg, not the week.
            var left = Pounds.Max(landed, Pounds.Zero);
            return new FuelSource(setup.Type.UsableFuel is { } usable ? Pounds.Min(left, usable) : left, IsBeforeKnown: true, isSold, needed, IsTrial: false);
        }

        return new FuelSource(Pounds.Zero, IsBeforeKnown: false, isSold, needed, IsTrial: false);
    }

    /// <summary>Whether the departure sells the type's fuel at off blocks, notices heeded; null where the book does not say.</summary>
    private bool? IsSold(LegSetup setup)
    {
        if (context.Notices.First(setup.From.Ident, NoticeEffect.NoFuel, setup.Leg.OffBlocks) is not null) return false;
        return setup.From.FuelsSold is { } sold && setup.Type.Fuel is { } fuel ? sold.Contains(fuel) : null;
    }
}
