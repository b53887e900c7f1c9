using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// Finds for a chain of legs where to buy fuel ahead (legs with the fuel plan <c>carry</c>) so that the money paid is least. A leg may buy for any number of
/// later legs up to the next airport that is not dearer. Amounts tried are those at which the cost can turn: the fuel with which the legs up to each later one
/// need none, the most that a later leg may have aboard, and the most that this one may. Every choice is paid for by planning every leg after it again, so that
/// the burn of carrying and every limit of every leg count. Searched leg by leg over the fuel left on landing (dynamic programming); states that leave the same
/// fuel are one, the cheapest. Of those that have used up what they bought ahead only the few cheapest go on; what is chosen at last was flown to the end, and
/// so was the chain that carries nothing.
/// </summary>
internal sealed class CarrySearch
{
    /// <summary>
    /// States kept a leg, besides the one that carries nothing; beyond them the dearest are dropped, fuel aboard counted at the cheapest price ahead.
    /// </summary>
    private const int MostStates = 32;

    /// <summary>States that go on, besides the one that carries nothing, of those that leave hardly more than it does.</summary>
    private const int MostSpentStates = 2;

    /// <summary>Fuel left on landing beyond that of the chain that carries nothing up to which what was bought ahead counts as used up [lb].</summary>
    private const double SpentLb = 25;

    /// <summary>
    /// Added to each amount bought ahead [lb]: the iteration of fuel and weight rests within a pound, and for want of one the truck would be called.
    /// </summary>
    private const double SpareLb = 1;

    /// <summary>Halvings of an amount until the centre of gravity is within limits: to some pounds.</summary>
    private const int Halvings = 9;

    private const double SameMoney = 0.005;

    private readonly ImmutableArray<LegSetup?> _setups;
    private readonly ImmutableArray<Pounds> _needed;
    private readonly ChainTrials _trials;
    private readonly Lazy<ImmutableArray<LegTrial?>> _plain;

    /// <summary>Makes a search.</summary>
    /// <param name="setups">The legs in order; null where one cannot be planned.</param>
    /// <param name="needed">For each leg the fuel that must be left on landing because later departures sell none [lb].</param>
    /// <param name="trials">Flies the legs.</param>
    public CarrySearch(ImmutableArray<LegSetup?> setups, ImmutableArray<Pounds> needed, ChainTrials trials)
    {
        (_setups, _needed, _trials) = (setups, needed, trials);
        _plain = new Lazy<ImmutableArray<LegTrial?>>(() => Follow(needed), LazyThreadSafetyMode.None);
    }

    /// <summary>The best amounts to be left on landing and what is said of each leg that carries.</summary>
    /// <param name="currency">Currency of the prices.</param>
    public CarryChoice Best(string currency)
    {
        var targets = _setups.Select((_, leg) => Targets(leg)).ToArray();
        var fits = new bool[_setups.Length];
        if (targets.All(amounts => amounts.IsEmpty)) return Chosen(_needed, []);

        var nodes = new List<Node> { new(null, 0, true, Pounds.Zero, null) };
        for (var leg = 0; leg < _setups.Length; leg++)
        {
            var next = new Dictionary<(long, bool), Node>();
            foreach (var node in nodes)
            {
                foreach (var target in targets[leg].Prepend(_needed[leg]))
                {
                    if (Step(leg, node, target) is not { } reached) continue;
                    fits[leg] |= reached.Target > _needed[leg];
                    if (!next.TryGetValue(reached.Key, out var known) || reached.Cost < known.Cost) next[reached.Key] = reached;
                }
            }

            nodes = Kept(Unspent(next.Values, leg + 1), leg + 1);
        }

        var plain = nodes.Single(node => node.IsPlain);
        var best = nodes.MinBy(node => node.Cost) is { } cheapest && cheapest.Cost < plain.Cost - SameMoney ? cheapest : plain;
        var chosen = new Pounds[_setups.Length];
        var at = _setups.Length;
        for (var node = best; node.Parent is not null; node = node.Parent) chosen[--at] = node.Target;
        return Chosen([.. chosen], Follow([.. chosen]));

        CarryChoice Chosen(ImmutableArray<Pounds> amounts, ImmutableArray<LegTrial?> trials) =>
            new(amounts, [.. _setups.Select((_, leg) => Note(leg, targets[leg], fits[leg], amounts, currency))], trials);
    }

    // One leg flown on from a state; null where a limit forbids it. An amount too great for this leg is cut down to the most that may be aboard.
    private Node? Step(int leg, Node from, Pounds target)
    {
        var isPlain = from.IsPlain && target == _needed[leg];
        if (_plain.Value[leg] is not { } plain) return target == _needed[leg] ? new Node(null, from.Cost, isPlain, target, from) : null;
        if (isPlain) return Next(plain);
        for (var round = 0; round < 4; round++)
        {
            if (_trials.Fly(leg, from.Landing, target) is not { } trial) return null;
            if (!IsWithin(trial)) target -= new Pounds(trial.OverLb + SpareLb);
            else return IsBalanced(trial) ? Next(trial) : Balanced();
            if (target <= _needed[leg]) return null;
        }

        return null;

        bool IsWithin(LegTrial trial) => trial.OverLb <= 0 || trial.Ladder.Aboard <= plain.Ladder.Aboard;

        bool IsBalanced(LegTrial trial) => trial.IsBalanced || !plain.IsBalanced;

        // The amount at which the centre of gravity still lies within, by halving.
        Node? Balanced()
        {
            var (low, high) = (_needed[leg], target);
            LegTrial? best = null;
            for (var halving = 0; halving < Halvings; halving++)
            {
                var middle = low + ((high - low) * 0.5);
                if (_trials.Fly(leg, from.Landing, middle) is { } trial && IsWithin(trial) && IsBalanced(trial)) (low, best) = (middle, trial);
                else high = middle;
            }

            target = low;
            return best is null ? null : Next(best);
        }

        Node Next(LegTrial trial) => new(trial.Ladder.Landing, from.Cost + Cost(leg, trial), isPlain, target, from);
    }

    // The states less all but the cheapest few that leave hardly more than the chain that carries nothing.
    private IEnumerable<Node> Unspent(ICollection<Node> nodes, int nextLeg)
    {
        var plain = (nodes.Single(node => node.IsPlain).Landing ?? Pounds.Zero).Value + SpentLb;
        var price = PricesAhead(nextLeg).First();
        bool IsSpent(Node node) => !node.IsPlain && (node.Landing ?? Pounds.Zero).Value <= plain;
        return nodes.Where(node => !IsSpent(node)).Concat(nodes.Where(IsSpent).OrderBy(node => Worth(node, price)).Take(MostSpentStates));
    }

    // The state that carries nothing and the cheapest others, fuel aboard counted at the cheapest price ahead.
    private List<Node> Kept(IEnumerable<Node> nodes, int nextLeg)
    {
        var cheapest = PricesAhead(nextLeg).Min();
        return [.. nodes.OrderByDescending(node => node.IsPlain).ThenBy(node => Worth(node, cheapest)).Take(MostStates + 1)];
    }

    private IEnumerable<double> PricesAhead(int nextLeg) =>
        Enumerable.Range(nextLeg, _setups.Length - nextLeg).Where(leg => _trials.IsSold(leg) != false).Select(leg => Price(leg) ?? 0).Where(price => price > 0)
            .DefaultIfEmpty(0);

    private static double Worth(Node node, double price) => node.Cost - ((node.Landing ?? Pounds.Zero).Value * price);

    // The amounts left on landing that are worth trying, rising; none for a leg that does not carry.
    private ImmutableArray<Pounds> Targets(int leg)
    {
        if (_setups[leg] is not { Leg.FuelPlan: FuelPlan.Carry } || Price(leg) is not { } here || _trials.IsSold(leg) == false) return [];
        var amounts = new SortedSet<double>();
        for (var later = leg + 1; later < _setups.Length && _setups[later] is { Leg.FuelAboard: null } setup; later++)
        {
            if (_trials.IsSold(later) != false && !(Price(later) > here)) break;
            if (_trials.Wanted(later, _needed[later]) is not { } wanted) break;
            if (Before(leg, later, wanted.Ladder.Aboard) is not { } amount) break;
            amounts.Add(amount.Value);
            if (wanted.Most is { } most && most > wanted.Ladder.Aboard && Before(leg, later, most - new Pounds(2 * SpareLb)) is { } limit)
                amounts.Add(limit.Value);
            if (setup.Type.UsableFuel is { } usable && amount > usable) break;
        }

        return [.. amounts.Where(amount => amount > _needed[leg].Value).Select(amount => new Pounds(amount))];
    }

    // What must be left on landing of a leg so that a later one departs with an amount and none is bought on the way.
    private Pounds? Before(int leg, int later, Pounds aboard)
    {
        for (var between = later - 1; between > leg; between--)
        {
            if (_trials.Wanted(between, aboard + new Pounds(SpareLb)) is not { } trial) return null;
            aboard = trial.Ladder.Aboard;
        }

        return aboard + new Pounds(SpareLb);
    }

    // The chain with given amounts, each leg finding what the one before left.
    private ImmutableArray<LegTrial?> Follow(ImmutableArray<Pounds> targets)
    {
        Pounds? before = null;
        var trials = ImmutableArray.CreateBuilder<LegTrial?>(_setups.Length);
        for (var leg = 0; leg < _setups.Length; leg++)
        {
            var trial = _trials.Fly(leg, before, targets[leg]);
            trials.Add(trial);
            before = trial?.Ladder.Landing;
        }

        return trials.MoveToImmutable();
    }

    private string Note(int leg, ImmutableArray<Pounds> targets, bool fits, ImmutableArray<Pounds> chosen, string currency)
    {
        if (_setups[leg] is not { Leg.FuelPlan: FuelPlan.Carry }) return "";
        if (Price(leg) is null) return "Carry: no fuel price here, nothing carried.";
        if (targets.IsEmpty) return "Carry: no later leg on which this fuel would be cheaper, nothing carried.";
        if (!fits) return "Carry: the fuel of a later leg does not fit within the limits, nothing carried.";
        if (chosen[leg] <= _needed[leg]) return "Carry: buying ahead would not be cheaper, nothing carried.";

        // What this leg's buying ahead is worth: the chain as chosen against the same without it.
        var (with, without) = (Follow(chosen), Follow(chosen.SetItem(leg, _needed[leg])));
        double Sum(ImmutableArray<LegTrial?> trials, Func<int, LegTrial, double> value) =>
            trials.Select((trial, index) => trial is null ? 0 : value(index, trial)).Sum();
        var saving = Sum(without, Cost) - Sum(with, Cost);
        var burned = Sum(with, (_, trial) => trial.Ladder.Trip.Value) - Sum(without, (_, trial) => trial.Ladder.Trip.Value);
        var more = (with[leg]?.Ladder.Uplift ?? Pounds.Zero) - (without[leg]?.Ladder.Uplift ?? Pounds.Zero);
        var served = Enumerable.Range(leg + 1, _setups.Length - leg - 1)
            .Where(later => with[later]?.Ladder.Uplift < without[later]?.Ladder.Uplift)
            .Select(later => _setups[later]?.Leg.Key.ToString());
        return string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"Carry: {more.Value:#,0} lb bought ahead for {string.Join(", ", served)} save {saving:#,0.00} {currency} after {burned:#,0} lb of extra burn.")
                .Replace("  ", " ", StringComparison.Ordinal);
    }

    private double Cost(int leg, LegTrial trial) => trial.Ladder.Uplift.Value * (Price(leg) ?? 0);

    /// <summary>Price of a pound at the departure of a leg; null where the book gives none.</summary>
    private double? Price(int leg) => _setups[leg] is { From.FuelPrice: { } price } setup ? price / (setup.Type.FuelDensity ?? 1) : null;

    /// <summary>A way to come to the end of a leg.</summary>
    private sealed record Node(Pounds? Landing, double Cost, bool IsPlain, Pounds Target, Node? Parent)
    {
        /// <summary>States are the same when they leave the same fuel to a hundredth of a pound; the one that carries nothing stays by itself.</summary>
        public (long, bool) Key => (Landing is { } landing ? (long)Math.Round(landing.Value * 100) : long.MinValue, IsPlain);
    }
}
