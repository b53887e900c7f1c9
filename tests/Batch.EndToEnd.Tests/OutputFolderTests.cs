using Batch.Cli.Pipeline;

namespace Batch.EndToEnd.Tests;

/// <summary>A run is written whole or not at all.</summary>
public sealed class OutputFolderTests
{
    [Fact]
    public void A_run_that_breaks_off_leaves_the_last_good_run()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true);
        Write(folder.Path, "second", commit: false);
        Assert.Equal("first", File.ReadAllText(Path.Combine(folder.Path, "run.json")));
        Assert.False(Directory.Exists(folder.Path + ".tripbatch-new"));
    }

    [Fact]
    public void A_finished_run_replaces_the_last_one_whole()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true, extra: "sheets/T1.html");
        Write(folder.Path, "second", commit: true);
        Assert.Equal(["run.json"], folder.Files());
        Assert.Equal("second", File.ReadAllText(Path.Combine(folder.Path, "run.json")));
        Assert.False(Directory.Exists(folder.Path + ".tripbatch-old"));
    }

    [Fact]
    public void A_run_killed_between_the_two_moves_is_put_back()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true);
        Directory.Move(folder.Path, folder.Path + ".tripbatch-old");
        Write(folder.Path, "second", commit: false);
        Assert.Equal("first", File.ReadAllText(Path.Combine(folder.Path, "run.json")));
    }

    [Fact]
    public void What_is_the_users_own_in_the_folder_is_taken_along()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true, extra: "checked-operator.xlsx");
        File.WriteAllText(Path.Combine(folder.Path, "notes.txt"), "mine");
        Directory.CreateDirectory(Path.Combine(folder.Path, "letters"));
        File.WriteAllText(Path.Combine(folder.Path, "letters", "one.txt"), "mine too");
        Write(folder.Path, "second", commit: true);
        Assert.Equal(["letters/one.txt", "notes.txt", "run.json"], folder.Files());
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder.Path, "notes.txt")));
    }

    [Fact]
    public void A_book_of_the_run_that_stands_in_the_folder_stays_also_where_it_has_a_name_of_ours()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true, extra: "checked-operator.xlsx");
        using (var output = new OutputFolder(folder.Path))
        {
            output.Write("run.json", "second"u8.ToArray());
            output.Commit(Path.Combine(folder.Path, "checked-operator.xlsx"), Path.Combine(folder.Path, "..", "week.xlsx"));
        }

        Assert.Equal(["checked-operator.xlsx", "run.json"], folder.Files());
    }

    [Fact]
    public void A_run_killed_before_it_took_along_what_is_the_users_own_does_so_the_next_time()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "second", commit: true);
        Directory.CreateDirectory(folder.Path + ".tripbatch-old");
        File.WriteAllText(Path.Combine(folder.Path + ".tripbatch-old", "week.xlsx"), "mine");
        Write(folder.Path, "third", commit: true);
        Assert.Equal(["run.json", "week.xlsx"], folder.Files());
        Assert.False(Directory.Exists(folder.Path + ".tripbatch-old"));
    }

    [Theory]
    [InlineData(".old")]
    [InlineData(".new")]
    public void A_folder_that_the_user_keeps_beside_it_is_left_alone(string ending)
    {
        using var parent = new TemporaryFolder();
        var (place, kept) = (Path.Combine(parent.Path, "out"), Path.Combine(parent.Path, "out" + ending));
        Directory.CreateDirectory(kept);
        File.WriteAllText(Path.Combine(kept, "run.json"), "mine");
        Write(place, "first", commit: true);
        Write(place, "second", commit: true);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(kept, "run.json")));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_said_in_a_sentence()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path);
        File.WriteAllText(Path.Combine(folder.Path, "file"), "");
        var error = Assert.Throws<InputException>(() => new OutputFolder(Path.Combine(folder.Path, "file", "out")));
        Assert.Contains("cannot be written", error.Message, StringComparison.Ordinal);
        Assert.EndsWith("The last finished run stands as it was.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_folder_the_user_is_in_is_refused()
    {
        var error = Assert.Throws<InputException>(() => new OutputFolder("."));
        Assert.Contains("the folder you are in", error.Message, StringComparison.Ordinal);
        Assert.Throws<InputException>(() => new OutputFolder(".."));
        Assert.Contains("name of a folder", Assert.Throws<InputException>(() => new OutputFolder("")).Message, StringComparison.Ordinal);
    }

    private static void Write(string path, string text, bool commit, string? extra = null)
    {
        using var output = new OutputFolder(path);
        output.Write("run.json", System.Text.Encoding.UTF8.GetBytes(text));
        if (extra is not null) output.Write(extra, []);
        if (commit) output.Commit();
    }
}
