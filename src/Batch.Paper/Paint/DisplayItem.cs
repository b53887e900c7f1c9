#pragma warning disable MA0048 // The closed list of things that can be painted is read together.
using Batch.Paper.Fonts;
using Batch.Paper.Style;

namespace Batch.Paper.Paint;

/// <summary>One thing on a page, in px from the page's top left. The whole page is a list of these.</summary>
internal abstract record DisplayItem
{
    private DisplayItem()
    {
    }

    /// <summary>A filled and/or stroked outline.</summary>
    internal sealed record Shape(ImmutableArray<PathStep> Steps, Colour? Fill, bool EvenOdd, Pen? Pen) : DisplayItem;

    /// <summary>Glyphs on one baseline. <paramref name="Place"/> maps text space (px, baseline at 0, y down) to the page.</summary>
    internal sealed record Text(Matrix Place, TrueTypeFont Font, double Size, Colour Colour, ImmutableArray<ushort> Glyphs, ImmutableArray<double> Advances, ImmutableArray<string> Texts) : DisplayItem;

    internal sealed record Image(double X, double Y, double Width, double Height, byte[] Bytes) : DisplayItem;

    internal sealed record Clip(double X, double Y, double Width, double Height) : DisplayItem;

    internal sealed record EndClip : DisplayItem;

    internal sealed record Link(double X, double Y, double Width, double Height, string Target) : DisplayItem;

    internal sealed record Anchor(string Id, double Y) : DisplayItem;

    internal sealed record Bookmark(int Level, string Title, double Y) : DisplayItem;
}
