using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// Works out the fuel of one leg. Fuel depends on weight and weight on fuel: the flight is computed again with the fuel of the round before until the block
/// fuel moves by no more than 1 lb. Each pound of fuel carried burns a few hundredths of a pound on a leg of this kind, so that the error shrinks some
/// twentyfold a round.
/// </summary>
internal sealed class FuelSolver
{
    private const int MostRounds = 30;
    private const double ToleranceLb = 1;

    /// <summary>
    /// The level of an automatic choice may still change in these first rounds; after them it is held, so that two nearly equal levels cannot take turns for
    /// ever. The first round only estimates it where its weight is a guess, and is never the last one then; where it begins near, the level is chosen at once.
    /// </summary>
    private const int RoundsOfLevelChoice = 2;

    /// <summary>Block fuel that moves by less [lb] does not ask for another level.</summary>
    private const double SameLevelLb = 10;

    private readonly PlanningContext _context;
    private readonly LegSetup _setup;
    private readonly FuelSource _source;
    private readonly NearFlight? _near;
    private readonly LevelFlight _levels;
    private readonly AlternateFlights _alternates;
    private readonly AdditionalFuel _additional;

    /// <summary>Makes a solver for one leg.</summary>
    /// <param name="context">The week's context.</param>
    /// <param name="setup">The leg.</param>
    /// <param name="source">The fuel it starts from.</param>
    /// <param name="near">The same leg worked out from other fuel, to begin near it; null to begin from a guess.</param>
    public FuelSolver(PlanningContext context, LegSetup setup, FuelSource source, NearFlight? near = null)
    {
        _context = context;
        _setup = setup;
        _source = source;
        _near = near;
        _levels = new LevelFlight(context, setup, near?.Level);
        _alternates = new AlternateFlights(context, setup, near?.AlternateLevels ?? []);
        _additional = new AdditionalFuel(context, setup);
    }

    /// <summary>The fuel.</summary>
    public FuelOutcome Solve()
    {
        var zeroFuel = _setup.Load.ZeroFuel.Weight;
        var block = FirstGuess();
        // Rounds on the way may leave the tables although the last one does not, so they may take a table's edge; the last one is held to what the operator
        // allows.
        var mayUseTableEdge = true;
        var moved = double.PositiveInfinity;
        for (var round = 1; ; round++)
        {
            var takeoffWeight = zeroFuel + Pounds.Max(block - _setup.Taxi, Pounds.Zero);
            var choice = round > RoundsOfLevelChoice || (_near is not null && moved < SameLevelLb) ? LevelChoice.Kept
                : round == 1 && IsGuess && _near is null ? LevelChoice.Estimated
                : LevelChoice.Flown;
            var flown = _levels.Fly(takeoffWeight, choice, mayUseTableEdge);
            if (flown is ProfileResult.NotFlyable notFlyable)
                return new FuelOutcome.NotFlyable(notFlyable.Why, notFlyable.Where) { IsByWeight = notFlyable.IsByWeight };
            if (flown is not ProfileResult.Flown { Profile: var profile })
                return new FuelOutcome.NotFlyable("No level leaves two minutes of cruise between climb and descent.", "");

            var landing = _setup.Takeoff + profile.Time;
            var landingWeight = takeoffWeight - profile.TripFuel;
            if (_alternates.Fly(landingWeight, landing, choice, mayUseTableEdge) is { } alternateProblem) return alternateProblem;

            var outcome = new FuelReserves(_setup).Of(profile, _alternates.Plans, landing, landingWeight);

            var alternate = _alternates.Farthest?.Fuel ?? outcome.InsteadOfAlternate;
            var additional = _additional.Of(profile, outcome.Contingency + alternate + outcome.FinalReserve);
            var ladder = Ladder(profile, outcome, alternate, additional, round);
            moved = Math.Abs(ladder.Aboard.Value - block.Value);
            if ((moved <= ToleranceLb && choice != LevelChoice.Estimated) || round >= MostRounds)
            {
                ImmutableArray<string> edges =
                    [.. profile.TableEdges, .. _alternates.TableEdges, .. outcome.TableEdges.Select(edge => ProfileTableEdges.Taken(edge.Table, edge.Reading))];
                if (!edges.IsEmpty && !_context.Week.Operator.MayUseTableEdge)
                {
                    if (outcome.TableEdges is [var (table, reading), ..]) return new FuelOutcome.NotFlyable(ProfileTableEdges.Refusal(table, reading),
                        "")
                    { IsByWeight = ProfileTableEdges.IsWeight(table, reading) };
                    if (!mayUseTableEdge) return new FuelOutcome.NotFlyable(edges[0], "");
                    mayUseTableEdge = false;
                    continue;
                }

                return new FuelOutcome.Solved(
                    profile,
                    _alternates.Plans,
                    ladder with { IsConverged = moved <= ToleranceLb },
                    [.. Assumptions(ladder), .. outcome.Assumptions, .. additional.Assumptions, .. edges],
                    [.. _levels.Notes, .. _alternates.Notes, .. Notes(ladder), .. additional.Notes]);
            }

            block = ladder.Aboard;
        }
    }

    /// <summary>Whether the first round's block fuel is a guess and not what the dispatcher asks for.</summary>
    private bool IsGuess => _setup.Leg.FuelPlan is not (FuelPlan.Amount or FuelPlan.Full);

    /// <summary>
    /// What the dispatcher asks for, what the leg worked out before would load now, else half the tanks: any guess will do, a near one saves rounds.
    /// </summary>
    private Pounds FirstGuess()
    {
        if (_near is { Ladder: var ladder } && IsGuess)
        {
            var now = ladder with
            {
                NeededAfterLanding = _source.NeededAfterLanding,
                Before = _source.Before,
                IsBeforeKnown = _source.IsBeforeKnown,
                IsSoldHere = _source.IsSoldHere,
                Aboard = _source.Before,
            };
            // What more fuel burns is fuel itself, and burns its share too.
            var more = Fuelled(now).Aboard - ladder.Aboard;
            var burn = _levels.BurnOf(more, _setup.Load.ZeroFuel.Weight + ladder.Aboard - ladder.Taxi);
            var isLikely = Math.Abs(burn.Value) < Math.Abs(more.Value) / 2;
            return Fuelled(now with { Trip = ladder.Trip + (isLikely ? burn * (more.Value / (more - burn).Value) : Pounds.Zero) }).Aboard;
        }

        var half = (_setup.Type.UsableFuel ?? Pounds.Zero) * 0.5;
        return _setup.Leg.FuelPlan switch
        {
            FuelPlan.Amount amount => amount.Block,
            FuelPlan.Full => _setup.Type.UsableFuel ?? half,
            _ => _source.IsBeforeKnown ? Pounds.Max(_source.Before, half) : half,
        };
    }

    private FuelLadder Ladder(FlightProfile profile, ReserveAmounts reserves, Pounds alternate, AdditionalAmount additional, int round) =>
        Fuelled(new FuelLadder
        {
            Taxi = _setup.Taxi,
            Trip = profile.TripFuel,
            Contingency = reserves.Contingency,
            Alternate = alternate,
            FinalReserve = reserves.FinalReserve,
            FinalReserveTime = reserves.FinalReserveTime,
            FinalReserveFlow = reserves.FinalReserveFlow,
            Additional = additional.Amount,
            CriticalPoints = additional.Points,
            Discretionary = _setup.Leg.FuelPlan is FuelPlan.Minimum minimum ? minimum.Extra : Pounds.Zero,
            NeededAfterLanding = _source.NeededAfterLanding,
            Before = _source.Before,
            IsBeforeKnown = _source.IsBeforeKnown,
            IsSoldHere = _source.IsSoldHere,
            Uplift = Pounds.Zero,
            Aboard = _source.Before,
            Most = Pounds.Zero,
            MostBoundBy = "",
            Rounds = round + (_near?.Ladder.Rounds ?? 0),
            IsConverged = false,
        });

    /// <summary>A ladder with nothing loaded yet, with what is loaded.</summary>
    private FuelLadder Fuelled(FuelLadder ladder)
    {
        var wanted = Wanted(ladder);
        if (!_source.CanLoad) return _source.IsBeforeKnown ? ladder : ladder with { Before = wanted, Aboard = wanted };
        var uplift = RoundedUp(wanted - _source.Before);
        return ladder with { Uplift = uplift, Aboard = _source.Before + uplift };
    }

    private Pounds Wanted(FuelLadder ladder)
    {
        var forLater = ladder.Taxi + ladder.Trip + Pounds.Max(ladder.Contingency + ladder.NeededAfterLanding, _source.CarriedAfterLanding);
        var least = Pounds.Max(ladder.Required + ladder.Discretionary, forLater);
        return _setup.Leg.FuelPlan switch
        {
            // An amount that no tank holds is a slip of its own leg: the leg before is not asked for it.
            FuelPlan.Amount amount when _source.IsTrial && _setup.Type.UsableFuel is { } tanks && amount.Block > tanks => least,
            FuelPlan.Amount amount when _source.IsTrial => Pounds.Max(amount.Block, forLater),
            FuelPlan.Full when _setup.Type.UsableFuel is { } usable && !_source.IsTrial => usable,
            FuelPlan.Amount amount => amount.Block,
            _ => least,
        };
    }

    /// <summary>
    /// Uplift rounded up to the operator's step, but not beyond full tanks for the sake of rounding; a trial asks for what is needed, not for what is
    /// delivered, and an amount that was written is loaded as written.
    /// </summary>
    private Pounds RoundedUp(Pounds missing)
    {
        if (missing.Value <= 0) return Pounds.Zero;
        if (_source.IsTrial || _setup.Leg.FuelPlan is FuelPlan.Amount) return missing;
        if (_context.Week.Operator.UpliftRounding is not { Value: > 0 } step) return missing;
        var rounded = new Pounds(Math.Ceiling(missing.Value / step.Value) * step.Value);
        var room = _setup.Type.UsableFuel is { } usable ? usable - _source.Before : rounded;
        return rounded <= room ? rounded : Pounds.Max(missing, Pounds.Min(room, rounded));
    }

    private IEnumerable<string> Assumptions(FuelLadder ladder)
    {
        if (_setup.Leg.FuelPlan is null) yield return "Fuel plan not said: minimum taken.";
        if (_setup.Leg.FuelPlan is FuelPlan.Full && _setup.Type.UsableFuel is null)
            yield return $"Full tanks asked for, but Types has no usable fuel for {_setup.Type.Name}: minimum taken.";
        if (!ladder.IsBeforeKnown)
        {
            yield return _source.CanLoad
                ? "Fuel aboard before fuelling not known: taken as 0 lb, so the uplift shown is the whole block fuel."
                : $"Fuel aboard not known and {_setup.From.Ident} sells none: taken as what the leg requires.";
        }

        if (_source.IsSoldHere is null) yield return $"Whether {_setup.From.Ident} sells fuel is not said: taken as yes.";
    }

    private IEnumerable<string> Notes(FuelLadder ladder)
    {
        if (_source.IsSoldHere == false) yield return $"{_setup.From.Ident} sells no {FuelName}: flown with what is aboard.";
        if (ladder.NeededAfterLanding.Value > 0 && ladder.Aboard > ladder.Required)
            yield return string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"Carries fuel for a later departure: {ladder.NeededAfterLanding.Value:#,0} lb needed after landing.");
        if (_setup.Leg.FuelPlan is FuelPlan.Amount amount && ladder.Before > amount.Block)
            yield return string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"More fuel is aboard than planned: {ladder.Before.Value:#,0} lb stand in the tanks, {amount.Block.Value:#,0} lb were asked for.");
    }

    private string FuelName => _setup.Type.Fuel switch
    {
        FuelKind.JetA1 => "Jet A-1",
        FuelKind.Avgas => "Avgas",
        null => "fuel",
    };
}
