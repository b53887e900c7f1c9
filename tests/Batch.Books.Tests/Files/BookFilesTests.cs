using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Files;

/// <summary>Which files of a folder are its books.</summary>
public sealed class BookFilesTests
{
    [Theory]
    [InlineData("._week.xlsx")]
    [InlineData(".week.xlsx")]
    [InlineData("~$week.xlsx")]
    public void What_a_system_or_program_leaves_beside_a_book_is_passed_over(string name)
    {
        using var folder = new TempFolder();
        GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx"));
        GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"));
        var alone = BookReader.Read([folder.File("")]).Inputs.ToArray();
        File.WriteAllBytes(folder.File(name), [0, 5, 22, 7]);
        Assert.Equal(alone, BookReader.Read([folder.File("")]).Inputs.ToArray());
    }

    [Theory]
    [InlineData("legs.csv", "Legs.csv and legs.csv")]
    [InlineData("Legs.CSV", "Legs.CSV and Legs.csv")]
    public void Two_csv_files_of_one_name_are_refused_because_a_cell_could_not_be_named(string twin, string both)
    {
        using var folder = new TempFolder();
        GoodBooks.Week().SaveCsv(folder.File("week"));
        File.Copy(Path.Combine(folder.File("week"), "Legs.csv"), Path.Combine(folder.File("week"), twin), overwrite: true);
        if (Directory.GetFiles(folder.File("week"), "*legs.csv", new EnumerationOptions { MatchCasing = MatchCasing.CaseInsensitive }).Length < 2)
            return; // a disk that knows no case
        var refused = Assert.Throws<BookException>(() => BookReader.Read([folder.File("week")])).Message;
        Assert.Equal($"{folder.File("week")} holds {both}, so a cell could not be named clearly; take one away", refused);
    }

    [Fact]
    public void The_folder_of_a_run_is_no_week()
    {
        using var folder = new TempFolder();
        GoodBooks.Week().SaveXlsx(folder.File("checked.xlsx"));
        File.WriteAllText(folder.File("run.json"), "{}");
        var refused = Assert.Throws<BookException>(() => BookReader.Read([folder.File("")])).Message;
        Assert.EndsWith(" is the folder of a finished run; name the workbook in it that is meant", refused, StringComparison.Ordinal);
    }
}
