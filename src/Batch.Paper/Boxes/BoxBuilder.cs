using System.Globalization;
using AngleSharp.Dom;
using Batch.Paper.Html;
using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Element tree to box tree: what is displayed, anonymous boxes where CSS asks for them, list markers, pictures.</summary>
internal sealed class BoxBuilder(Cascade cascade, Report report, ImageSource images)
{
    public Box Build(IElement root, ComputedStyle initial) =>
        Element(root, initial, null, blockify: true) ?? new Box(BoxKind.Block, Cascade.Anonymous(initial, Display.Block), root);

    private Box? Element(IElement element, ComputedStyle parent, string? link, bool blockify)
    {
        var style = cascade.Of(element, parent);
        if (style.Display == Display.None)
        {
            if (element.LocalName is "script" or "noscript") report.Add(element, "", "element not supported; it has no effect on paper");
            return null;
        }

        KnownElements.Check(element, report);
        if (element.LocalName == "br") return new Box(BoxKind.LineBreak, style, element) { Link = link };
        if (element.LocalName == "wbr") return new Box(BoxKind.WordBreak, style, element);
        if (element.LocalName == "a" && element.GetAttribute("href") is { Length: > 0 } href) link = href;
        if (element.LocalName is "img" or "svg") return Picture(element, style, link, blockify);
        var kind = Kind(style.Display);
        if (IsTablePart(kind) && !IsTablePart(Kind(parent.Display)) && Kind(parent.Display) != BoxKind.Table) report.Add(element, "display", "a part of a table outside a table is not supported; it is laid out as a block");
        var items = kind is BoxKind.Flex or BoxKind.Grid;
        var children = Children(element, style, link, items);
        var blocky = blockify || kind != BoxKind.Inline;
        if (!blocky && children.Exists(c => !c.IsInlineLevel)) blocky = true;
        if (blocky && kind == BoxKind.Inline) kind = BoxKind.Block;
        children = kind switch
        {
            BoxKind.Table => TableFixer.Table(children, style, element),
            BoxKind.RowGroup => TableFixer.Rows(children, style, element),
            BoxKind.Row => TableFixer.Cells(children, style, element),
            BoxKind.Inline => children,
            _ => Wrapped(children, style, element, always: items),
        };
        var blockified = blockify || (kind == BoxKind.Block && style.Display == Display.Inline);
        return new Box(kind, style, element) { Children = children, Link = link, Marker = Marker(element, style), Blockified = blockified };
    }

    private List<Box> Children(IElement element, ComputedStyle style, string? link, bool blockify)
    {
        var children = new List<Box>();
        foreach (var node in element.ChildNodes)
        {
            if (node is IText text && text.Data.Length > 0) children.Add(new Box(BoxKind.Text, style, element) { Text = text.Data.Normalize(), Link = link });
            else if (node is IElement inner && Element(inner, style, link, blockify) is { } box) children.Add(box);
        }

        return children;
    }

    private static BoxKind Kind(Display display) => display switch
    {
        Display.None or Display.Inline => BoxKind.Inline,
        Display.Block or Display.InlineBlock or Display.ListItem => BoxKind.Block,
        Display.Flex or Display.InlineFlex => BoxKind.Flex,
        Display.Grid or Display.InlineGrid => BoxKind.Grid,
        Display.Table or Display.InlineTable => BoxKind.Table,
        Display.TableRowGroup or Display.TableHeaderGroup or Display.TableFooterGroup => BoxKind.RowGroup,
        Display.TableRow => BoxKind.Row,
        Display.TableCell => BoxKind.Cell,
        Display.TableCaption => BoxKind.Caption,
        Display.TableColumn => BoxKind.Column,
        Display.TableColumnGroup => BoxKind.ColumnGroup,
    };

    private static bool IsTablePart(BoxKind kind) => kind is BoxKind.RowGroup or BoxKind.Row or BoxKind.Cell or BoxKind.Caption or BoxKind.Column or BoxKind.ColumnGroup;

    /// <summary>Runs of inline boxes beside blocks get an anonymous block; runs of white space between blocks go.</summary>
    internal static List<Box> Wrapped(List<Box> children, ComputedStyle style, IElement? element, bool always)
    {
        if (!always && children.TrueForAll(c => c.IsInlineLevel))
            return !style.KeepsSpaces && children.TrueForAll(c => c.IsBlank && c.Kind == BoxKind.Text) ? [] : children;
        return TableFixer.Group(children, c => !c.IsInlineLevel,
            run => new Box(BoxKind.Block, Cascade.Anonymous(style, Display.Block), element) { Children = run, Anonymous = true, Link = run[0].Link });
    }

    private Box Picture(IElement element, ComputedStyle style, string? link, bool blockify)
    {
        byte[]? bytes = null;
        (double, double)? natural;
        if (element.LocalName == "svg") natural = Svg.SvgViewport.Natural(element);
        else (bytes, natural) = images.Load(element);
        return new Box(element.LocalName == "svg" ? BoxKind.Svg : BoxKind.Image, style, element)
        {
            Link = link,
            ImageBytes = bytes,
            Natural = natural,
            Blockified = blockify,
            Text = bytes is null && element.LocalName == "img" ? element.GetAttribute("alt") ?? "" : "",
        };
    }

    private static string? Marker(IElement element, ComputedStyle style)
    {
        if (style.Display != Display.ListItem || style.ListStyle == "none") return null;
        if (style.ListStyle is "disc" or "circle" or "square") return style.ListStyle;
        var number = element.ParentElement is { } list && Length.TryNumber(list.GetAttribute("start") ?? "1", out var start) ? (int)start - 1 : 0;
        foreach (var item in element.ParentElement?.Children.Where(c => c.LocalName == "li") ?? [])
        {
            number = int.TryParse(item.GetAttribute("value"), NumberStyles.Integer, CultureInfo.InvariantCulture, out var value) ? value : number + 1;
            if (item == element) break;
        }

        return ListNumber.Text(number, style.ListStyle) + ".";
    }
}
