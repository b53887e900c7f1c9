using System.Text;
using Batch.Paper.Style;

namespace Batch.Paper.Paint;

/// <summary>Display items of one page to a PDF content stream (ISO 32000-2, section 8). Px and y down, by a matrix at the start.</summary>
internal sealed class PdfCanvas(PdfResources resources)
{
    private readonly StringBuilder _out = new();
    private Colour _fill = Colour.Black;
    private Colour _stroke = Colour.Black;
    private (double Fill, double Stroke) _alpha = (1, 1);
    private (string Name, double Size) _font;

    public byte[] Draw(IEnumerable<DisplayItem> items, double heightPx)
    {
        Put(0.75, 0, 0, -0.75, 0, heightPx * 0.75).Append("cm\n");
        foreach (var item in items)
        {
            switch (item)
            {
                case DisplayItem.Shape shape:
                    Shape(shape);
                    break;
                case DisplayItem.Text text:
                    Text(text);
                    break;
                case DisplayItem.Image image:
                    _out.Append("q ");
                    Put(image.Width, 0, 0, -image.Height, image.X, image.Y + image.Height).Append("cm ").Append(resources.Image(image.Bytes)).Append(" Do Q\n");
                    break;
                case DisplayItem.Clip clip:
                    _out.Append("q ");
                    Put(clip.X, clip.Y, clip.Width, clip.Height).Append("re W n\n");
                    break;
                case DisplayItem.EndClip:
                    _out.Append("Q\n");
                    (_fill, _stroke, _alpha, _font) = (new Colour(0, 0, 0, -1), new Colour(0, 0, 0, -1), (-1, -1), default);
                    break;
            }
        }

        return Encoding.ASCII.GetBytes(_out.ToString());
    }

    private void Shape(DisplayItem.Shape shape)
    {
        var (fill, pen) = (shape.Fill is { IsVisible: true }, shape.Pen is { Colour.IsVisible: true, Width: > 0 });
        if (!fill && !pen) return;
        SetAlpha(shape.Fill?.Alpha ?? 1, shape.Pen?.Colour.Alpha ?? 1);
        if (fill && shape.Fill is { } colour) SetFill(colour);
        if (pen && shape.Pen is { } line) SetPen(line);
        if (Rectangle(shape.Steps) is { } box) Put(box.X, box.Y, box.Width, box.Height).Append("re ");
        else Outline(shape.Steps);
        _out.Append((fill, pen, shape.EvenOdd) switch { (true, true, true) => "B*", (true, true, false) => "B", (true, false, true) => "f*", (true, false, false) => "f", _ => "S" }).Append('\n');
    }

    /// <summary>An outline that is an upright rectangle from its top left corner clockwise, for which the format has a short form.</summary>
    private static Rect? Rectangle(ImmutableArray<PathStep> steps)
    {
        if (steps is not [{ Verb: PathVerb.Move } a, { Verb: PathVerb.Line } b, { Verb: PathVerb.Line } c, { Verb: PathVerb.Line } d, { Verb: PathVerb.Close }]) return null;
        return a.Y == b.Y && b.X == c.X && c.Y == d.Y && d.X == a.X ? new Rect(a.X, a.Y, c.X - a.X, c.Y - a.Y) : null;
    }

    private void Outline(ImmutableArray<PathStep> steps)
    {
        foreach (var step in steps)
        {
            _ = step.Verb switch
            {
                PathVerb.Move => Put(step.X, step.Y).Append("m "),
                PathVerb.Line => Put(step.X, step.Y).Append("l "),
                PathVerb.Curve => Put(step.X1, step.Y1, step.X2, step.Y2, step.X, step.Y).Append("c "),
                PathVerb.Close => _out.Append("h "),
            };
        }
    }

    private void Text(DisplayItem.Text text)
    {
        if (text.Size <= 0 || !text.Colour.IsVisible) return;
        SetAlpha(text.Colour.Alpha, _alpha.Stroke);
        SetFill(text.Colour);
        var font = resources.Font(text.Font, text.Glyphs, text.Texts);
        _out.Append("BT ");
        if ((font, text.Size) != _font)
        {
            _out.Append(font).Append(' ');
            Put(text.Size).Append("Tf ");
        }

        _font = (font, text.Size);
        var m = text.Place;
        foreach (var part in (ReadOnlySpan<double>)[m.A, m.B, -m.C, -m.D]) Number(part, 1_000_000);
        Put(m.E, m.F).Append("Tm [<");
        for (var i = 0; i < text.Glyphs.Length; i++)
        {
            for (var shift = 12; shift >= 0; shift -= 4) _out.Append("0123456789ABCDEF"[text.Glyphs[i] >> shift & 15]);
            var adjust = Math.Round((text.Font.Advance(text.Glyphs[i]) - text.Advances[i] / text.Size) * 1000, 1);
            if (adjust == 0 || i + 1 == text.Glyphs.Length) continue;
            _out.Append('>');
            Put(adjust).Append('<');
        }

        _out.Append(">] TJ ET\n");
    }

    private void SetFill(Colour colour)
    {
        if (colour != _fill) Rgb(colour).Append("rg\n");
        _fill = colour;
    }

    private void SetPen(Pen pen)
    {
        if (pen.Colour != _stroke) Rgb(pen.Colour).Append("RG\n");
        _stroke = pen.Colour;
        Put(pen.Width).Append("w ").Append(pen.Cap).Append(" J ").Append(pen.Join).Append(" j [");
        Put(pen.Dashes.AsSpan()).Append("] ");
        Put(Math.Max(0, pen.DashOffset)).Append("d\n");
    }

    private void SetAlpha(double fill, double stroke)
    {
        if ((fill, stroke) == _alpha) return;
        _alpha = (fill, stroke);
        _out.Append(resources.Alpha(fill, stroke)).Append(" gs\n");
    }

    private StringBuilder Rgb(Colour colour) => Put(colour.Red / 255.0, colour.Green / 255.0, colour.Blue / 255.0);

    /// <summary>Numbers with two decimals, each with a blank behind it.</summary>
    private StringBuilder Put(params ReadOnlySpan<double> values)
    {
        foreach (var value in values) Number(value, 100);
        return _out;
    }

    /// <summary>A number in whole parts of one, by hand: it is asked for ten thousand times a sheet.</summary>
    private void Number(double value, int parts)
    {
        var whole = (long)Math.Round(Math.Abs(value) * parts);
        if (value < 0 && whole > 0) _out.Append('-');
        _out.Append(whole / parts);
        var rest = (int)(whole % parts);
        if (rest > 0) _out.Append('.');
        for (; rest > 0; rest = rest * 10 % parts) _out.Append((char)('0' + rest * 10 / parts));
        _out.Append(' ');
    }
}
