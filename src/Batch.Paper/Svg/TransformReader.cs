using Batch.Paper.Paint;

namespace Batch.Paper.Svg;

/// <summary>The `transform` attribute (CSS Transforms 1, two dimensions).</summary>
internal static class TransformReader
{
    /// <summary>The map, or null when the text is not one.</summary>
    public static Matrix? Read(string text)
    {
        var map = Matrix.Identity;
        for (var rest = text.Trim(' ', ',', '\n', '\t'); rest.Length > 0;)
        {
            var (open, close) = (rest.IndexOf('(', StringComparison.Ordinal), rest.IndexOf(')', StringComparison.Ordinal));
            if (open <= 0 || close < open) return null;
            var numbers = new SvgNumbers(rest[(open + 1)..close]);
            var n = new List<double>();
            while (!numbers.AtEnd)
            {
                if (numbers.Number() is not { } value) return null;
                n.Add(value);
            }

            if (One(rest[..open].Trim(), n) is not { } one) return null;
            map = map.After(one);
            rest = rest[(close + 1)..].Trim(' ', ',', '\n', '\t');
        }

        return map;
    }

    private static Matrix? One(string name, List<double> n)
    {
        double Radians(double degrees) => degrees * Math.PI / 180;
        return (name, n.Count) switch
        {
            ("translate", 1) => Matrix.Shift(n[0], 0),
            ("translate", 2) => Matrix.Shift(n[0], n[1]),
            ("scale", 1) => new Matrix(n[0], 0, 0, n[0], 0, 0),
            ("scale", 2) => new Matrix(n[0], 0, 0, n[1], 0, 0),
            ("rotate", 1) => Turn(Radians(n[0])),
            ("rotate", 3) => Matrix.Shift(n[1], n[2]).After(Turn(Radians(n[0]))).After(Matrix.Shift(-n[1], -n[2])),
            ("skewX", 1) => new Matrix(1, 0, Math.Tan(Radians(n[0])), 1, 0, 0),
            ("skewY", 1) => new Matrix(1, Math.Tan(Radians(n[0])), 0, 1, 0, 0),
            ("matrix", 6) => new Matrix(n[0], n[1], n[2], n[3], n[4], n[5]),
            _ => null,
        };
    }

    private static Matrix Turn(double angle) => new(Math.Cos(angle), Math.Sin(angle), -Math.Sin(angle), Math.Cos(angle), 0, 0);
}
