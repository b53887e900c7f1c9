using AngleSharp.Dom;
using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>A node of the box tree: an element, a text, or an anonymous box. Built once, then only read.</summary>
internal sealed class Box(BoxKind kind, ComputedStyle style, IElement? element)
{
    public BoxKind Kind { get; } = kind;

    public ComputedStyle Style { get; } = style;

    /// <summary>The element, or for an anonymous box the nearest one outside it.</summary>
    public IElement? Element { get; } = element;

    /// <summary>True for a box made by the printer, which has no decoration or id of its own.</summary>
    public bool Anonymous { get; init; }

    public List<Box> Children { get; init; } = [];

    public string Text { get; init; } = "";

    /// <summary>Address of the link this box stands in.</summary>
    public string? Link { get; init; }

    /// <summary>List marker: a word such as `3.`, or the name of a bullet; null when not a list item.</summary>
    public string? Marker { get; init; }

    /// <summary>Natural size of a picture, px.</summary>
    public (double Width, double Height)? Natural { get; init; }

    public byte[]? ImageBytes { get; init; }

    /// <summary>Cached intrinsic widths of the border box.</summary>
    public (double Min, double Max)? Intrinsic { get; set; }

    /// <summary>Items collected when the widths were asked for, if they do not depend on any width: the lines need no others.</summary>
    public List<Lines.InlineItem>? Items { get; set; }

    /// <summary>Layout width of a cell's borders in a table with collapsed borders: half of each winning border, px.</summary>
    public Sides<double>? CellBorder { get; set; }

    public bool IsInlineLevel => Kind is BoxKind.Inline or BoxKind.Text or BoxKind.LineBreak or BoxKind.WordBreak
        || (Style.Display is Display.Inline or Display.InlineBlock or Display.InlineFlex or Display.InlineGrid or Display.InlineTable && !Blockified);

    /// <summary>Set for items of flex and grid containers, which are blocks whatever their display says.</summary>
    public bool Blockified { get; init; }

    /// <summary>White space, or an inline box that shows nothing.</summary>
    public bool IsBlank => Kind == BoxKind.Text ? Text.All(c => c is ' ' or '\t' or '\n' or '\f')
        : Kind == BoxKind.Inline && Children.TrueForAll(c => c.IsBlank) && Style.Border == default && Style.Padding == default && Element?.Id is null;

    public bool IsReplaced => Kind is BoxKind.Image or BoxKind.Svg;

    /// <summary>True when all children are inline, so the box holds lines.</summary>
    public bool HoldsLines => Children.Count > 0 && Children[0].IsInlineLevel;
}
