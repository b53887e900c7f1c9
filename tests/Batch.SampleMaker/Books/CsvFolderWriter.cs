using System.Globalization;
using System.Text;
using NodaTime.Text;

namespace Batch.SampleMaker.Books;

/// <summary>Writes a book as a folder of csv files with the same rows and columns at the same places as the workbook.</summary>
public static class CsvFolderWriter
{
    public static void Write(Book book, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var sheet in book.Sheets)
        {
            var text = new StringBuilder();
            AddRow(text, [sheet.Title]);
            AddRow(text, sheet.Columns.Select(column => column.Header));
            foreach (var row in sheet.Rows)
            {
                AddRow(text, row.Select(Text));
            }

            File.WriteAllText(Path.Combine(folder, sheet.Name + ".csv"), text.ToString());
        }
    }

    /// <summary>One record as RFC 4180 writes it, with a bare line feed at its end.</summary>
    private static void AddRow(StringBuilder text, IEnumerable<string> fields) =>
        text.AppendJoin(',', fields.Select(field => field.AsSpan().IndexOfAny(',', '"', '\n') < 0
            ? field
            : '"' + field.Replace("\"", "\"\"", StringComparison.Ordinal) + '"')).Append('\n');

    private static string Text(object? value) => value switch
    {
        null => "",
        string text => text,
        int number => number.ToString(CultureInfo.InvariantCulture),
        double number => number.ToString(CultureInfo.InvariantCulture),
        LocalDate date => LocalDatePattern.Iso.Format(date),
        LocalTime time => time.ToString("HH:mm", CultureInfo.InvariantCulture),
        Instant instant => instant.ToString("uuuu-MM-dd'T'HH:mm'Z'", CultureInfo.InvariantCulture),
        _ => throw new InvalidOperationException($"No text for a value of {value.GetType().Name}."),
    };
}
