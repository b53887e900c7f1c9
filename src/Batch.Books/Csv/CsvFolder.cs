using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Batch.Books.Cells;
using Batch.Books.Files;
using CsvHelper;

namespace Batch.Books.Csv;

/// <summary>Reads the csv files of a folder as the sheets of one book.</summary>
internal static partial class CsvFolder
{
    /// <summary>Most bytes of a csv file [B].</summary>
    public const long GreatestFile = 256L * 1024 * 1024;

    /// <summary>The book, named after the folder.</summary>
    /// <param name="folder">Path of the folder.</param>
    /// <param name="files">Its csv files in name order.</param>
    /// <param name="index">Number of the book in the order given.</param>
    /// <exception cref="BookException">A file cannot be opened or is too large.</exception>
    public static RawBook Read(string folder, IReadOnlyList<string> files, int index)
    {
        var name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var sheets = ImmutableArray.CreateBuilder<RawSheet>();
        foreach (var file in files)
        {
            var bytes = Bytes(file);
            hash.AppendData(Encoding.UTF8.GetBytes(Path.GetFileName(file)));
            hash.AppendData(bytes);
            sheets.Add(Sheet(Path.GetFileNameWithoutExtension(file), bytes,
                new CellRef(index, sheets.Count, name + "/" + Path.GetFileNameWithoutExtension(file))));
        }

        return new RawBook(name, Convert.ToHexStringLower(hash.GetHashAndReset()), sheets.ToImmutable());
    }

    /// <summary>One sheet from the bytes of its file. Rows are records, blank lines counted, as a spreadsheet program numbers them.</summary>
    public static RawSheet Sheet(string name, byte[] bytes, CellRef place)
    {
        var text = CsvText.Decode(bytes);
        var remarks = ImmutableArray<(CellRef, State, string)>.Empty;
        if (text.Contains('\0', StringComparison.Ordinal))
        {
            text = text.Replace("\0", "", StringComparison.Ordinal);
            remarks = [(place, State.Caution, "the file holds NUL characters, which were left out; it may be damaged or not a csv file")];
        }

        var delimiter = CsvText.Delimiter(text);
        (text, var unclosed) = StrayQuotes.LeftOut(text, delimiter);
        remarks = remarks.AddRange(unclosed.Take(20).Select(number => (place.At(number), State.Caution,
            "a quotation mark opens a text that is never closed, or closed rows below, and was left out; see that the row is whole")));
        var malformed = new List<int>();
        var options = new CsvReaderOptions
        {
            Separator = delimiter,
            HasHeader = false,
            SkipEmptyLines = false,
            OnMalformedRecord = record => malformed.Add((int)record.RecordNumber)
        };
        var rows = new List<RawRow>();
        using var reader = CsvReader.FromText(text, options);
        for (var number = 1; reader.Read(); number++)
        {
            var record = reader.Current;
            var cells = new RawCell[Math.Min(record.FieldCount, 16384)];
            for (var i = 0; i < cells.Length; i++) cells[i] = RawCell.OfText(record.GetString(i));
            var row = new RawRow(number, cells);
            if (!row.IsBlank) rows.Add(row);
            if (Array.FindIndex(cells, cell => CsvLines.HoldsRows(cell.Text, delimiter)) is >= 0 and var field)
                remarks = remarks.Add((place.At(number, field + 1), State.Caution,
                    "the text holds lines that look like rows; if they are, a quotation mark before them is one too many: take it out"));
        }

        remarks = remarks.AddRange(malformed.Distinct().Take(20)
            .Select(number => (place.At(number), State.Caution, "a quotation mark stands where none is expected; the row may be cut wrongly")));
        return new RawSheet { Place = place, Name = name, Rows = rows, DecimalComma = delimiter == ';' && UsesComma(rows), Remarks = remarks };
    }

    // With semicolons the comma is the decimal sign, unless the file's own numbers plainly say otherwise.
    private static bool UsesComma(List<RawRow> rows)
    {
        var points = false;
        foreach (var row in rows)
        {
            foreach (var cell in row.Cells)
            {
                if (cell.Kind != CellKind.Text || !char.IsAsciiDigit(cell.Text[^1])) continue;
                if (CommaNumber().IsMatch(cell.Text)) return true;
                points |= PointNumber().IsMatch(cell.Text);
            }
        }

        return !points;
    }

    /// <summary>The bytes of a file, also while another program has it open.</summary>
    /// <param name="file">Path of the file.</param>
    /// <exception cref="BookException">It cannot be opened or is too large.</exception>
    public static byte[] Bytes(string file) => FileBytes.Read(file, Path.GetFileName(file), GreatestFile);

    [GeneratedRegex(@"^[+-]?\d+,\d+$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex CommaNumber();

    [GeneratedRegex(@"^[+-]?\d+\.(\d{1,2}|\d{4,})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex PointNumber();
}
