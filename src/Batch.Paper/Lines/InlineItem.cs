using Batch.Paper.Boxes;
using Batch.Paper.Fonts;

namespace Batch.Paper.Lines;

/// <summary>One step of a paragraph: a glyph, the begin or end of an inline box, an inline-block or picture, a forced break.</summary>
internal sealed class InlineItem(InlineKind kind, Box box)
{
    public InlineKind Kind { get; } = kind;

    /// <summary>For a glyph the text box it comes from, else the inline box or atom itself.</summary>
    public Box Box { get; } = box;

    /// <summary>Where the glyph stands: every glyph of a text has an item, so the item only points at it.</summary>
    public (List<ShapedGlyph> Text, int Index)? Shaped { get; init; }

    public ShapedGlyph Glyph => Shaped is { } at ? at.Text[at.Index] : default;

    public double Width { get; set; }

    /// <summary>A blank that may vanish or hang at the end of a line.</summary>
    public bool Space { get; init; }

    /// <summary>Width of the hyphen that shows when a line ends at this soft hyphen, px.</summary>
    public double HyphenWidth { get; init; }

    /// <summary>A line may end after this item.</summary>
    public bool BreakAfter { get; set; }

    /// <summary>An inline-block or picture; null for the rest, which are many.</summary>
    public Atom? Atom { get; init; }
}
