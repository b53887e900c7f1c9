using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Holds the states of a flight against the envelopes of a type.</summary>
internal static class EnvelopeTesting
{
    /// <summary>The tests at takeoff, during the flight, at landing and with no fuel, as far as there are envelopes.</summary>
    /// <param name="type">The type.</param>
    /// <param name="flown">States from takeoff to landing; between two of them the fuel burns at one arm.</param>
    /// <param name="zeroFuel">State with no fuel.</param>
    /// <param name="assumptions">Sentences about envelopes that stand in for others, added to.</param>
    public static ImmutableArray<EnvelopeTest> Of(AircraftType type, IReadOnlyList<WeightAndBalance> flown, WeightAndBalance zeroFuel,
        ICollection<string> assumptions)
    {
        if (type.Envelopes.IsEmpty) return [];
        var tests = ImmutableArray.CreateBuilder<EnvelopeTest>();
        var takeoff = Polygon(type, EnvelopeCase.Takeoff);
        if (takeoff is null)
        {
            assumptions.Add($"The book gives no takeoff envelope of {type.Name}: takeoff and flight not tested.");
        }
        else
        {
            tests.Add(Test(takeoff, flown[0], EnvelopeCase.Takeoff, "takeoff"));
            tests.Add(Worst(takeoff, flown));
        }

        Add(EnvelopeCase.Landing, flown[^1], "landing");
        Add(EnvelopeCase.ZeroFuel, zeroFuel, "zero fuel");
        return tests.ToImmutable();

        void Add(EnvelopeCase envelopeCase, WeightAndBalance state, string when)
        {
            var own = Polygon(type, envelopeCase);
            if (own is null)
                assumptions.Add($"The book gives no {when} envelope of {type.Name}: {(takeoff is null ? "not tested" : "the takeoff envelope holds")}.");
            if ((own ?? takeoff) is { } polygon) tests.Add(Test(polygon, state, own is null ? EnvelopeCase.Takeoff : envelopeCase, when));
        }
    }

    private static EnvelopePolygon? Polygon(AircraftType type, EnvelopeCase envelopeCase) =>
        type.Envelopes.FirstOrDefault(envelope => envelope.Case == envelopeCase) is { } envelope ? new EnvelopePolygon(envelope) : null;

    private static EnvelopeTest Test(EnvelopePolygon polygon, WeightAndBalance state, EnvelopeCase envelopeCase, string when) =>
        polygon.Test(state.Weight.Value, state.CentreOfGravity.Value, envelopeCase, when);

    // The worst of the points at which the margin can be least: see Candidates. Outside before inside, then the least margin in arm.
    private static EnvelopeTest Worst(EnvelopePolygon polygon, IReadOnlyList<WeightAndBalance> flown)
    {
        var worst = Test(polygon, flown[0], EnvelopeCase.Takeoff, "during the flight");
        for (var i = 0; i + 1 < flown.Count; i++)
        {
            foreach (var state in Candidates(polygon, flown[i], flown[i + 1]))
            {
                var test = Test(polygon, state, EnvelopeCase.Takeoff, "during the flight");
                if ((test.IsInside, test.ArmMargin.Value).CompareTo((worst.IsInside, worst.ArmMargin.Value)) < 0) worst = test;
            }
        }

        return worst;
    }

    // While fuel burns at one arm s the moment is linear in weight, M = s W + c, so the centre of gravity runs on the curve arm = s + c/W. It meets an edge arm
    // = a + b W where b W^2 + (a - s) W - c = 0, and runs parallel to it (margin greatest or least) where W^2 = -c/b. Between those weights, the ends and the
    // weights of the vertices the curve does not change sides; the middle of each stretch says which side it is on.
    private static List<WeightAndBalance> Candidates(EnvelopePolygon polygon, WeightAndBalance from, WeightAndBalance to)
    {
        var (highLb, lowLb) = (from.Weight.Value, to.Weight.Value);
        var s = (from.Moment.Value - to.Moment.Value) / (highLb - lowLb);
        var c = from.Moment.Value - (s * highLb);
        var weights = new SortedSet<double> { highLb, lowLb };
        foreach (var (start, end) in polygon.Edges())
        {
            Take(start.WeightLb);
            if (start.WeightLb == end.WeightLb) continue;
            var b = (end.ArmIn - start.ArmIn) / (end.WeightLb - start.WeightLb);
            var a = start.ArmIn - (b * start.WeightLb);
            if (b == 0)
            {
                if (a != s) Take(c / (a - s));
                continue;
            }

            Take(Math.Sqrt(-c / b));
            var root = Math.Sqrt(((a - s) * (a - s)) + (4 * b * c));
            Take((s - a + root) / (2 * b));
            Take((s - a - root) / (2 * b));
        }

        var states = new List<WeightAndBalance>();
        var before = double.NaN;
        foreach (var weight in weights)
        {
            if (!double.IsNaN(before)) states.Add(State((before + weight) / 2));
            states.Add(State(weight));
            before = weight;
        }

        return states;

        void Take(double weightLb)
        {
            if (weightLb > lowLb && weightLb < highLb) weights.Add(weightLb);
        }

        WeightAndBalance State(double weightLb) => new(new Pounds(weightLb), new PoundInches((s * weightLb) + c));
    }
}
