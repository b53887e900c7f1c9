using System.Globalization;
using System.Text;

namespace Batch.EndToEnd.Tests;

/// <summary>Types values into the cells of csv books named as the program names them, such as <c>week.xlsx/Legs/R23</c>.</summary>
internal static class CsvCells
{
    /// <summary>Writes values into the csv files of a folder that has one sub-folder a book.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="changes">New value by cell.</param>
    public static void Type(string folder, IEnumerable<(string Cell, string Value)> changes)
    {
        foreach (var sheet in changes.Select(change => (Parts: change.Cell.Split('/'), change.Value))
            .GroupBy(change => (Book: change.Parts[0], Sheet: change.Parts[1])))
        {
            var file = Path.Combine(folder, Path.GetFileNameWithoutExtension(sheet.Key.Book), sheet.Key.Sheet + ".csv");
            var rows = Read(File.ReadAllText(file));
            foreach (var (parts, value) in sheet)
            {
                var letters = parts[2].TakeWhile(char.IsAsciiLetter).ToArray();
                var row = rows[int.Parse(parts[2].AsSpan(letters.Length), CultureInfo.InvariantCulture) - 1];
                var column = letters.Aggregate(0, (number, letter) => number * 26 + letter - 'A' + 1) - 1;
                while (row.Count <= column) row.Add("");
                row[column] = value;
            }

            Write(file, rows);
        }
    }

    /// <summary>Sheet and header of the column that a cell stands in, without the unit: <c>Legs Fuel plan</c>.</summary>
    /// <param name="folder">The folder; headers stand in the second row.</param>
    /// <param name="cell">The cell.</param>
    public static string Column(string folder, string cell)
    {
        var parts = cell.Split('/');
        var rows = Read(File.ReadAllText(Path.Combine(folder, Path.GetFileNameWithoutExtension(parts[0]), parts[1] + ".csv")));
        var column = parts[2].TakeWhile(char.IsAsciiLetter).Aggregate(0, (number, letter) => number * 26 + letter - 'A' + 1) - 1;
        return parts[1] + " " + rows[1][column].Split(" [")[0];
    }

    /// <summary>Copies the csv files of a folder with its sub-folders.</summary>
    /// <param name="books">From where.</param>
    /// <param name="folder">To where.</param>
    public static void Copy(string books, string folder)
    {
        foreach (var file in Directory.EnumerateFiles(books, "*.csv", SearchOption.AllDirectories))
        {
            var to = Path.Combine(folder, Path.GetRelativePath(books, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to) ?? folder);
            File.Copy(file, to);
        }
    }

    /// <summary>Types every cell of a column anew, also those that are empty.</summary>
    /// <param name="file">The csv file; its headers stand in the second row.</param>
    /// <param name="header">The column's header without unit.</param>
    /// <param name="value">The new text by the old.</param>
    public static void TypeColumn(string file, string header, Func<string, string> value)
    {
        var rows = Read(File.ReadAllText(file));
        var column = rows[1].FindIndex(name => name.Split(" [")[0] == header);
        foreach (var row in rows.Skip(2).Where(row => row.Count > column)) row[column] = value(row[column]);
        Write(file, rows);
    }

    /// <summary>Writes rows, every field in quotation marks.</summary>
    public static void Write(string file, List<List<string>> rows) =>
        File.WriteAllText(file, string.Join("\r\n",
            rows.Select(row => string.Join(',', row.Select(field => "\"" + field.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"")))) + "\r\n");

    /// <summary>Reads the rows of a csv text.</summary>
    public static List<List<string>> Read(string text)
    {
        var rows = new List<List<string>> { new() };
        var field = new StringBuilder();
        var isQuoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (isQuoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"') field.Append(text[++i]);
            else if (c == '"') isQuoted = !isQuoted;
            else if (isQuoted || (c != ',' && c != '\n')) field.Append(c);
            else
            {
                rows[^1].Add(field.ToString().TrimEnd('\r'));
                field.Clear();
                if (c == '\n') rows.Add([]);
            }
        }

        if (field.Length > 0) rows[^1].Add(field.ToString());
        return rows[^1].Count == 0 ? rows[..^1] : rows;
    }
}
