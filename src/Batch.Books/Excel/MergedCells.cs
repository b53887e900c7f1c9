using System.Globalization;
using Batch.Books.Cells;

namespace Batch.Books.Excel;

/// <summary>
/// The merged cells of one sheet. Where they are merged over several rows the value shown once holds for every row; cells merged across columns are titles and
/// stay as they are.
/// </summary>
internal sealed class MergedCells(string book)
{
    private readonly List<MergedArea> _areas = [];

    /// <summary>The areas, in the order of the file.</summary>
    public ImmutableArray<MergedArea> Areas => [.. _areas];

    /// <summary>Takes in an area as the file names it, such as <c>A3:A5</c>; passes over what names none.</summary>
    public void Add(string? written)
    {
        var ends = (written ?? "").Split(':');
        if (ends.Length != 2) return;
        var (column, top) = Place(ends[0]);
        var (last, bottom) = Place(ends[1]);
        if (column > 0 && top > 0 && last >= column && bottom >= top) _areas.Add(new MergedArea(written ?? "", top, column, bottom, last));
    }

    /// <summary>Puts the value of each area over rows into its rows that hold anything else.</summary>
    /// <param name="rows">The rows of the sheet, in the order of their numbers.</param>
    /// <returns>The areas whose value was put into another row.</returns>
    /// <exception cref="BookException">More cells are merged than a sheet could need.</exception>
    public ImmutableArray<MergedArea> Spread(List<RawRow> rows)
    {
        var spread = ImmutableArray.CreateBuilder<MergedArea>();
        var cells = 0;
        foreach (var area in _areas.Where(area => area.IsOverRows))
        {
            var (_, top, column, bottom, _) = area;
            var first = rows.FindIndex(row => row.Number >= top);
            if (first < 0 || rows[first].Number != top || rows[first][column] is not { IsBlank: false } value) continue;
            var isRead = false;
            for (var index = first + 1; index < rows.Count && rows[index].Number <= bottom; index++)
            {
                if (++cells > SheetXml.GreatestCells) throw new BookException($"{book} has more merged cells than a week's book could need");
                rows[index] = With(rows[index], column, value);
                isRead = true;
            }

            if (isRead) spread.Add(area);
        }

        return spread.ToImmutable();
    }

    private static RawRow With(RawRow row, int column, RawCell value)
    {
        RawCell[] cells = [.. row.Cells, .. Enumerable.Repeat(RawCell.Blank, Math.Max(0, column - row.Cells.Length))];
        cells[column - 1] = value;
        return row with { Cells = cells };
    }

    private static (int Column, int Row) Place(string cell)
    {
        var digits = cell.AsSpan().IndexOfAnyInRange('0', '9');
        return digits > 0 && int.TryParse(cell.AsSpan(digits), NumberStyles.None, CultureInfo.InvariantCulture, out var row)
            ? (SheetXml.Column(cell), row)
            : (0, 0);
    }
}
