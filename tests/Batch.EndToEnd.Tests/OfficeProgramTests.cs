using System.Diagnostics;
using ClosedXML.Excel;

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
            using var was = new XLWorkbook(Path.Combine(folder.Path, name));
            using var now = new XLWorkbook(Path.Combine(saved, name));
            Assert.Equal(was.Worksheets.Select(sheet => sheet.Name), now.Worksheets.Select(sheet => sheet.Name));
            foreach (var sheet in was.Worksheets) Assert.Equal((name, sheet.Name, Texts(sheet)), (name, sheet.Name, Texts(now.Worksheet(sheet.Name))));
        }

        using var marked = new XLWorkbook(Path.Combine(saved, "checked.xlsx"));
        Assert.Equal(XLColor.FromArgb(0xEF, 0x53, 0x50), marked.Worksheet("Legs").Cell("G71").Style.Fill.BackgroundColor);
        Assert.Contains("did you mean XAND?", marked.Worksheet("Legs").Cell("G71").Comment.Text, StringComparison.Ordinal);
        Assert.Equal(0, SampleRun.Run("check", Path.Combine(saved, "operator.xlsx"), Path.Combine(saved, "week.xlsx")).Status);
    }

    // The texts of a sheet; numbers and times are shown by each program in its own way.
    private static string Texts(IXLWorksheet sheet) =>
        string.Join('\n', sheet.CellsUsed(XLCellsUsedOptions.Contents).Where(cell => cell.DataType == XLDataType.Text).Select(cell => $"{cell.Address} {cell.GetString().ReplaceLineEndings("\n").Trim()}").Where(text => !text.EndsWith(' ')));

    private static void Save(IEnumerable<string> books, string into, string profile)
    {
        string[] words = ["-env:UserInstallation=" + new Uri(profile).AbsoluteUri, "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", into, .. books];
        using var process = Process.Start(new ProcessStartInfo(Program, words) { RedirectStandardOutput = true, RedirectStandardError = true }) ?? throw new InvalidOperationException("LibreOffice does not start.");
        var errors = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, said + errors.Result);
    }

    private static bool IsInstalled() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries).Any(folder => File.Exists(Path.Combine(folder, Program)));
}
