using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>A cell and the slots it covers, from 0.</summary>
internal sealed class TableCell(Box box, int row, int column, int rowSpan, int columnSpan)
{
    public Box Box => box;

    public int Row => row;

    public int Column => column;

    public int RowSpan => rowSpan;

    public int ColumnSpan => columnSpan;

    /// <summary>The winning borders, when the table's borders are collapsed.</summary>
    public Sides<CollapsedEdge>? Edges { get; set; }
}
