using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Style;

namespace Batch.Paper.Lines;

/// <summary>Makes line fragments of one block: heights, baselines, alignment (CSS 2.2, section 10.8). Inline boxes stay open from line to line.</summary>
internal sealed class LineBuilder(Box block, FontLibrary fonts, double width)
{
    private readonly List<Box> _open = [];

    public void Skip(List<InlineItem> items, int start, int end)
    {
        for (var i = start; i < end; i++) Track(items[i]);
    }

    public Fragment Line(List<InlineItem> items, int start, int end, double indent, bool last)
    {
        var visibleEnd = end;
        var trailing = 0.0;
        while (visibleEnd > start && (items[visibleEnd - 1].Kind is InlineKind.LineBreak or InlineKind.Close or InlineKind.Open || (items[visibleEnd - 1].Space && items[visibleEnd - 1].Box.Style.Wraps)))
        {
            if (items[visibleEnd - 1].Space) trailing += items[visibleEnd - 1].Width;
            visibleEnd--;
        }

        var hyphen = visibleEnd > start && items[visibleEnd - 1].Glyph.Text == "\u00AD" ? fonts.Shape("-", items[visibleEnd - 1].Box.Style.FontWeight, items[visibleEnd - 1].Box.Style.Italic)[0] : default;
        var (total, spaces) = (hyphen.AdvanceEm * (visibleEnd > start ? items[visibleEnd - 1].Box.Style.FontSize : 0) - trailing, 0);
        for (var i = start; i < end; i++)
        {
            total += items[i].Width;
            if (items[i].Space && i < visibleEnd) spaces++;
        }

        var free = Math.Max(0, width - indent - total);
        var stretch = block.Style.TextAlign == TextAlign.Justify && !last && spaces > 0 ? free / spaces : 0;
        var x = indent + block.Style.TextAlign switch { TextAlign.Right or TextAlign.End => free, TextAlign.Center => free / 2, _ => 0 };
        var metrics = new LineMetrics(block, fonts);
        foreach (var box in _open) metrics.Open(box);
        var run = new LineRun(metrics, _open, x);
        for (var i = start; i < end; i++)
        {
            var item = items[i];
            if (i >= visibleEnd && item.Kind == InlineKind.Glyph) continue;
            if (i == visibleEnd - 1 && hyphen.Text == "-") run.Glyph(item.Box, hyphen, hyphen.AdvanceEm * item.Box.Style.FontSize);
            else run.Add(item, item.Space ? stretch : 0);
            Track(item);
        }

        return run.Finish(block, width);
    }

    private void Track(InlineItem item)
    {
        if (item.Kind == InlineKind.Open) _open.Add(item.Box);
        if (item.Kind == InlineKind.Close) _open.Remove(item.Box);
    }
}
