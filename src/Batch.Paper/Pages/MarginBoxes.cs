using System.Globalization;
using AngleSharp.Dom;
using Batch.Paper.Boxes;
using Batch.Paper.Html;
using Batch.Paper.Style;

namespace Batch.Paper.Pages;

/// <summary>The texts in the page margins (CSS Paged Media 3): counters of pages, running title, strings.</summary>
internal sealed class MarginBoxes(PageSetup setup, Cascade cascade, ComputedStyle root, IElement? element, LayoutEngine engine, Report report)
{
    /// <summary>Laid-out boxes of one page, placed on the page.</summary>
    public List<Fragment> On(int page, int pages, IReadOnlyDictionary<string, string> titles)
    {
        var declared = new Dictionary<string, List<Declaration>>();
        foreach (var rule in setup.Rules.Where(r => !r.First).Concat(page == 0 ? setup.Rules.Where(r => r.First) : []))
        {
            foreach (var (name, declarations) in rule.MarginBoxes)
            {
                if (!declared.TryGetValue(name, out var list)) declared[name] = list = [];
                list.AddRange(declarations);
            }
        }

        var boxes = new Dictionary<string, Box>();
        foreach (var (name, declarations) in declared.OrderBy(d => d.Key, StringComparer.Ordinal))
        {
            if (Content(declarations, page, pages, titles) is not { } text) continue;
            List<Declaration> initial = [new("text-align", Horizontal(name), Important: false, -1, ""), new("vertical-align", Vertical(name), Important: false, -1, "")];
            var style = cascade.OfMarginBox(initial.Concat(declarations.Where(d => d.Name != "content")), root);
            boxes[name] = new Box(BoxKind.Block, style, element) { Anonymous = true, Children = [new Box(BoxKind.Text, style, element) { Text = text, Anonymous = true }] };
        }

        return [.. boxes.Select(b => Placed(b.Key, b.Value, boxes, page))];
    }

    private Fragment Placed(string name, Box box, Dictionary<string, Box> boxes, int page)
    {
        var margins = setup.MarginsOf(page);
        var (x, width) = name.EndsWith("-corner", StringComparison.Ordinal) || name.StartsWith("left-", StringComparison.Ordinal) || name.StartsWith("right-", StringComparison.Ordinal)
            ? name.Contains("left", StringComparison.Ordinal) ? (0, margins.Left) : (setup.Width - margins.Right, margins.Right)
            : Column(name, boxes, setup.Origin(page).X, setup.ContentWidth);
        var (y, height) = name.StartsWith("top-", StringComparison.Ordinal) ? (0, margins.Top)
            : name.StartsWith("bottom-", StringComparison.Ordinal) ? (setup.Height - margins.Bottom, margins.Bottom) : (margins.Top, setup.ContentHeight(page));
        var around = LayoutEngine.Margins(box.Style, width);
        var fragment = engine.Block(box, width, Math.Max(0, width - around.Left - around.Right)).Fragment;
        var room = height - around.Top - around.Bottom;
        var shift = box.Style.VerticalAlign switch { VerticalAlign.Top => 0, VerticalAlign.Bottom => room - fragment.Height, _ => (room - fragment.Height) / 2 };
        foreach (var line in fragment.Children) line.Y += Math.Max(0, shift);
        (fragment.X, fragment.Y, fragment.Height) = (x + around.Left, y + around.Top, Math.Max(room, 0));
        return fragment;
    }

    /// <summary>Left, centre and right share the width: the centre takes what it needs, the sides share the rest evenly; without a centre, by need.</summary>
    private (double X, double Width) Column(string name, Dictionary<string, Box> boxes, double left, double width)
    {
        var edge = name.Split('-')[0];
        double Need(string place) => boxes.TryGetValue(edge + "-" + place, out var box) ? engine.Intrinsic(box).Max : 0;
        var (needLeft, needCenter, needRight) = (Need("left"), Math.Min(width, Need("center")), Need("right"));
        if (needCenter > 0)
        {
            var side = (width - needCenter) / 2;
            return name.EndsWith("left", StringComparison.Ordinal) ? (left, side) : name.EndsWith("center", StringComparison.Ordinal) ? (left + side, needCenter) : (left + side + needCenter, side);
        }

        var split = needLeft + needRight > 0 ? width * needLeft / (needLeft + needRight) : width / 2;
        if (needRight == 0) split = width;
        if (needLeft == 0) split = 0;
        return name.EndsWith("left", StringComparison.Ordinal) ? (left, split) : (left + split, width - split);
    }

    private string? Content(List<Declaration> declarations, int page, int pages, IReadOnlyDictionary<string, string> titles)
    {
        var content = declarations.FindLast(d => d.Name == "content");
        if (content is null || content.Value is "none" or "normal" or "") return null;
        var text = "";
        foreach (var part in CssScanner.Split(content.Value, ' '))
        {
            if (part is ['"' or '\'', .., _] && part[^1] == part[0]) text += Unescaped(part[1..^1]);
            else if (part == "counter(page)") text += (page + 1).ToString(CultureInfo.InvariantCulture);
            else if (part == "counter(pages)") text += pages.ToString(CultureInfo.InvariantCulture);
            else if (part.StartsWith("string(", StringComparison.Ordinal)) text += titles.GetValueOrDefault(part[7..^1].Split(',')[0].Trim(), "");
            else report.Add("@page", "content", content.Offset, "value not supported: " + part);
        }

        return text;
    }

    private static string Unescaped(string text) => System.Text.RegularExpressions.Regex.Replace(text, @"\\(?<code>[0-9a-fA-F]{1,6})\s?|\\(?<plain>.)",
        m => m.Groups["code"].Success ? char.ConvertFromUtf32(Math.Min(0xFFFD, int.Parse(m.Groups["code"].Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture))) : m.Groups["plain"].Value,
        System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(20));

    private static string Horizontal(string name) => name switch
    {
        "top-left" or "bottom-left" or "top-right-corner" or "bottom-right-corner" => "left",
        "top-right" or "bottom-right" or "top-left-corner" or "bottom-left-corner" => "right",
        _ => "center",
    };

    private static string Vertical(string name) => name is "left-top" or "right-top" ? "top" : name is "left-bottom" or "right-bottom" ? "bottom" : "middle";
}
