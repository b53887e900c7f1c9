using Batch.Cli.Watching;

namespace Batch.EndToEnd.Tests.Watching;

/// <summary>What counts as saved.</summary>
public sealed class FileStampsTests
{
    [Fact]
    public void A_book_that_is_saved_behind_a_link_is_seen()
    {
        using var folder = new TemporaryFolder();
        var book = Path.Combine(Directory.CreateDirectory(folder.Path).FullName, "shared.xlsx");
        var link = Path.Combine(folder.Path, "week.xlsx");
        File.WriteAllText(book, "one");
        File.CreateSymbolicLink(link, book);
        var before = FileStamps.Of([link]);
        File.WriteAllText(book, "two, longer");
        Assert.NotEqual(before, FileStamps.Of([link]));
    }

    [Theory]
    [InlineData("week.xlsx", true)]
    [InlineData("Legs.csv", true)]
    [InlineData("trip-sheet.html", true)]
    [InlineData("~$week.xlsx", false)]
    [InlineData(".~lock.week.xlsx#", false)]
    [InlineData("._week.xlsx", false)]
    [InlineData(".trip-sheet.html.swp", false)]
    [InlineData("notes.docx", false)]
    public void In_a_folder_what_a_run_would_read_counts(string name, bool isRead)
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path);
        var before = FileStamps.Of([folder.Path]);
        File.WriteAllText(Path.Combine(folder.Path, name), "saved");
        Assert.Equal(isRead, before != FileStamps.Of([folder.Path]));
    }
}
