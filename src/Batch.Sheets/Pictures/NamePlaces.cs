namespace Batch.Sheets.Pictures;

/// <summary>
/// Finds places for names round points: none covers another name, a blocked place or the edge; of those free the one that crosses the fewest lines, the nearest
/// first.
/// </summary>
/// <param name="left">Left edge of the room.</param>
/// <param name="top">Upper edge.</param>
/// <param name="right">Right edge.</param>
/// <param name="bottom">Lower edge.</param>
/// <param name="lines">Lines that names should leave free.</param>
internal sealed class NamePlaces(double left, double top, double right, double bottom, IReadOnlyList<(double X, double Y)[]> lines)
{
    private const double BetweenNames = 5;
    private static readonly double[] Distances = [8, 16, 28, 42];
    private static readonly (double X, double Y)[] Directions = [(1, 0), (-1, 0), (0.75, -0.75), (0.75, 0.75), (-0.75, -0.75), (-0.75, 0.75), (0, -1), (0, 1)];
    private readonly List<(double Left, double Top, double Right, double Bottom)> _taken = [];

    /// <summary>Keeps a symbol free of names, which may stand nearer to it than to one another: the nearest distance beside it is free.</summary>
    public void Block(double x, double y, double radius)
    {
        var aside = Math.Min(radius, Distances[0] - BetweenNames);
        _taken.Add((x - aside, y - radius, x + aside, y + radius));
    }

    /// <summary>Takes a place for a name; null where none is free.</summary>
    /// <param name="x">The point that it names.</param>
    /// <param name="y">The point that it names.</param>
    /// <param name="width">Width of the name.</param>
    /// <param name="size">Size of its letters.</param>
    public (double X, TextAnchor Anchor, double Baseline, bool IsFar, double NearX, double NearY, bool IsCrossed)? Take(
        double x, double y, double width, double size)
    {
        ((double Left, double Top, double Right, double Bottom) Box, TextAnchor Anchor, int Ring, int Crossings)? best = null;
        for (var ring = 0; ring < Distances.Length; ring++)
        {
            foreach (var (toX, toY) in Directions)
            {
                var (middleX, middleY) = (x + (toX * Distances[ring]) + (Math.Sign(toX) * width / 2), y + (toY * (Distances[ring] + (size / 3))));
                var box = (Left: middleX - (width / 2), Top: middleY - (size / 2), Right: middleX + (width / 2), Bottom: middleY + (size / 2));
                if (box.Left < left || box.Right > right || box.Top < top || box.Bottom > bottom || _taken.Any(taken => Touch(taken, box)))
                    continue;
                var crossings = lines.Sum(line => Crossings(line, box));
                if (best is null || crossings + (2 * ring) < best.Value.Crossings + (2 * best.Value.Ring))
                    best = (box, toX > 0 ? TextAnchor.Start : toX < 0 ? TextAnchor.End : TextAnchor.Middle, ring, crossings);
            }
            if (best is { Crossings: 0 })
                break;
        }
        if (best is not { } found)
            return null;
        _taken.Add(found.Box);
        var start = found.Anchor switch
        {
            TextAnchor.Start => found.Box.Left,
            TextAnchor.Middle => (found.Box.Left
            + found.Box.Right) / 2,
            TextAnchor.End => found.Box.Right
        };
        return (start, found.Anchor, found.Box.Bottom - (size * 0.16), found.Ring > 1, Math.Clamp(x, found.Box.Left, found.Box.Right),
            Math.Clamp(y, found.Box.Top, found.Box.Bottom), found.Crossings > 0);
    }

    private static bool Touch((double Left, double Top, double Right, double Bottom) a, (double Left, double Top, double Right, double Bottom) b) =>
        a.Left < b.Right + BetweenNames && b.Left < a.Right + BetweenNames && a.Top < b.Bottom + 1 && b.Top < a.Bottom + 1;

    /// <summary>How many pieces of a line pass through a box, by points along each piece.</summary>
    private static int Crossings((double X, double Y)[] line, (double Left, double Top, double Right, double Bottom) box) =>
        line.Zip(line.Skip(1)).Count(piece => Enumerable.Range(0, 41).Any(k =>
            piece.First.X + ((piece.Second.X - piece.First.X) * k / 40) is var x && piece.First.Y + ((piece.Second.Y - piece.First.Y) * k / 40) is var y
            && x > box.Left && x < box.Right && y > box.Top && y < box.Bottom));
}
