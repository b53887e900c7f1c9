using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// Plans the legs of one aircraft in order. First, from the last leg backward, what fuel must be left for departures that sell none; then forward, each leg
/// finding the fuel that the one before left.
/// </summary>
/// <param name="context">The week's context.</param>
/// <param name="legs">Legs of one aircraft in order of time.</param>
/// <param name="guard">Runs the planning of one leg.</param>
internal sealed class ChainPlanner(PlanningContext context, ImmutableArray<Leg> legs, Func<Leg, Func<LegPlan>, LegPlan> guard)
{
    private readonly SetupResult?[] _setups = new SetupResult?[legs.Length];

    /// <summary>The plans in order.</summary>
    public ImmutableArray<LegPlan> Plan()
    {
        var needed = NeededAfterLanding();
        var plans = ImmutableArray.CreateBuilder<LegPlan>(legs.Length);
        LegPlan? before = null;
        for (var i = 0; i < legs.Length; i++)
        {
            var index = i;
            before = guard(legs[i], () => Setup(index) switch
            {
                SetupResult.NotReady notReady => notReady.Plan,
                SetupResult.Ready { Setup: var setup } => PlanLeg(setup, Source(setup, before, needed[index]), index),
                _ => throw new System.Diagnostics.UnreachableException(),
            });
            plans.Add(before);
        }

        return plans.DrainToImmutable();
    }

    private LegPlan PlanLeg(LegSetup setup, FuelSource source, int index)
    {
        var plain = LegPlanner.Plan(context, setup, source);
        return setup.Leg.FuelPlan is FuelPlan.Carry && plain is LegPlan.Planned planned ? CarriedAhead(setup, source, planned, index) : plain;
    }

    /// <summary>The setup of a leg, made once. A leg whose preparation breaks down does so again, under its own guard, when its turn comes.</summary>
    private SetupResult Setup(int index) => _setups[index] ??= LegPreparation.Prepare(context, legs[index]);

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
                if (new FuelSolver(context, setup, trial).Solve() is FuelOutcome.Solved solved) needed[index - 1] = solved.Ladder.Aboard;
                return NoPlan(index);
            });
        }

        return needed;
    }

    private LegPlan.Unplanned NoPlan(int index) => new() { Leg = legs[index], Why = "Looked at ahead." };

    private FuelSource Source(LegSetup setup, LegPlan? before, Pounds needed)
    {
        var isSold = IsSold(setup);
        if (setup.Leg.FuelAboard is { } stated) return new FuelSource(stated, IsBeforeKnown: true, isSold, needed, IsTrial: false);
        if (before is LegPlan.Planned planned) return new FuelSource(Pounds.Max(planned.Fuel.Landing, Pounds.Zero), IsBeforeKnown: true, isSold, needed, IsTrial: false);
        return new FuelSource(Pounds.Zero, IsBeforeKnown: false, isSold, needed, IsTrial: false);
    }

    /// <summary>Whether the departure sells the type's fuel at off blocks, notices heeded; null where the book does not say.</summary>
    private bool? IsSold(LegSetup setup)
    {
        if (context.Notices.First(setup.From.Ident, NoticeEffect.NoFuel, setup.Leg.OffBlocks) is not null) return false;
        return setup.From.FuelsSold is { } sold && setup.Type.Fuel is { } fuel ? sold.Contains(fuel) : null;
    }

    /// <summary>
    /// The leg with the next leg's fuel bought here too, where that is cheaper after the burn that the extra weight causes and still within every limit; else the plain plan.
    /// </summary>
    private LegPlan.Planned CarriedAhead(LegSetup setup, FuelSource source, LegPlan.Planned plain, int index)
    {
        if (!source.CanLoad || setup.From.FuelPrice is not { } priceHere) return plain with { Notes = plain.Notes.Add("Carry: no fuel price here, nothing carried.") };
        if (index + 1 >= legs.Length || Setup(index + 1) is not SetupResult.Ready { Setup: var next } || next.From.FuelPrice is not { } priceNext || next.Leg.FuelAboard is not null)
            return plain with { Notes = plain.Notes.Add("Carry: no later leg with a fuel price, nothing carried.") };
        if (new FuelSolver(context, next, new FuelSource(Pounds.Zero, IsBeforeKnown: true, IsSoldHere: true, Pounds.Zero, IsTrial: true)).Solve() is not FuelOutcome.Solved ahead)
            return plain;

        var wanted = Pounds.Max(source.NeededAfterLanding, ahead.Ladder.Aboard);
        if (LegPlanner.Plan(context, setup, source with { NeededAfterLanding = wanted }) is not LegPlan.Planned carried || carried.Fuel.Aboard > carried.Fuel.Most)
            return plain with { Notes = plain.Notes.Add("Carry: the next leg's fuel does not fit within the limits, nothing carried.") };

        var density = setup.Type.FuelDensity ?? 1;
        var paidHere = (carried.Fuel.Uplift - plain.Fuel.Uplift).Value / density * priceHere;
        var savedThere = (carried.Fuel.Landing - plain.Fuel.Landing).Value / density * priceNext;
        var saving = savedThere - paidHere;
        if (saving <= 0) return plain with { Notes = plain.Notes.Add("Carry: buying ahead would not be cheaper, nothing carried.") };
        var currency = context.Week.Operator.Currency;
        return carried with
        {
            Notes = carried.Notes.Add(string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"Carry: {(carried.Fuel.Uplift - plain.Fuel.Uplift).Value:0} lb bought ahead for the next leg save {saving:0.00} {currency} after the extra burn.")),
        };
    }
}
