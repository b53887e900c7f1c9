using System.Diagnostics;
using System.IO.Compression;
using System.Xml.Linq;

namespace Batch.EndToEnd.Tests;

/// <summary>The workbooks that the program writes, opened and saved by LibreOffice where it is installed: what stood in them stands there still.</summary>
public sealed class OfficeProgramTests(SampleRun sample) : IClassFixture<SampleRun>
{
    private const string Program = "soffice";

    [SkippableFact]
    public void Starter_books_checked_workbook_and_register_open_whole()
    {
        Skip.IfNot(IsInstalled(), "LibreOffice is not installed");
        using var folder = new TemporaryFolder();
        SampleRun.Run("new", folder.Path, "--made-at", SampleRun.MadeAt);
        foreach (var name in new[] { "checked.xlsx", "register.xlsx" }) File.WriteAllBytes(Path.Combine(folder.Path, name), sample.Bytes(name));
        string[] books = ["operator.xlsx", "week.xlsx", "checked.xlsx", "register.xlsx"];
        var saved = Path.Combine(folder.Path, "saved");
        Save(books.Select(book => Path.Combine(folder.Path, book)), saved, Path.Combine(folder.Path, "profile"));
        foreach (var name in books)
        {
            var (was, now) = (Path.Combine(folder.Path, name), Path.Combine(saved, name));
            Assert.Equal((name, string.Join(", ", Sheets(was))), (name, string.Join(", ", Sheets(now))));
            Assert.Empty(Texts(was, "xl/sharedStrings.xml", "xl/worksheets/")
                .Except(Texts(now, "xl/sharedStrings.xml", "xl/worksheets/"), StringComparer.Ordinal));
        }

        var marked = Path.Combine(saved, "checked.xlsx");
        Assert.Contains(Part(marked, "xl/styles.xml").Single().Descendants(),
            element => ((string?)element.Attribute("rgb"))?.EndsWith("EF5350", StringComparison.OrdinalIgnoreCase) == true);
        Assert.Contains(Texts(marked, "xl/comments"), text => text.Contains("did you mean XAND?", StringComparison.Ordinal));
        Assert.Equal(0, SampleRun.Run("check", Path.Combine(saved, "operator.xlsx"), Path.Combine(saved, "week.xlsx")).Status);
    }

    private static IEnumerable<string> Sheets(string book) => Part(book, "xl/workbook.xml").Single().Descendants()
        .Where(element => element.Name.LocalName == "sheet").Select(sheet => (string?)sheet.Attribute("name") ?? "");

    // The texts of cells or comments; numbers and times are written by each program in its own way.
    private static HashSet<string> Texts(string book, params string[] parts) =>
    [
        .. parts.SelectMany(part => Part(book, part)).SelectMany(part => part.Descendants())
            .Where(element => element.Name.LocalName is "si" or "is" or "comment")
            .Select(element => string.Concat(element.Descendants().Where(text => text.Name.LocalName == "t").Select(text => text.Value))
                .ReplaceLineEndings("\n").Trim()),
    ];

    private static IEnumerable<XDocument> Part(string book, string name)
    {
        using var archive = ZipFile.OpenRead(book);
        foreach (var entry in archive.Entries.Where(entry => entry.FullName.StartsWith(name, StringComparison.Ordinal)
            && entry.FullName.EndsWith(".xml", StringComparison.Ordinal)))
        {
            using var stream = entry.Open();
            yield return XDocument.Load(stream);
        }
    }

    private static void Save(IEnumerable<string> books, string into, string profile)
    {
        string[] words =
            ["-env:UserInstallation=" + new Uri(profile).AbsoluteUri, "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", into, .. books];
        using var process = Process.Start(
            new ProcessStartInfo(Program, words) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw new InvalidOperationException("LibreOffice does not start.");
        var errors = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, said + errors.Result);
    }

    private static bool IsInstalled() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Any(folder => File.Exists(Path.Combine(folder, Program)));
}
