using Batch.Books.Cells;

namespace Batch.Books.Headers;

/// <summary>
/// Cells merged over several rows in columns whose amounts add up. Whether they hold the amount of each row or of all together cannot be told, so they are
/// complained of once and not read.
/// </summary>
internal sealed class MergedAmounts
{
    private readonly List<(MergedArea Area, Problem Problem)> _areas = [];

    private MergedAmounts()
    {
    }

    /// <summary>The areas below the headers of a sheet, with the complaint about each.</summary>
    /// <param name="header">The headers.</param>
    /// <param name="complaints">Where complaints go.</param>
    public static MergedAmounts Of(HeaderMatch header, Complaints complaints)
    {
        var found = new MergedAmounts();
        var columns = header.Placed.Where(pair => header.Plan.IsAmount(pair.Key)).OrderBy(pair => pair.Value.Column).ToArray();
        if (columns.Length == 0) return found;
        var sheet = header.Sheet;
        foreach (var area in sheet.Merged.Where(area => area.LastRow > area.FirstRow && area.FirstRow > header.Row))
        {
            if (Array.Find(columns, pair => pair.Value.Column == area.FirstColumn).Key is not { } column) continue;
            var value = sheet.Rows.FirstOrDefault(row => row.Number == area.FirstRow)?[area.FirstColumn] ?? RawCell.Blank;
            if (value.IsBlank || sheet.Rows.SkipWhile(row => row.Number < area.FirstRow).TakeWhile(row => row.Number <= area.LastRow).Take(2).Count() < 2)
                continue;
            found._areas.Add((area, complaints.Add(
                sheet.Place.At(area.FirstRow, area.FirstColumn),
                State.Fail,
                $"{column.Name} is one cell merged over several rows ({area.Name}): the amount of each, or of all together? It was not read",
                value.Text,
                "an amount in each row; unmerge the cells")));
        }

        return found;
    }

    /// <summary>Whether an area is one of them.</summary>
    /// <param name="area">The area.</param>
    public bool Contains(MergedArea area) => _areas.Exists(entry => entry.Area == area);

    /// <summary>The complaint about a cell; null for none.</summary>
    /// <param name="row">Row, 1 or more.</param>
    /// <param name="column">Column, A = 1.</param>
    public Problem? At(int row, int column) => _areas.Find(entry => entry.Area.Covers(row, column)).Problem;
}
