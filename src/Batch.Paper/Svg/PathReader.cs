using Batch.Paper.Paint;

namespace Batch.Paper.Svg;

/// <summary>SVG path data to absolute lines and cubics (SVG 2, section 9.3). Reading stops at the first error, as the standard says.</summary>
internal sealed class PathReader
{
    private readonly ImmutableArray<PathStep>.Builder _steps = ImmutableArray.CreateBuilder<PathStep>();
    private double _x, _y, _startX, _startY, _controlX, _controlY;
    private char _previous;

    /// <summary>The steps read, and whether the data was sound to its end.</summary>
    public static (ImmutableArray<PathStep> Steps, bool Sound) Read(string data)
    {
        var reader = new PathReader();
        var sound = reader.ReadAll(new SvgNumbers(data));
        return (reader._steps.ToImmutable(), sound);
    }

    private bool ReadAll(SvgNumbers data)
    {
        var command = '\0';
        while (!data.AtEnd)
        {
            if (data.Letter() is { } letter) command = letter;
            else if (command is '\0' or 'z' or 'Z') return false;
            if (_steps.Count == 0 && command is not ('m' or 'M')) return false;
            if (!One(command, data)) return false;
            _previous = char.ToUpperInvariant(command);
            if (command == 'M') command = 'L';
            if (command == 'm') command = 'l';
        }

        return true;
    }

    private bool One(char command, SvgNumbers data)
    {
        var relative = char.IsAsciiLetterLower(command);
        var (ox, oy) = relative ? (_x, _y) : (0, 0);
        var upper = char.ToUpperInvariant(command);
        if (upper == 'Z')
        {
            _steps.Add(PathStep.Close());
            (_x, _y) = (_startX, _startY);
            return true;
        }

        if (upper == 'A') return Arc(data, ox, oy);
        var count = upper switch { 'M' or 'L' or 'T' => 2, 'H' or 'V' => 1, 'S' or 'Q' => 4, 'C' => 6, _ => 0 };
        if (count == 0) return false;
        var n = new double[count];
        for (var i = 0; i < count; i++)
        {
            if (data.Number() is not { } value) return false;
            n[i] = value + (upper == 'V' || (i % 2 == 1 && upper != 'H') ? oy : ox);
        }

        switch (upper)
        {
            case 'M':
                (_startX, _startY) = (n[0], n[1]);
                _steps.Add(PathStep.Move(n[0], n[1]));
                break;
            case 'L' or 'H' or 'V':
                n = upper switch { 'H' => [n[0], _y], 'V' => [_x, n[0]], _ => n };
                _steps.Add(PathStep.Line(n[0], n[1]));
                break;
            case 'C':
                Cubic(n[0], n[1], n[2], n[3], n[4], n[5]);
                break;
            case 'S':
                var (sx, sy) = Reflected('C', 'S');
                Cubic(sx, sy, n[0], n[1], n[2], n[3]);
                break;
            default:
                var (qx, qy) = upper == 'Q' ? (n[0], n[1]) : Reflected('Q', 'T');
                var (ex, ey) = (n[^2], n[^1]);
                Cubic(_x + 2.0 / 3 * (qx - _x), _y + 2.0 / 3 * (qy - _y), ex + 2.0 / 3 * (qx - ex), ey + 2.0 / 3 * (qy - ey), ex, ey);
                (_controlX, _controlY) = (qx, qy);
                break;
        }

        (_x, _y) = (n[^2], n[^1]);
        return true;
    }

    private (double, double) Reflected(char a, char b) => _previous == a || _previous == b ? (2 * _x - _controlX, 2 * _y - _controlY) : (_x, _y);

    private void Cubic(double x1, double y1, double x2, double y2, double x, double y)
    {
        _steps.Add(PathStep.Curve(x1, y1, x2, y2, x, y));
        (_controlX, _controlY) = (x2, y2);
    }

    /// <summary>Elliptical arc by centre (SVG 2, appendix B.2.4), in pieces of at most a quarter turn.</summary>
    private bool Arc(SvgNumbers data, double ox, double oy)
    {
        if (data.Number() is not { } rx || data.Number() is not { } ry || data.Number() is not { } turn || data.Flag() is not { } large || data.Flag() is not { } sweep
            || data.Number() is not { } dx || data.Number() is not { } dy) return false;
        var (x, y) = (ox + dx, oy + dy);
        (rx, ry) = (Math.Abs(rx), Math.Abs(ry));
        if (rx == 0 || ry == 0 || (x == _x && y == _y)) _steps.Add(PathStep.Line(x, y));
        else ArcPieces(rx, ry, turn * Math.PI / 180, large, sweep, x, y);
        (_x, _y) = (x, y);
        return true;
    }

    private void ArcPieces(double rx, double ry, double phi, bool large, bool sweep, double x, double y)
    {
        var (cos, sin) = (Math.Cos(phi), Math.Sin(phi));
        var (hx, hy) = ((_x - x) / 2, (_y - y) / 2);
        var (px, py) = (cos * hx + sin * hy, -sin * hx + cos * hy);
        var over = px * px / (rx * rx) + py * py / (ry * ry);
        if (over > 1) (rx, ry) = (rx * Math.Sqrt(over), ry * Math.Sqrt(over));
        var under = rx * rx * py * py + ry * ry * px * px;
        var root = Math.Sqrt(Math.Max(0, (rx * rx * ry * ry - under) / under)) * (large == sweep ? -1 : 1);
        var (cxp, cyp) = (root * rx * py / ry, -root * ry * px / rx);
        var (cx, cy) = (cos * cxp - sin * cyp + (_x + x) / 2, sin * cxp + cos * cyp + (_y + y) / 2);
        var from = Math.Atan2((py - cyp) / ry, (px - cxp) / rx);
        var sweepAngle = Math.Atan2((-py - cyp) / ry, (-px - cxp) / rx) - from;
        if (sweep && sweepAngle < 0) sweepAngle += 2 * Math.PI;
        if (!sweep && sweepAngle > 0) sweepAngle -= 2 * Math.PI;
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweepAngle) / (Math.PI / 2) - 1e-9));
        var map = new Matrix(cos * rx, sin * rx, -sin * ry, cos * ry, cx, cy);
        var step = sweepAngle / pieces;
        var k = 4.0 / 3 * Math.Tan(step / 4);
        for (var i = 0; i < pieces; i++)
        {
            var (a, b) = (from + i * step, from + (i + 1) * step);
            _steps.Add(PathStep.Curve(Math.Cos(a) - k * Math.Sin(a), Math.Sin(a) + k * Math.Cos(a), Math.Cos(b) + k * Math.Sin(b), Math.Sin(b) - k * Math.Cos(b), Math.Cos(b), Math.Sin(b)).Through(map));
        }
    }
}
