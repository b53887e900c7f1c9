using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Style;

namespace Batch.Paper.Lines;

/// <summary>Gathers one line from left to right; heights are known only at the end, so places are first relative to the baseline.</summary>
internal sealed class LineRun
{
    private readonly LineMetrics _metrics;
    private readonly List<Box> _open;
    private readonly Dictionary<Box, (double X, bool Begins)> _begun = [];
    private readonly List<(Box Box, double From, double To, bool Begins, bool Ends)> _spans = [];
    private readonly List<(TextPiece Piece, double Shift)> _pieces = [];
    private readonly List<(Fragment Atom, Sides<double> Margin, double X, double? Top)> _atoms = [];
    private readonly List<(ushort Glyph, double Advance, string Text)> _pending = [];
    private Box? _pendingBox;
    private TrueTypeFont? _pendingFont;
    private double _pendingX;
    private double _x;

    public LineRun(LineMetrics metrics, List<Box> open, double x)
    {
        (_metrics, _open, _x) = (metrics, [.. open], x);
        foreach (var box in open) _begun[box] = (x, false);
    }

    public void Add(InlineItem item, double stretch)
    {
        switch (item.Kind)
        {
            case InlineKind.Glyph:
                Glyph(item.Box, item.Glyph, item.Width + stretch);
                break;
            case InlineKind.Open:
                Flush();
                _metrics.Open(item.Box);
                _begun[item.Box] = (_x + LayoutEngine.Margins(item.Box.Style, 0).Left, true);
                _open.Add(item.Box);
                _x += item.Width;
                break;
            case InlineKind.Close:
                Flush();
                _x += item.Width;
                if (_begun.Remove(item.Box, out var begun)) _spans.Add((item.Box, begun.X, _x - LayoutEngine.Margins(item.Box.Style, 0).Right, begun.Begins, true));
                _open.Remove(item.Box);
                break;
            case InlineKind.Atom when item.Atom is { Fragment: { } atom, Margin: var margin }:
                Flush();
                var height = atom.Height + margin.Top + margin.Bottom;
                var baseline = LayoutEngine.Baseline(atom) is { } inside && !item.Box.IsReplaced ? margin.Top + inside : height;
                _atoms.Add((atom, margin, _x, _metrics.Atom(item.Box, height, baseline, Shift())));
                _x += item.Width;
                break;
            case InlineKind.Atom or InlineKind.LineBreak:
                Flush();
                break;
        }
    }

    public void Glyph(Box box, ShapedGlyph glyph, double advance)
    {
        if (glyph.Invisible) return;
        if (_pendingBox != box || _pendingFont != glyph.Font) Flush();
        if (_pending.Count == 0) (_pendingBox, _pendingFont, _pendingX) = (box, glyph.Font, _x);
        _pending.Add((glyph.Glyph, advance, glyph.Text));
        _x += advance;
    }

    public Fragment Finish(Box block, double width)
    {
        Flush();
        foreach (var (box, begun) in _begun.OrderBy(b => _open.IndexOf(b.Key))) _spans.Add((box, begun.X, _x, begun.Begins, false));
        _metrics.Close();
        var pieces = _pieces.Select(p => p.Piece with { Baseline = _metrics.Baseline + p.Shift }).ToImmutableArray();
        var line = new Fragment(block, FragmentRole.Line)
        {
            Width = width,
            Height = _metrics.Height,
            Paints = false,
            Line = new LineContent([.. _spans.Select(Span)], pieces, _metrics.Baseline),
        };
        foreach (var (atom, margin, x, top) in _atoms)
        {
            var lowest = _metrics.Height - atom.Height - margin.Bottom;
            (atom.X, atom.Y) = (x + margin.Left, top is { } at ? margin.Top + _metrics.Baseline + at : atom.Box.Style.VerticalAlign == VerticalAlign.Top ? margin.Top : lowest);
            line.Children.Add(atom);
        }

        return line;
    }

    private double Shift() => _open.Count == 0 ? 0 : _metrics.Shift(_open[^1]);

    private InlineSpan Span((Box Box, double From, double To, bool Begins, bool Ends) span)
    {
        var (ascent, descent) = _metrics.Of(span.Box.Style);
        var edges = LayoutEngine.Edges(span.Box, 0);
        var top = _metrics.Baseline + _metrics.Shift(span.Box) - ascent - edges.Top;
        return new InlineSpan(span.Box, span.From, top, span.To - span.From, ascent + descent + edges.Top + edges.Bottom, span.Begins, span.Ends);
    }

    private void Flush()
    {
        if (_pending.Count > 0 && _pendingBox is { } box && _pendingFont is { } font)
        {
            _pieces.Add((new TextPiece(box, font, _pendingX, 0, box.Style.FontSize, [.. _pending.Select(p => p.Glyph)], [.. _pending.Select(p => p.Advance)], [.. _pending.Select(p => p.Text)]), Shift()));
        }

        _pending.Clear();
    }
}
