using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// A polygon of weight and arm, closed: its edge belongs to it, with a tolerance of 1e-9 lb and in for the rounding of sums. It is looked at by slices: the
/// stretches of arm inside at one weight, or of weight inside at one arm. At the weight of a vertex the slice is all that is reached from just below, from just
/// above and along level edges.
/// </summary>
internal sealed class EnvelopePolygon
{
    /// <summary>What still counts as on the edge [lb, in].</summary>
    public const double Tolerance = 1e-9;

    private readonly (double WeightLb, double ArmIn)[] _vertices;

    /// <summary>Makes the polygon of an envelope.</summary>
    /// <param name="envelope">The envelope, three vertices or more.</param>
    public EnvelopePolygon(Envelope envelope)
    {
        _vertices = [.. envelope.Vertices.Select(vertex => (vertex.Weight.Value, vertex.Arm.Value))];
        LowestLb = _vertices.Min(vertex => vertex.WeightLb);
        HighestLb = _vertices.Max(vertex => vertex.WeightLb);
    }

    /// <summary>Lowest weight [lb].</summary>
    public double LowestLb { get; }

    /// <summary>Highest weight [lb].</summary>
    public double HighestLb { get; }

    /// <summary>The edges, each from a vertex to the next.</summary>
    public IEnumerable<((double WeightLb, double ArmIn) From, (double WeightLb, double ArmIn) To)> Edges()
    {
        for (var i = 0; i < _vertices.Length; i++) yield return (_vertices[i], _vertices[(i + 1) % _vertices.Length]);
    }

    /// <summary>Holds a state of loading against the polygon.</summary>
    /// <param name="weightLb">Weight [lb].</param>
    /// <param name="armIn">Centre of gravity [in].</param>
    /// <param name="envelopeCase">The condition, for the answer.</param>
    /// <param name="when">The state, for the answer.</param>
    public EnvelopeTest Test(double weightLb, double armIn, EnvelopeCase envelopeCase, string when)
    {
        var arms = Slice(weightLb, alongArm: true);
        var (isInside, margin, forward, aft) = (false, 0d, (Inches?)null, (Inches?)null);
        if (arms.Count > 0)
        {
            var (low, high) = arms.MinBy(stretch => Outside(armIn, stretch));
            var outside = Outside(armIn, (low, high));
            isInside = outside <= Tolerance;
            margin = isInside ? Math.Max(0, Math.Min(armIn - low, high - armIn)) : -outside;
            (forward, aft) = (new Inches(low), new Inches(high));
        }
        else
        {
            var nearestLb = weightLb > HighestLb ? HighestLb : LowestLb;
            margin = -_vertices.Where(vertex => vertex.WeightLb == nearestLb).Min(vertex => Math.Abs(vertex.ArmIn - armIn));
        }

        return new EnvelopeTest
        {
            Case = envelopeCase,
            When = when,
            Point = new EnvelopePoint(new Pounds(weightLb), new Inches(armIn)),
            IsInside = isInside,
            ArmMargin = new Inches(margin),
            ForwardLimit = forward,
            AftLimit = aft,
            WeightMargin = new Pounds(TopAt(armIn, weightLb) - weightLb),
        };
    }

    // The top edge above a state; beyond the arms of the polygon, that at its nearest arm.
    private double TopAt(double armIn, double weightLb)
    {
        var held = Math.Clamp(armIn, _vertices.Min(vertex => vertex.ArmIn), _vertices.Max(vertex => vertex.ArmIn));
        return Slice(held, alongArm: false).MinBy(stretch => Outside(weightLb, stretch)).High;
    }

    private static double Outside(double at, (double Low, double High) stretch) => Math.Max(0, Math.Max(stretch.Low - at, at - stretch.High));

    private List<(double Low, double High)> Slice(double at, bool alongArm)
    {
        var stretches = new List<(double Low, double High)>();
        var (fromBelow, fromAbove) = (new List<double>(), new List<double>());
        foreach (var (from, to) in Edges())
        {
            var (x1, y1) = alongArm ? from : (from.ArmIn, from.WeightLb);
            var (x2, y2) = alongArm ? to : (to.ArmIn, to.WeightLb);
            var (low, high) = x1 <= x2 ? (x1, x2) : (x2, x1);
            if (at < low - Tolerance || at > high + Tolerance) continue;
            if (high - low <= Tolerance)
            {
                stretches.Add((Math.Min(y1, y2), Math.Max(y1, y2)));
                continue;
            }

            var crossing = y1 + ((y2 - y1) * Math.Clamp((at - x1) / (x2 - x1), 0, 1));
            if (at > low + Tolerance) fromBelow.Add(crossing);
            if (at < high - Tolerance) fromAbove.Add(crossing);
        }

        Pair(fromBelow, stretches);
        Pair(fromAbove, stretches);
        return Joined(stretches);
    }

    // A closed polygon is crossed an even number of times: in and out in turn.
    private static void Pair(List<double> crossings, List<(double Low, double High)> stretches)
    {
        crossings.Sort();
        for (var i = 0; i + 1 < crossings.Count; i += 2) stretches.Add((crossings[i], crossings[i + 1]));
    }

    private static List<(double Low, double High)> Joined(List<(double Low, double High)> stretches)
    {
        stretches.Sort();
        var joined = new List<(double Low, double High)>();
        foreach (var stretch in stretches)
        {
            if (joined.Count > 0 && stretch.Low <= joined[^1].High + Tolerance) joined[^1] = (joined[^1].Low, Math.Max(joined[^1].High, stretch.High));
            else joined.Add(stretch);
        }

        return joined;
    }
}
