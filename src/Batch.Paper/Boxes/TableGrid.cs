using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Which cell lies where: rows in the order head, body, foot; spans resolved (HTML table model). Knows no sizes.</summary>
internal sealed class TableGrid
{
    public TableGrid(Box table)
    {
        var groups = table.Children.Where(c => c.Kind == BoxKind.RowGroup).OrderBy(g => g.Style.Display switch
        {
            Display.TableHeaderGroup => 0,
            Display.TableFooterGroup => 2,
            _ => 1,
        });
        var taken = new HashSet<(int Row, int Column)>();
        foreach (var group in groups)
        {
            var groupEnd = Rows.Count + group.Children.Count;
            foreach (var row in group.Children)
            {
                var (index, column) = (Rows.Count, 0);
                Rows.Add((row, group));
                foreach (var cell in row.Children)
                {
                    while (taken.Contains((index, column))) column++;
                    var (columns, rows) = (Span(cell, "colspan", 1000), Math.Min(Span(cell, "rowspan", 65534), groupEnd - index));
                    for (var r = index; r < index + rows; r++)
                    {
                        for (var c = column; c < column + columns; c++) taken.Add((r, c));
                    }

                    Cells.Add(new TableCell(cell, index, column, rows, columns));
                    column += columns;
                    ColumnCount = Math.Max(ColumnCount, column);
                }
            }
        }

        foreach (var child in table.Children.Where(c => c.Kind is BoxKind.Column or BoxKind.ColumnGroup)) AddColumns(child);
        ColumnCount = Math.Max(ColumnCount, Columns.Count);
    }

    public List<(Box Row, Box Group)> Rows { get; } = [];

    public List<TableCell> Cells { get; } = [];

    /// <summary>Styles of `col` elements by column; may be shorter than the table.</summary>
    public List<Box> Columns { get; } = [];

    public int ColumnCount { get; private set; }

    private void AddColumns(Box box)
    {
        if (box.Children.Exists(c => c.Kind == BoxKind.Column)) foreach (var child in box.Children) AddColumns(child);
        else if (box.Kind is BoxKind.Column or BoxKind.ColumnGroup) Columns.AddRange(Enumerable.Repeat(box, Span(box, "span", 1000)));
    }

    private static int Span(Box box, string attribute, int most) =>
        !box.Anonymous && int.TryParse(box.Element?.GetAttribute(attribute), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var span) ? Math.Clamp(span, 1, most) : 1;
}
