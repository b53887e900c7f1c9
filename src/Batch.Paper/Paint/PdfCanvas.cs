using System.Globalization;
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
    private string _font = "";

    public byte[] Draw(IEnumerable<DisplayItem> items, double heightPx)
    {
        _out.Append("0.75 0 0 -0.75 0 ").Append(N(heightPx * 0.75)).Append(" cm\n");
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
                    _out.Append("q ").Append(N(image.Width)).Append(" 0 0 ").Append(N(-image.Height)).Append(' ').Append(N(image.X)).Append(' ').Append(N(image.Y + image.Height))
                        .Append(" cm ").Append(resources.Image(image.Bytes)).Append(" Do Q\n");
                    break;
                case DisplayItem.Clip clip:
                    _out.Append("q ").Append(N(clip.X)).Append(' ').Append(N(clip.Y)).Append(' ').Append(N(clip.Width)).Append(' ').Append(N(clip.Height)).Append(" re W n\n");
                    break;
                case DisplayItem.EndClip:
                    _out.Append("Q\n");
                    (_fill, _stroke, _alpha, _font) = (new Colour(0, 0, 0, -1), new Colour(0, 0, 0, -1), (-1, -1), "");
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
        if (Rectangle(shape.Steps) is { } box) _out.Append(N(box.X)).Append(' ').Append(N(box.Y)).Append(' ').Append(N(box.Width)).Append(' ').Append(N(box.Height)).Append(" re ");
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
            switch (step.Verb)
            {
                case PathVerb.Move: Point(step.X, step.Y, "m"); break;
                case PathVerb.Line: Point(step.X, step.Y, "l"); break;
                case PathVerb.Curve:
                    _out.Append(N(step.X1)).Append(' ').Append(N(step.Y1)).Append(' ').Append(N(step.X2)).Append(' ').Append(N(step.Y2)).Append(' ');
                    Point(step.X, step.Y, "c");
                    break;
                case PathVerb.Close: _out.Append("h "); break;
            }
        }
    }

    private void Text(DisplayItem.Text text)
    {
        if (text.Size <= 0 || !text.Colour.IsVisible) return;
        SetAlpha(text.Colour.Alpha, _alpha.Stroke);
        SetFill(text.Colour);
        var m = text.Place;
        var font = resources.Font(text.Font, text.Glyphs, text.Texts) + " " + N(text.Size) + " Tf ";
        _out.Append("BT ").Append(font == _font ? "" : font)
            .Append(M(m.A)).Append(' ').Append(M(m.B)).Append(' ').Append(M(-m.C)).Append(' ').Append(M(-m.D)).Append(' ').Append(N(m.E)).Append(' ').Append(N(m.F)).Append(" Tm [<");
        _font = font;
        for (var i = 0; i < text.Glyphs.Length; i++)
        {
            _out.Append(text.Glyphs[i].ToString("X4", CultureInfo.InvariantCulture));
            var adjust = Math.Round((text.Font.Advance(text.Glyphs[i]) - text.Advances[i] / text.Size) * 1000, 1);
            if (adjust != 0 && i + 1 < text.Glyphs.Length) _out.Append('>').Append(N(adjust)).Append('<');
        }

        _out.Append(">] TJ ET\n");
    }

    private void SetFill(Colour colour)
    {
        if (colour == _fill) return;
        _fill = colour;
        _out.Append(Rgb(colour)).Append(" rg\n");
    }

    private void SetPen(Pen pen)
    {
        if (pen.Colour != _stroke) _out.Append(Rgb(pen.Colour)).Append(" RG\n");
        _stroke = pen.Colour;
        _out.Append(N(pen.Width)).Append(" w ").Append(pen.Cap).Append(" J ").Append(pen.Join).Append(" j [").Append(string.Join(' ', pen.Dashes.Select(N))).Append("] ").Append(N(Math.Max(0, pen.DashOffset))).Append(" d\n");
    }

    private void SetAlpha(double fill, double stroke)
    {
        if ((fill, stroke) == _alpha) return;
        _alpha = (fill, stroke);
        _out.Append(resources.Alpha(fill, stroke)).Append(" gs\n");
    }

    private void Point(double x, double y, string verb) => _out.Append(N(x)).Append(' ').Append(N(y)).Append(' ').Append(verb).Append(' ');

    private static string Rgb(Colour colour) => N(colour.Red / 255.0) + " " + N(colour.Green / 255.0) + " " + N(colour.Blue / 255.0);

    private static string N(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    private static string M(double value) => (Math.Round(value, 6) + 0.0).ToString("0.######", CultureInfo.InvariantCulture);
}
