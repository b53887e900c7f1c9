using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Html;

namespace Batch.Paper.Lines;

/// <summary>Breaks the items of a paragraph into lines, first fit.</summary>
internal sealed class LineLayout(LayoutEngine engine, FontLibrary fonts, Report report)
{
    public List<Fragment> Lines(Box block, double width)
    {
        var items = block.Items ?? new InlineCollector(engine, fonts, report, width).Collect(block, layAtoms: true);
        block.Items = null;
        var lines = new List<Fragment>();
        var builder = new LineBuilder(block, fonts, width);
        for (var start = 0; start < items.Count;)
        {
            var indent = lines.Count == 0 ? block.Style.TextIndent.Against(width) : 0;
            var end = End(items, ref start, width - indent);
            if (start >= items.Count || (end >= items.Count && IsEmpty(items, start, end) && lines.Count > 0 && !HasOpen(items, start, end))) break;
            var last = end >= items.Count || items[end - 1].Kind == InlineKind.LineBreak;
            if (IsEmpty(items, start, end)) builder.Skip(items, start, end);
            else lines.Add(builder.Line(items, start, end, indent, last));
            start = end;
        }

        return lines;
    }

    /// <summary>Narrowest and widest the items may need: longest unbreakable stretch, longest line when nothing wraps.</summary>
    public (double Min, double Max) Intrinsic(Box block)
    {
        var items = new InlineCollector(engine, fonts, report, 0).Collect(block, layAtoms: false);
        if (items.TrueForAll(i => i.Atom is null && (i.Kind == InlineKind.Glyph || (i.Box.Style.Margin == default && i.Box.Style.Padding == default)))) block.Items = items;
        double least = 0, most = 0, word = 0, line = block.Style.TextIndent.Px, trailing = 0;
        foreach (var item in items)
        {
            if (item.Kind == InlineKind.LineBreak)
            {
                (most, least, line, word, trailing) = (Math.Max(most, line - trailing), Math.Max(least, word), 0, 0, 0);
                continue;
            }

            line += item.Width;
            trailing = item.Space && item.Box.Style.Wraps ? trailing + item.Width : item.Width > 0 ? 0 : trailing;
            if (item.Atom is { Margin: var margin }) least = Math.Max(least, engine.Intrinsic(item.Box).Min + margin.Left + margin.Right);
            if (item.Kind == InlineKind.Atom && item.Box.Style.Wraps) word = 0;
            else if (!item.Space || !item.Box.Style.Wraps) word += item.Width;
            least = Math.Max(least, item.Box.Style.BreakWords && item.Kind == InlineKind.Glyph ? item.Width : word);
            if (item.BreakAfter || (item.Space && item.Box.Style.Wraps)) word = 0;
        }

        return (least, Math.Max(least, Math.Max(most, line - trailing)));
    }

    private static bool IsEmpty(List<InlineItem> items, int start, int end)
    {
        for (var i = start; i < end; i++)
        {
            if (items[i].Kind is InlineKind.Glyph or InlineKind.Atom or InlineKind.LineBreak || items[i].Width != 0) return false;
        }

        return true;
    }

    private static bool HasOpen(List<InlineItem> items, int start, int end)
    {
        for (var i = start; i < end; i++)
        {
            if (items[i].Box.Element?.Id is { Length: > 0 }) return true;
        }

        return false;
    }

    /// <summary>Index after the last item of the line that begins at <paramref name="start"/>, which skips blanks at the line's begin. Always moves on.</summary>
    private static int End(List<InlineItem> items, ref int start, double width)
    {
        while (start < items.Count && items[start].Space && !items[start].Box.Style.KeepsSpaces) start++;
        var (x, lastBreak, filled) = (0.0, -1, false);
        for (var i = start; i < items.Count; i++)
        {
            var item = items[i];
            if (item.Kind == InlineKind.LineBreak) return i + 1;
            if (!item.Space && item.Width > 0 && x + item.Width > width + LayoutEngine.Epsilon)
            {
                if (lastBreak >= start) return lastBreak + 1;
                if (filled && item.Kind == InlineKind.Glyph && item.Box.Style is { BreakWords: true, Wraps: true }) return i;
            }

            x += item.Width;
            filled |= item.Kind is InlineKind.Glyph or InlineKind.Atom;
            if (item.BreakAfter && (item.HyphenWidth == 0 || x + item.HyphenWidth <= width + LayoutEngine.Epsilon)) lastBreak = i;
        }

        return items.Count;
    }
}
