using System.Globalization;
using System.Text;
using Batch.Paper.Paint;

namespace Batch.Paper.Tests;

/// <summary>The recorder: a display list as text, one item a line, for tests and for reading.</summary>
internal static class DisplayListText
{
    public static string Of(IEnumerable<IReadOnlyList<DisplayItem>> pages)
    {
        var text = new StringBuilder();
        foreach (var (page, index) in pages.Select((p, i) => (p, i)))
        {
            text.Append("page ").Append((index + 1).ToString(CultureInfo.InvariantCulture)).Append('\n');
            foreach (var item in page) text.Append("  ").Append(Line(item)).Append('\n');
        }

        return text.ToString();
    }

    private static string Line(DisplayItem item) => item switch
    {
        DisplayItem.Shape s => "shape " + Steps(s.Steps) + (s.Fill is { } fill ? " fill " + fill : "") + (s.EvenOdd ? " evenodd" : "")
            + (s.Pen is { } pen
                ? " pen " + pen.Colour + " " + N(pen.Width) + (pen.Dashes.Length > 0 ? " dashes " + string.Join(',', pen.Dashes.Select(N)) : "")
                : ""),
        DisplayItem.Text t => "text " + N(t.Place.E) + " " + N(t.Place.F)
            + (t.Place is { A: 1, B: 0, C: 0, D: 1 } ? "" : " matrix " + N(t.Place.A) + "," + N(t.Place.B) + "," + N(t.Place.C) + "," + N(t.Place.D))
            + " wide " + N(t.Advances.Sum()) + " " + t.Font.Name + " " + N(t.Size) + " " + t.Colour + " \"" + string.Concat(t.Texts) + "\"",
        DisplayItem.Image i => "image " + Box(i.X, i.Y, i.Width, i.Height) + " " + i.Bytes.Length.ToString(CultureInfo.InvariantCulture) + " bytes",
        DisplayItem.Clip c => "clip " + Box(c.X, c.Y, c.Width, c.Height),
        DisplayItem.EndClip => "end clip",
        DisplayItem.Link l => "link " + Box(l.X, l.Y, l.Width, l.Height) + " " + l.Target,
        DisplayItem.Anchor a => "anchor " + a.Id + " " + N(a.Y),
        DisplayItem.Bookmark b => "bookmark " + N(b.Level) + " " + N(b.Y) + " \"" + b.Title + "\"",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Steps(ImmutableArray<PathStep> steps) => string.Join(' ', steps.Select(s => s.Verb switch
    {
        PathVerb.Move => "M" + N(s.X) + "," + N(s.Y),
        PathVerb.Line => "L" + N(s.X) + "," + N(s.Y),
        PathVerb.Curve => "C" + N(s.X1) + "," + N(s.Y1) + "," + N(s.X2) + "," + N(s.Y2) + "," + N(s.X) + "," + N(s.Y),
        PathVerb.Close => "Z",
    }));

    private static string Box(double x, double y, double width, double height) => N(x) + " " + N(y) + " " + N(width) + " x " + N(height);

    private static string N(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
