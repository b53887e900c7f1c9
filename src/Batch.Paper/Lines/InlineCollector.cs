using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Html;
using Batch.Paper.Style;

namespace Batch.Paper.Lines;

/// <summary>Flattens inline boxes to items: white space collapsed, case changed, text shaped, break opportunities marked.</summary>
internal sealed class InlineCollector(LayoutEngine engine, FontLibrary fonts, Report report, double containing)
{
    private readonly List<InlineItem> _items = [];
    private bool _afterSpace = true;

    /// <summary>Items of a block that holds lines. Atoms are laid out only when <paramref name="layAtoms"/>; else they carry their max-content width.</summary>
    public List<InlineItem> Collect(Box block, bool layAtoms)
    {
        foreach (var child in block.Children) Add(child, layAtoms);
        MarkBreaks();
        return _items;
    }

    private void Add(Box box, bool layAtoms)
    {
        switch (box.Kind)
        {
            case BoxKind.Text:
                AddText(box);
                break;
            case BoxKind.LineBreak:
                _items.Add(new InlineItem(InlineKind.LineBreak, box));
                _afterSpace = true;
                break;
            case BoxKind.WordBreak:
                _items.Add(new InlineItem(InlineKind.Open, box) { BreakAfter = true });
                _items.Add(new InlineItem(InlineKind.Close, box));
                break;
            case BoxKind.Inline:
                if (box.Style.VerticalAlign is VerticalAlign.Top or VerticalAlign.Bottom or VerticalAlign.TextTop or VerticalAlign.TextBottom)
                    report.Add(box.Element, "vertical-align", "top and bottom hold for inline-blocks and pictures, not for text in a line");
                var edges = LayoutEngine.Edges(box, containing);
                var margins = LayoutEngine.Margins(box.Style, containing);
                _items.Add(new InlineItem(InlineKind.Open, box) { Width = margins.Left + edges.Left });
                foreach (var child in box.Children) Add(child, layAtoms);
                _items.Add(new InlineItem(InlineKind.Close, box) { Width = margins.Right + edges.Right });
                break;
            default:
                AddAtom(box, layAtoms);
                break;
        }
    }

    private void AddAtom(Box box, bool layAtoms)
    {
        var margin = LayoutEngine.Margins(box.Style, containing);
        var fragment = layAtoms ? engine.Atom(box, containing) : null;
        var width = fragment?.Width ?? engine.Intrinsic(box).Max;
        _items.Add(new InlineItem(InlineKind.Atom, box) { Atom = new Atom(fragment, margin), Width = width + margin.Left + margin.Right });
        _afterSpace = false;
    }

    private void AddText(Box box)
    {
        var style = box.Style;
        var text = new System.Text.StringBuilder();
        foreach (var c in box.Text.Replace("\r", "", StringComparison.Ordinal))
        {
            if (c == '\n' && style.KeepsLines)
            {
                Shape(box, text);
                _items.Add(new InlineItem(InlineKind.LineBreak, box));
                _afterSpace = true;
            }
            else if (c is ' ' or '\t' or '\n' or '\f')
            {
                if (style.KeepsSpaces) text.Append(c == '\t' ? new string(' ', 8 - text.Length % 8) : " ");
                else if (!_afterSpace) text.Append(' ');
                _afterSpace = !style.KeepsSpaces;
            }
            else
            {
                text.Append(c);
                _afterSpace = false;
            }
        }

        Shape(box, text);
    }

    private void Shape(Box box, System.Text.StringBuilder collected)
    {
        if (collected.Length == 0) return;
        var style = box.Style;
        var text = Cased(collected.ToString(), style.TextTransform);
        collected.Clear();
        var shaped = engine.Shaped(text, style.FontWeight, style.Italic);
        _items.EnsureCapacity(_items.Count + shaped.Count);
        for (var i = 0; i < shaped.Count; i++)
        {
            var glyph = shaped[i];
            if (glyph.Missing) report.Add(box.Element, "", "no glyph for U+" + char.ConvertToUtf32(glyph.Text, 0).ToString("X4", System.Globalization.CultureInfo.InvariantCulture) + ", printed as a box");
            var width = glyph.AdvanceEm * style.FontSize + (glyph.Invisible ? 0 : style.LetterSpacing);
            _items.Add(new InlineItem(InlineKind.Glyph, box) { Shaped = (shaped, i), Width = width, Space = glyph.Text == " ", HyphenWidth = glyph.Text == "\u00AD" ? fonts.Shape("-", style.FontWeight, style.Italic)[0].AdvanceEm * style.FontSize : 0 });
        }
    }

    private static string Cased(string text, TextTransform transform) => transform switch
    {
        TextTransform.Uppercase => text.ToUpperInvariant(),
        TextTransform.Lowercase => text.ToLowerInvariant(),
        TextTransform.Capitalize => string.Concat(text.Select((c, i) => i == 0 || !char.IsLetterOrDigit(text[i - 1]) && text[i - 1] is not ('\'' or '\u2019') ? char.ToUpperInvariant(c) : c)),
        _ => text,
    };

    /// <summary>Break opportunities between neighbouring glyphs and around atoms, after the common cases of Unicode Annex 14; a stroke between plain letters joins them and clauses such as (a)(3) are parted, as in browsers.</summary>
    private void MarkBreaks()
    {
        InlineItem? previous = null;
        var earlier = '\0';
        for (var i = 0; i < _items.Count; i++)
        {
            var item = _items[i];
            if (item.Kind is InlineKind.Open or InlineKind.Close) continue;
            if (item.Kind == InlineKind.LineBreak) previous = null;
            else
            {
                if (previous is not null && previous.Box.Style.Wraps && MayPart(earlier, previous, item)) previous.BreakAfter = true;
                earlier = previous is null ? '\0' : Neighbour(previous);
                previous = item;
            }
        }

        if (previous is { Space: true } && previous.Box.Style.Wraps) previous.BreakAfter = true;
    }

    private static bool MayPart(char earlier, InlineItem before, InlineItem after)
    {
        if (after.Space) return false;
        if (before.Space) return true;
        if (before.Kind == InlineKind.Atom || after.Kind == InlineKind.Atom) return Neighbour(before) is not '\u00A0' && Neighbour(after) is not '\u00A0';
        var (a, b) = (before.Glyph.Text[^1], after.Glyph.Text[0]);
        return a switch
        {
            '\u200B' or '\u00AD' => true,
            '-' when char.IsAsciiDigit(b) => char.IsAsciiLetterOrDigit(earlier), // as browsers do: a date or a number is parted, a minus sign is not
            '-' or '\u2010' => b is not ('\u00A0' or '-' or '.' or ',' or ')' or ';' or ':' or '!' or '?' or '/') && !char.IsDigit(b) && PrecededByWord(before),
            '\u2013' or '\u2014' => char.IsLetterOrDigit(b),
            '/' => char.IsLetter(b) && !char.IsAscii(b),
            '?' => char.IsAsciiLetterOrDigit(b) || IsOpening(b),
            ')' or ']' or '}' or '>' or '!' or '"' or '#' or '%' or '&' or '*' or '+' or ',' or '.' or ':' or ';' or '=' or '|' or '~' or '\\' => IsOpening(b),
            _ => b == '\u2014' && char.IsLetterOrDigit(a),
        };
    }

    private static bool IsOpening(char letter) => letter is '(' or '[' or '{' or '<';

    private static bool PrecededByWord(InlineItem hyphen) => hyphen.Glyph.Index > 0;

    private static char Neighbour(InlineItem item) => item.Kind == InlineKind.Glyph ? item.Glyph.Text[0] : '\0';
}
