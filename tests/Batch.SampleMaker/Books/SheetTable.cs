namespace Batch.SampleMaker.Books;

/// <summary>A sheet: a title row, a header row, rows of values. Values are null, string, int, double, LocalDate, LocalTime or Instant.</summary>
public sealed record SheetTable
{
    public required string Name { get; init; }

    /// <summary>What stands in the first row; always says that the data are invented.</summary>
    public required string Title { get; init; }

    public required ImmutableArray<Column> Columns { get; init; }

    public required ImmutableArray<object?[]> Rows { get; init; }

    /// <summary>Makes a sheet with the usual title.</summary>
    public static SheetTable Of(string name, ImmutableArray<Column> columns, IEnumerable<object?[]> rows)
    {
        var all = rows.ToImmutableArray();
        var odd = all.FirstOrDefault(row => row.Length != columns.Length);
        if (odd is not null)
        {
            throw new InvalidOperationException($"{name}: a row has {odd.Length} values, the sheet {columns.Length} columns: {string.Join(" | ", odd)}");
        }

        return new SheetTable { Name = name, Title = $"{name} - invented data, not for navigation", Columns = columns, Rows = all };
    }
}
