using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>The altitude grid prepared for asking which is the highest square that a line crosses.</summary>
internal sealed class SafeAltitudeGrid
{
    private const double PieceNm = 30;
    private const double FinestNm = 0.1;
    private readonly ImmutableArray<SafeAltitudeCell> _cells;
    private readonly Dictionary<(int South, int West), List<int>> _byDegree = [];

    public SafeAltitudeGrid(ImmutableArray<SafeAltitudeCell> cells)
    {
        _cells = cells;
        for (var index = 0; index < cells.Length; index++)
        {
            var cell = cells[index];
            for (var south = Floor(cell.SouthDeg); south <= cell.SouthDeg + cell.SizeDeg; south++)
                for (var west = Floor(cell.WestDeg); west <= cell.WestDeg + cell.SizeDeg; west++)
                    Bucket(south, west).Add(index);
        }
    }

    public bool IsEmpty => _cells.IsEmpty;

    /// <summary>
    /// The highest safe altitude among the squares that a geodesic crosses or touches; null where it crosses none. The line is halved until a piece lies in
    /// squares no higher than what was found, or is shorter than 0.1 NM.
    /// </summary>
    /// <param name="path">The geodesic.</param>
    /// <param name="isCovered">Whether every place of it, looked at every half piece, lies in some square.</param>
    public Feet? HighestAlong(GeodesicPath path, out bool isCovered)
    {
        isCovered = true;
        double? highestFt = null;
        var lengthNm = path.Length.Value;
        var pieces = Math.Max(1, (int)Math.Ceiling(lengthNm / PieceNm));
        var start = path.At(0).Point;
        isCovered &= Take(start, ref highestFt);
        for (var piece = 0; piece < pieces; piece++)
        {
            var (fromNm, toNm) = (lengthNm * piece / pieces, lengthNm * (piece + 1) / pieces);
            var middle = path.At((fromNm + toNm) / 2).Point;
            var end = path.At(toNm).Point;
            isCovered &= Take(middle, ref highestFt) & Take(end, ref highestFt);
            Search(path, fromNm, start, (fromNm + toNm) / 2, middle, ref highestFt);
            Search(path, (fromNm + toNm) / 2, middle, toNm, end, ref highestFt);
            start = end;
        }

        return highestFt is { } found ? new Feet(found) : null;
    }

    private void Search(GeodesicPath path, double fromNm, GeoPoint from, double toNm, GeoPoint to, ref double? highestFt)
    {
        if (toNm - fromNm < FinestNm || HighestInBox(fromNm, from, toNm, to) is not { } inBox || inBox <= highestFt) return;
        var middleNm = (fromNm + toNm) / 2;
        var middle = path.At(middleNm).Point;
        Take(middle, ref highestFt);
        Search(path, fromNm, from, middleNm, middle, ref highestFt);
        Search(path, middleNm, middle, toNm, to, ref highestFt);
    }

    private bool Take(GeoPoint point, ref double? highestFt)
    {
        if (Highest(point.LatitudeDeg, point.LongitudeDeg, point.LatitudeDeg, point.LongitudeDeg) is not { } here) return false;
        if (!(highestFt >= here)) highestFt = here;
        return true;
    }

    // The highest square that overlaps the box round a short piece, widened by more than the piece can bow out of it.
    private double? HighestInBox(double fromNm, GeoPoint from, double toNm, GeoPoint to)
    {
        var southDeg = Math.Min(from.LatitudeDeg, to.LatitudeDeg);
        var northDeg = Math.Max(from.LatitudeDeg, to.LatitudeDeg);
        var turnDeg = Math.IEEERemainder(to.LongitudeDeg - from.LongitudeDeg, 360);
        var (westDeg, eastDeg) = turnDeg >= 0 ? (from.LongitudeDeg, from.LongitudeDeg + turnDeg) : (from.LongitudeDeg + turnDeg, from.LongitudeDeg);
        var outermostDeg = Math.Max(Math.Abs(southDeg), Math.Abs(northDeg));
        // Near a pole meridians crowd: the box is taken all round.
        if (outermostDeg > 85) return Highest(southDeg - 1, -180, northDeg + 1, 180);

        // A great circle of length L bows by L^2/8R; an arc along a parallel bends by tan(latitude) of that.
        var lengthNm = toNm - fromNm;
        var bowDeg = lengthNm * lengthNm / (8 * 3440) * (1 + Math.Tan(outermostDeg * Math.PI / 180)) / 60 + 1e-6;
        var acrossDeg = bowDeg / Math.Cos(outermostDeg * Math.PI / 180);
        return Highest(southDeg - bowDeg, westDeg - acrossDeg, northDeg + bowDeg, eastDeg + acrossDeg);
    }

    private double? Highest(double southDeg, double westDeg, double northDeg, double eastDeg)
    {
        double? highestFt = null;
        for (var south = Floor(southDeg); south <= northDeg; south++)
        {
            for (var west = Floor(westDeg); west <= eastDeg; west++)
            {
                if (!_byDegree.TryGetValue((south, Turned(west)), out var here)) continue;
                foreach (var index in here)
                {
                    var cell = _cells[index];
                    if (cell.SouthDeg > northDeg || cell.SouthDeg + cell.SizeDeg < southDeg || highestFt >= cell.MinimumAltitude.Value) continue;
                    // How far the box begins east of the cell's western edge, by whole turns.
                    var offsetDeg = (westDeg - cell.WestDeg) % 360;
                    if (offsetDeg < 0) offsetDeg += 360;
                    if (offsetDeg <= cell.SizeDeg || offsetDeg + (eastDeg - westDeg) >= 360) highestFt = cell.MinimumAltitude.Value;
                }
            }
        }

        return highestFt;
    }

    private List<int> Bucket(int south, int west)
    {
        var square = (south, Turned(west));
        if (!_byDegree.TryGetValue(square, out var here)) _byDegree[square] = here = [];
        return here;
    }

    private static int Floor(double degrees) => (int)Math.Floor(degrees);

    private static int Turned(int west) => (west % 360 + 360) % 360;
}
