using AngleSharp.Dom;
using Batch.Paper.Fonts;
using Batch.Paper.Html;
using Batch.Paper.Paint;
using Batch.Paper.Style;

namespace Batch.Paper.Svg;

/// <summary>A text element: runs of glyphs, gathered in chunks that are anchored as a whole (SVG 2, section 11).</summary>
internal sealed class SvgText(Cascade cascade, FontLibrary fonts, Report report)
{
    private readonly List<(TextRuns Run, double X, double Y, ComputedStyle Style, int Chunk)> _runs = [];
    private readonly List<(double From, double To, string Anchor)> _chunks = [];
    private double _x;
    private double _y;
    private bool _afterSpace = true;

    public void Paint(List<DisplayItem> items, IElement text, ComputedStyle style, Matrix map, double opacity)
    {
        _chunks.Add((0, 0, style.TextAnchor));
        Element(text, style);
        foreach (var (run, x, y, own, chunk) in _runs)
        {
            var (from, to, anchor) = _chunks[chunk];
            var shift = anchor switch { "middle" => (from - to) / 2, "end" => from - to, _ => 0 };
            var down = own.MiddleBaseline ? fonts.Face(own.FontWeight, own.Italic).XHeight * own.FontSize / 2 : 0;
            if (own.Fill is { } fill && BoxPainter.Faded(fill, opacity * own.FillOpacity) is { IsVisible: true } colour)
                items.Add(run.Painted(map.After(Matrix.Shift(x + shift, y + down)), own.FontSize, colour));
        }
    }

    private void Element(IElement element, ComputedStyle style)
    {
        if (element.Attributes.FirstOrDefault(a => a.LocalName is "rotate" or "textLength" or "lengthAdjust") is { } odd) report.Add(element, odd.LocalName, "attribute not supported");
        var (x, y) = (Place(element, "x", style), Place(element, "y", style));
        if (x is not null || y is not null)
        {
            (_x, _y) = (x ?? _x, y ?? _y);
            _chunks.Add((_x, _x, style.TextAnchor));
        }

        (_x, _y) = (_x + (Place(element, "dx", style) ?? 0), _y + (Place(element, "dy", style) ?? 0));
        foreach (var node in element.ChildNodes)
        {
            if (node is IText text) Run(text.Data.Normalize(), style, element, node == element.LastChild && element.LocalName == "text");
            else if (node is IElement { LocalName: "tspan" } span && cascade.Of(span, style) is { Display: not Display.None } own) Element(span, own);
            else if (node is IElement other && other.LocalName is not ("title" or "desc" or "tspan")) report.Add(other, "", "element not supported in a picture; it is left out");
        }
    }

    private void Run(string data, ComputedStyle style, IElement element, bool last)
    {
        var text = new System.Text.StringBuilder();
        foreach (var c in data)
        {
            var space = c is ' ' or '\n' or '\t' or '\r';
            if (!space || !_afterSpace) text.Append(space ? ' ' : c);
            _afterSpace = space;
        }

        if (_afterSpace && last && text.Length > 0 && text[^1] == ' ') text.Length--;
        var shaped = fonts.Shape(text.ToString(), style.FontWeight, style.Italic);
        foreach (var missing in shaped.Where(g => g.Missing)) report.Add(element, "", "no glyph for " + missing.Text + ", printed as a box");
        var runs = TextRuns.Of(shaped, style.FontSize, style.LetterSpacing);
        foreach (var run in runs) _runs.Add((run, _x + run.X, _y, style, _chunks.Count - 1));
        _x += runs.Sum(r => r.Advances.Sum());
        _chunks[^1] = _chunks[^1] with { To = _x };
    }

    private double? Place(IElement element, string name, ComputedStyle style)
    {
        if (element.GetAttribute(name) is not { } text) return null;
        if (Length.TryNumber(text, out var number)) return number;
        if (Length.Parse(text, style.FontSize, 16) is { IsAuto: false, Percent: 0 } length) return length.Px;
        report.Add(element, name, "value not supported: " + text);
        return null;
    }
}
