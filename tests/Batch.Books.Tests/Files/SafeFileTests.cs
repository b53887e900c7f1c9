using Batch.Books.Files;
using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Files;

/// <summary>Replacing a file of the user's.</summary>
public sealed class SafeFileTests
{
    [Fact]
    public void The_file_is_replaced_and_the_old_one_kept()
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("operator.xlsx"), "old");
        Assert.Equal(folder.File("operator.xlsx.bak"), SafeFile.Replace(folder.File("operator.xlsx"), "new"u8.ToArray()));
        Assert.Equal(("new", "old"), (File.ReadAllText(folder.File("operator.xlsx")), File.ReadAllText(folder.File("operator.xlsx.bak"))));
        Assert.Equal(2, Directory.GetFiles(folder.File("")).Length);
    }

    [Fact]
    public void A_link_stays_a_link_and_what_it_names_is_replaced()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder.File("shared"));
        File.WriteAllText(folder.File("shared/operator.xlsx"), "old");
        File.CreateSymbolicLink(folder.File("operator.xlsx"), "shared/operator.xlsx");
        Assert.Equal(folder.File("shared/operator.xlsx.bak"), SafeFile.Replace(folder.File("operator.xlsx"), "new"u8.ToArray()));
        Assert.Equal("shared/operator.xlsx", new FileInfo(folder.File("operator.xlsx")).LinkTarget);
        Assert.Equal("new", File.ReadAllText(folder.File("shared/operator.xlsx")));
    }

    [Fact]
    public void A_file_that_others_may_not_read_stays_so()
    {
        if (OperatingSystem.IsWindows()) return; // has no such modes
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("operator.xlsx"), "old");
        File.SetUnixFileMode(folder.File("operator.xlsx"), UnixFileMode.UserRead | UnixFileMode.UserWrite);
        SafeFile.Replace(folder.File("operator.xlsx"), "new"u8.ToArray());
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(folder.File("operator.xlsx")));
    }

    [Fact]
    public void A_write_protected_file_is_left_alone()
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("operator.xlsx"), "old");
        File.SetAttributes(folder.File("operator.xlsx"), FileAttributes.ReadOnly);
        Assert.Equal("operator.xlsx is write-protected; it stands as it was",
            Assert.Throws<BookException>(() => SafeFile.Replace(folder.File("operator.xlsx"), "new"u8.ToArray())).Message);
        Assert.Equal("old", File.ReadAllText(folder.File("operator.xlsx")));
        File.SetAttributes(folder.File("operator.xlsx"), FileAttributes.Normal);
    }

    [Fact]
    public void What_was_begun_is_taken_away_where_it_cannot_be_finished()
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("operator.xlsx"), "old");
        Directory.CreateDirectory(folder.File("operator.xlsx.bak"));
        Assert.Throws<BookException>(() => SafeFile.Replace(folder.File("operator.xlsx"), "new"u8.ToArray()));
        Assert.Equal([folder.File("operator.xlsx")], Directory.GetFiles(folder.File("")));
    }
}
