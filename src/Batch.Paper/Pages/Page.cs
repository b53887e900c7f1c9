using Batch.Paper.Boxes;

namespace Batch.Paper.Pages;

/// <summary>One page: the stretch of the column it shows, px, and the table heads repeated above it.</summary>
/// <remarks>Lines and pictures that begin in [<paramref name="Start"/>, <paramref name="Next"/>) are on this page; boxes are cut at <paramref name="End"/>. What negative margins lift above a start stays on the page before.</remarks>
internal sealed record Page(int Index, double Start, double End, double Next, ImmutableArray<Fragment> Heads)
{
    public double HeadHeight => Heads.Sum(h => h.Height);
}
