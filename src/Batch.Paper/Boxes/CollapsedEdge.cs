using System.Runtime.InteropServices;
using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>One side of a cell with collapsed borders: the winning border.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct CollapsedEdge(double Width, BorderStyle Style, Colour Colour)
{
    /// <summary>True when cells lie along the whole side: they draw it as their own.</summary>
    public bool Shared { get; init; }

    /// <summary>The wider border wins, then the more solid one; the first one of equals.</summary>
    public static CollapsedEdge Stronger(CollapsedEdge a, CollapsedEdge b) => b.Width > a.Width || (b.Width == a.Width && b.Style > a.Style) ? b : a;

    public static CollapsedEdge Of(ComputedStyle style, int side) => style.BorderStyles[side] == BorderStyle.None ? default
        : new CollapsedEdge(style.Border[side], style.BorderStyles[side], style.BorderColor[side] ?? style.Color);
}
