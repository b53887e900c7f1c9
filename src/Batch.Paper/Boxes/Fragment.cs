using Batch.Paper.Lines;

namespace Batch.Paper.Boxes;

/// <summary>A laid-out box: place relative to its parent's border box, size of its border box, px. Laid out once in an endless column.</summary>
internal sealed class Fragment(Box box, FragmentRole role)
{
    public Box Box { get; } = box;

    public FragmentRole Role { get; } = role;

    public double X { get; set; }

    public double Y { get; set; }

    public double Width { get; set; }

    public double Height { get; set; }

    public List<Fragment> Children { get; } = [];

    /// <summary>The text of a line; null for other fragments.</summary>
    public LineContent? Line { get; init; }

    /// <summary>Drawn borders of a cell in a table with collapsed borders; null for other boxes.</summary>
    public Style.Sides<CollapsedEdge>? CollapsedEdges { get; set; }

    /// <summary>Set on a table: the group that is repeated at the top of every page the table runs over.</summary>
    public Fragment? RepeatedHead { get; set; }

    /// <summary>False for lines of flex items and rows of grids, which paint nothing themselves.</summary>
    public bool Paints { get; init; } = true;

    /// <summary>Set on a row that a rowspan joins with the next one.</summary>
    public bool JoinedWithNext { get; set; }

    public double Bottom => Y + Height;

    /// <summary>Highest and lowest point of the fragment and all inside it, from its own top; known after <see cref="Settle"/>.</summary>
    public (double Top, double Bottom) Reach { get; private set; }

    /// <summary>Notes how far everything reaches, once nothing moves any more.</summary>
    public void Settle()
    {
        var (top, bottom) = (0.0, Height);
        foreach (var child in Children)
        {
            child.Settle();
            (top, bottom) = (Math.Min(top, child.Y + child.Reach.Top), Math.Max(bottom, child.Y + child.Reach.Bottom));
        }

        Reach = (top, bottom);
    }
}
