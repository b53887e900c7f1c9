using System.IO.Compression;
using System.Text;
using Batch.Books.Tests.Support;
using CsCheck;

namespace Batch.Books.Tests;

public sealed class HostileTests
{
    [Fact]
    public void Paths_that_are_no_books_are_refused_with_a_reason()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder.File("empty"));
        File.WriteAllText(folder.File("notes.txt"), "hello");
        File.WriteAllText(folder.File("Legs.csv"), "Trip,Leg\n");
        File.WriteAllBytes(folder.File("old.xlsx"), [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]);
        Assert.Contains("does not exist", Refused(folder.File("none.xlsx")), StringComparison.Ordinal);
        Assert.Contains("no workbook", Refused(folder.File("empty")), StringComparison.Ordinal);
        Assert.Contains("not a workbook", Refused(folder.File("notes.txt")), StringComparison.Ordinal);
        Assert.Contains("folder", Refused(folder.File("Legs.csv")), StringComparison.Ordinal);
        Assert.Contains("old .xls format", Refused(folder.File("old.xlsx")), StringComparison.Ordinal);
        Assert.Contains("no book has a sheet Legs", Refused(GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx"))), StringComparison.Ordinal);
        Assert.Contains("without a name", Refused(""), StringComparison.Ordinal);
        Assert.Contains("no book is given", Assert.Throws<BookException>(() => BookReader.Read([])).Message, StringComparison.Ordinal);
        var week = GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"));
        Assert.Contains("two books are called week.xlsx", Assert.Throws<BookException>(() => BookReader.Read([week, week])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_never_ends_is_refused()
    {
        if (OperatingSystem.IsWindows()) return; // has no such device
        using var folder = new TempFolder();
        File.CreateSymbolicLink(folder.File("week.xlsx"), "/dev/zero");
        Assert.Equal("week.xlsx is empty, or is no file (a pipe or a device)", Refused(folder.File("week.xlsx")));
    }

    [Fact]
    public async Task A_pipe_or_an_empty_file_is_refused_without_waiting_for_it()
    {
        using var folder = new TempFolder();
        File.WriteAllBytes(folder.File("empty.xlsx"), []);
        Assert.Equal("empty.xlsx is empty, or is no file (a pipe or a device)", Refused(folder.File("empty.xlsx")));
        if (OperatingSystem.IsWindows()) return; // has no pipes with the name of a file
        using (var maker = System.Diagnostics.Process.Start("mkfifo", [folder.File("week.xlsx")])) await maker.WaitForExitAsync();
        Assert.Equal("week.xlsx is empty, or is no file (a pipe or a device)",
            await Task.Run(() => Refused(folder.File("week.xlsx"))).WaitAsync(TimeSpan.FromSeconds(30)));
    }

    [Theory]
    [InlineData("EncryptedPackage", "week.xlsx needs a password; save it without one")]
    [InlineData("Workbook", "week.xlsx is in the old .xls format whatever its name says; open it in a spreadsheet program and save it as .xlsx")]
    public void A_workbook_with_a_password_and_one_of_the_old_format_are_told_apart(string stream, string refusal)
    {
        using var folder = new TempFolder();
        File.WriteAllBytes(folder.File("week.xlsx"),
            [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, .. new byte[500], .. Encoding.Unicode.GetBytes(stream), .. new byte[500]]);
        Assert.Equal(refusal, Refused(folder.File("week.xlsx")));
    }

    [Fact]
    public void A_folder_means_its_workbooks_without_lock_files_and_sub_folders_or_else_its_csv_files()
    {
        using var folder = new TempFolder();
        var books = folder.File("books");
        GoodBooks.Week().SaveCsv(books);
        GoodBooks.Operator().SaveCsv(books);
        Assert.Equal(["books"], BookReader.Read([books]).Inputs.Select(input => input.Name));
        GoodBooks.Week().SaveXlsx(Path.Combine(books, "week.xlsx"));
        GoodBooks.Operator().SaveXlsx(Path.Combine(books, "operator.xlsx"));
        File.WriteAllText(Path.Combine(books, "~$week.xlsx"), "lock");
        Directory.CreateDirectory(Path.Combine(books, "deep"));
        File.WriteAllText(Path.Combine(books, "deep", "bad.xlsx"), "not a workbook");
        Assert.Equal(["operator.xlsx", "week.xlsx"], BookReader.Read([books]).Inputs.Select(input => input.Name));
    }

    [Fact]
    public void Random_bytes_and_cut_off_workbooks_are_refused_and_never_crash()
    {
        using var folder = new TempFolder();
        var good = File.ReadAllBytes(GoodBooks.Week().SaveXlsx(folder.File("good.xlsx")));
        var path = folder.File("bad.xlsx");
        Gen.Byte.Array[0, 300].Sample(bytes => RefusedOrRead(path, bytes), iter: 100, threads: 1);
        Gen.Int[0, good.Length - 1].Sample(length => RefusedOrRead(path, good[..length]), iter: 60, threads: 1);
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte)
            .Sample((at, value) => RefusedOrRead(path, [.. good[..at], value, .. good[(at + 1)..]]), iter: 150, threads: 1);
    }

    [Theory]
    [InlineData("xl/sharedStrings.xml", "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">", "</sst>")]
    [InlineData("xl/sharedStrings.xml", "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><si><t>", "</t></si></sst>")]
    [InlineData("xl/styles.xml", "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">", "</styleSheet>")]
    public void A_small_file_that_unpacks_to_a_huge_one_is_refused(string part, string head, string tail)
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().SaveXlsx(folder.File("bomb.xlsx"));
        using (var zip = ZipFile.Open(path, ZipArchiveMode.Update))
        {
            zip.GetEntry(part)?.Delete();
            using var entry = zip.CreateEntry(part, CompressionLevel.Fastest).Open();
            entry.Write(Encoding.UTF8.GetBytes(head));
            var blanks = new byte[1 << 20];
            Array.Fill(blanks, (byte)' ');
            for (var i = 0; i < 130; i++) entry.Write(blanks);
            entry.Write(Encoding.UTF8.GetBytes(tail));
        }

        Assert.True(new FileInfo(path).Length < 5_000_000);
        Assert.NotEqual("", Refused(path));
    }

    [Fact]
    public void Entities_are_not_expanded()
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().SaveXlsx(folder.File("entities.xlsx"));
        using (var zip = ZipFile.Open(path, ZipArchiveMode.Update))
        {
            zip.GetEntry("xl/sharedStrings.xml")?.Delete();
            using var entry = new StreamWriter(zip.CreateEntry("xl/sharedStrings.xml").Open());
            entry.Write("<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]><sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><si><t>&b;</t></si></sst>");
        }

        Assert.Contains("not a workbook that can be read", Refused(path), StringComparison.Ordinal);
    }

    [Fact]
    public void Twenty_thousand_rows_are_read_and_the_orphans_of_one_trip_are_reported_once()
    {
        using var folder = new TempFolder();
        var week = GoodBooks.Week();
        for (var i = 0; i < 20000; i++) week.Add("Manifest", i % 2 == 0 ? "T101" : "T999", "all", "Somebody", "man", 180);
        var read = BookReader.Read([GoodBooks.Operator().SaveCsv(folder.File("operator")), week.SaveCsv(folder.File("week"))]);
        Assert.Equal(10003, read.Manifest.Length);
        var problem = Assert.Single(read.Problems, problem => problem.State == State.Fail);
        Assert.Equal("week/Manifest/A6", problem.Cell);
        Assert.StartsWith("the trip of rows 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28 and more is not one of Legs", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_damaged_csv_complains_and_the_rest_goes_on()
    {
        using var folder = new TempFolder();
        var week = GoodBooks.Week().SaveCsv(folder.File("week"));
        File.WriteAllBytes(Path.Combine(week, "Cargo.csv"), [0, 1, 2, 0xFF, 0xFE, 34, 10, 0, 59, 59, 13]);
        File.AppendAllText(Path.Combine(week, "Manifest.csv"), "T101,all,\"never closed,man,180\n" + new string('x', 100_000));
        var read = BookReader.Read([week, GoodBooks.Operator().SaveCsv(folder.File("operator"))]);
        Assert.Equal(3, read.Legs.Length);
        Assert.True(read.Manifest.Length >= 3);
        Assert.Contains(read.Problems, problem => problem.Cell.StartsWith("week/Cargo", StringComparison.Ordinal) && problem.State != State.Note);
    }

    [Fact]
    public void Garbage_in_one_cell_loses_nothing_of_other_rows()
    {
        var operatorBook = GoodBooks.Operator();
        var week = GoodBooks.Week();
        using var folder = new TempFolder();
        var operatorPath = operatorBook.SaveCsv(folder.File("operator"));
        var sheets = operatorBook.Sheets.Select(sheet => (Book: "operator", sheet.Name, sheet.Rows))
            .Concat(week.Sheets.Select(sheet => (Book: "week", sheet.Name, sheet.Rows))).ToArray();
        week.SaveCsv(folder.File("week"));
        var before = Counts(BookReader.Read([operatorPath, folder.File("week")]));
        var places = sheets.SelectMany(sheet => Enumerable.Range(1, sheet.Rows.Count - 1).SelectMany(row => Enumerable.Range(0, sheet.Rows[0].Length)
            .Select(column => (sheet.Book, sheet.Name, sheet.Rows, Row: row, Column: column)))).ToArray();
        var garbage = Gen.OneOf(
            Gen.String[0, 12],
            Gen.Double.Select(number => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture)),
            Gen.Int[0, Oddities.Length - 1].Select(index => Oddities[index]));
        Gen.Select(Gen.Int[0, places.Length - 1], garbage).Sample(
            (index, text) =>
            {
                var (book, name, rows, row, column) = places[index];
                var whole = rows[row];
                rows[row] = whole.Length > column ? [.. whole] : [.. whole, .. new object?[column + 1 - whole.Length]];
                rows[row][column] = text;
                (book == "week" ? week : operatorBook).SaveCsv(folder.File(book), only: name);
                var after = BookReader.Read([operatorPath, folder.File("week")]);
                rows[row] = whole;
                (book == "week" ? week : operatorBook).SaveCsv(folder.File(book), only: name);

                // Every row of the Legs sheet is still there, whole or broken; of the sheet itself at most one row is lost (of an envelope or a table the whole
                // of it).
                Assert.Equal(3, after.Legs.Length + after.BrokenLegs.Length);
                Assert.All(after.BrokenLegs, leg => Assert.Contains(leg.Problems, problem => problem.State == State.Fail));
                if (book != "week") return;
                var now = Counts(after);
                for (var i = 0; i < now.Length; i++)
                    Assert.InRange(now[i], before[i] - (Names[i] == name ? 1 : name == "Legs" && Names[i] is "Manifest" or "Cargo" ? 3 : 0), before[i]);
                if (name is not "Legs") Assert.Equal(3, after.Legs.Length);
                else Assert.InRange(after.Legs.Length, 2, 3);
            },
            iter: 150,
            threads: 1);
    }

    private static readonly string[] Oddities =
        ["#N/A", "-1", "0", "99999999999999999999", "1/2/2026", "2026-12-07", "24:00", "NaN", "1:99", "é\"'", "=1+1", "\n\n", "1,5", "  ", "FL", "+", "-", "N",
            "°", "[kg]", "1 lb lb", "9.9e99", "\0", "Z"];

    private static readonly string[] Names = ["Manifest", "Cargo", "Winds", "Bulletins", "Notices"];

    private static int[] Counts(Flight.Week.OperatorWeek week) =>
        [week.Manifest.Length, week.Cargo.Length, week.Winds.Length, week.Bulletins.Length, week.Notices.Length];

    private static string Refused(string path) => Assert.Throws<BookException>(() => BookReader.Read([path])).Message;

    private static void RefusedOrRead(string path, byte[] bytes)
    {
        File.WriteAllBytes(path, bytes);
        try
        {
            Assert.NotNull(BookReader.Read([path]));
        }
        catch (BookException refused)
        {
            Assert.NotEqual("", refused.Message);
        }
    }
}
