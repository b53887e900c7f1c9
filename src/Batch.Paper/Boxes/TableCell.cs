namespace Batch.Paper.Boxes;

/// <summary>A cell and the slots it covers, from 0.</summary>
internal sealed record TableCell(Box Box, int Row, int Column, int RowSpan, int ColumnSpan);
