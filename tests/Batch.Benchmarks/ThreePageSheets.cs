using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Paper;
using Batch.Testing;

namespace Batch.Benchmarks;

/// <summary>The pages of one leg of the sample's trip sheet, each time with another number, so that no two sheets are the same.</summary>
internal static class ThreePageSheets
{
    /// <summary>A week's worth.</summary>
    public const int Count = 300;

    /// <summary>So many sheets; throws when they are not of three pages.</summary>
    public static string[] Of(int count)
    {
        var html = File.ReadAllText(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "Golden", "T101.html"));
        var parts = Regex.Split(html, "(?=<section class=\"new-page\" id=)", RegexOptions.None, TimeSpan.FromSeconds(5));
        var sheet = parts[0][..parts[0].IndexOf("<body", StringComparison.Ordinal)] + "<body>" + parts[1]
            .Replace("class=\"new-page\" ", "", StringComparison.Ordinal) + "</body></html>";
        var pages = new PdfPrinter().Print(sheet, new PrintOptions()).Pages;
        if (pages != 3) throw new InvalidOperationException(FormattableString.Invariant($"The sheet has {pages} pages."));
        return [.. Enumerable.Range(0, count)
            .Select(number => sheet.Replace("T101", "S" + number.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal))];
    }

    /// <summary>Prints them all; gives the bytes made.</summary>
    public static long Print(PdfPrinter printer, IEnumerable<string> sheets, int threads)
    {
        long bytes = 0;
        Parallel.ForEach(sheets, new ParallelOptions { MaxDegreeOfParallelism = threads },
            html => Interlocked.Add(ref bytes, printer.Print(html, new PrintOptions()).Pdf.Length));
        return bytes;
    }
}
