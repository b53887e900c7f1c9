using Batch.Paper.Style;

namespace Batch.Paper.Paint;

/// <summary>How a line is drawn: width and dashes in px; cap 0 butt, 1 round, 2 square; join 0 mitre, 1 round, 2 bevel.</summary>
internal sealed record Pen(Colour Colour, double Width, ImmutableArray<double> Dashes, double DashOffset, int Cap, int Join)
{
    public static Pen Plain(Colour colour, double width) => new(colour, width, [], 0, 0, 0);
}
