using Batch.Books.Cells;
using Batch.Books.Csv;
using NodaTime.Text;

namespace Batch.Books.Starter;

/// <summary>The example rows of a sheet, from the csv file of its name in the folder <c>Example</c>.</summary>
/// <param name="Headers">Column names without units.</param>
/// <param name="Rows">Cells as text, as many as headers.</param>
internal sealed record ExampleSheet(ImmutableArray<string> Headers, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>The example of a sheet; empty where it has none.</summary>
    /// <param name="book"><c>operator</c> or <c>week</c>.</param>
    /// <param name="sheet">Name of the sheet.</param>
    public static ExampleSheet Of(string book, string sheet)
    {
        using var stream = typeof(ExampleSheet).Assembly.GetManifestResourceStream($"example/{book}/{sheet}.csv");
        if (stream is null) return new ExampleSheet([], []);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        var rows = CsvFolder.Sheet(sheet, copy.ToArray(), new CellRef(0, 0, sheet)).Rows.Select(row => row.Cells.Select(cell => cell.Text).ToImmutableArray())
            .ToImmutableArray();
        return new ExampleSheet(rows[0], rows[1..]);
    }

    /// <summary>The example with its dates moved.</summary>
    /// <param name="days">By how many days.</param>
    public ExampleSheet Moved(int days) => this with { Rows = [.. Rows.Select(row => row.Select(text => Moved(text, days)).ToImmutableArray())] };

    private static string Moved(string text, int days) =>
        text.Length >= 10 && LocalDatePattern.Iso.Parse(text[..10]) is { Success: true } date
            ? LocalDatePattern.Iso.Format(date.Value.PlusDays(days)) + text[10..]
            : text;

    /// <summary>The texts of one column, in row order.</summary>
    /// <param name="header">Its name.</param>
    public ImmutableArray<string> Column(string header)
    {
        var at = Headers.IndexOf(header);
        return at < 0 ? [] : [.. Rows.Select(row => row[at])];
    }
}
