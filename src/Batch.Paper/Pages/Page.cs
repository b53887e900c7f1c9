using Batch.Paper.Boxes;

namespace Batch.Paper.Pages;

/// <summary>One page: the stretch of the column it shows, px, and the table heads repeated above it.</summary>
internal sealed record Page(int Index, double Start, double End, ImmutableArray<Fragment> Heads)
{
    public double HeadHeight => Heads.Sum(h => h.Height);
}
