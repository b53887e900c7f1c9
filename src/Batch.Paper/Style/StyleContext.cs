namespace Batch.Paper.Style;

/// <summary>What relative values of one element refer to.</summary>
internal sealed class StyleContext(ComputedStyle style, ComputedStyle parent, double rootFontSize)
{
    public ComputedStyle Parent => parent;

    public double RootFontSize => rootFontSize;

    public Length? Length(string value) => Style.Length.Parse(value, style.FontSize, rootFontSize);
}
