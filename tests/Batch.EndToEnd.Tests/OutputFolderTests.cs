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
    public void What_is_the_users_own_among_the_sheets_is_taken_along()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true, extra: "sheets/T1.pdf");
        File.WriteAllText(Path.Combine(folder.Path, "sheets", "T1 signed.pdf"), "mine");
        Directory.CreateDirectory(Path.Combine(folder.Path, "sheets", "scans"));
        File.WriteAllText(Path.Combine(folder.Path, "sheets", "scans", "T1.pdf"), "mine too");
        Directory.CreateDirectory(Path.Combine(folder.Path, "drafts"));
        File.WriteAllText(Path.Combine(folder.Path, "drafts", "RIM-revision-1.eml"), "ours");
        File.WriteAllText(Path.Combine(folder.Path, "drafts", "notes.txt"), "mine");
        Write(folder.Path, "second", commit: true, extra: "sheets/T2.pdf");
        Assert.Equal(["drafts/notes.txt", "run.json", "sheets/T1 signed.pdf", "sheets/T2.pdf", "sheets/scans/T1.pdf"], folder.Files());
        Write(folder.Path, "third", commit: true);
        Assert.Equal(["drafts/notes.txt", "run.json", "sheets/T1 signed.pdf", "sheets/scans/T1.pdf"], folder.Files());
    }

    [Fact]
    public void What_is_the_users_own_is_taken_along_also_where_the_run_writes_its_name_for_the_first_time()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true, extra: "sheets/T1.html");
        File.WriteAllText(Path.Combine(folder.Path, "sheets", "T1.pdf"), "mine");
        Directory.CreateDirectory(Path.Combine(folder.Path, "calendar"));
        File.WriteAllText(Path.Combine(folder.Path, "calendar", "notes.txt"), "mine too");
        using (var output = new OutputFolder(folder.Path))
        {
            foreach (var name in new[] { "run.json", "sheets/T1.pdf", "calendar/RIM.ics" }) output.Write(name, "ours"u8.ToArray());
            output.Commit();
        }

        Assert.Equal(["calendar/RIM.ics", "calendar/notes.txt", "run.json", "sheets/T1 (yours).pdf", "sheets/T1.pdf"], folder.Files());
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder.Path, "sheets", "T1 (yours).pdf")));
        Assert.Equal("ours", File.ReadAllText(Path.Combine(folder.Path, "sheets", "T1.pdf")));
    }

    [Fact]
    public void A_link_of_the_users_in_the_folder_stays_also_where_it_leads_nowhere()
    {
        if (OperatingSystem.IsWindows()) return; // links ask for a privilege there
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true);
        Directory.CreateDirectory(folder.Path + "-real");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "away"), "/not/there/now.xlsx");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "shared"), folder.Path + "-real");
        Write(folder.Path, "second", commit: true);
        Assert.Equal("/not/there/now.xlsx", new FileInfo(Path.Combine(folder.Path, "away")).LinkTarget);
        Assert.Equal(folder.Path + "-real", new FileInfo(Path.Combine(folder.Path, "shared")).LinkTarget);
        Directory.Delete(folder.Path + "-real");
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
    [InlineData("checked baggage.xlsx")]
    [InlineData("Checkedin.xlsm")]
    public void A_workbook_of_the_users_whose_name_only_begins_like_ours_is_taken_along(string name)
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true, extra: "checked.xlsx");
        File.WriteAllText(Path.Combine(folder.Path, name), "mine");
        Write(folder.Path, "second", commit: true);
        Assert.Equal(new[] { name, "run.json" }.Order(StringComparer.Ordinal), folder.Files());
    }

    // Two at a time would write into one folder, and the one that is done first would take half of the other's sheets along.
    [Fact]
    public void A_run_waits_for_another_that_writes_there_and_then_says_so()
    {
        using var parent = new TemporaryFolder();
        var place = Path.Combine(parent.Path, "out");
        using (var first = new OutputFolder(place))
        {
            first.Write("run.json", "first"u8.ToArray());
            var error = Assert.Throws<InputException>(() => new OutputFolder(place, TimeSpan.Zero));
            Assert.Contains("another run is writing", error.Message, StringComparison.Ordinal);
            first.Commit();
        }

        Assert.Equal(["out/run.json"], parent.Files());
        Write(place, "second", commit: true);
        Assert.Equal(["out/run.json"], parent.Files());
        Assert.Equal("second", File.ReadAllText(Path.Combine(place, "run.json")));
    }

    [Fact]
    public void A_run_killed_with_its_lock_does_not_stop_the_next()
    {
        using var parent = new TemporaryFolder();
        Directory.CreateDirectory(parent.Path);
        File.WriteAllText(Path.Combine(parent.Path, "out.tripbatch-lock"), "");
        Write(Path.Combine(parent.Path, "out"), "first", commit: true);
        Assert.Equal(["out/run.json"], parent.Files());
    }

    [Fact]
    public void A_link_to_a_folder_stays_a_link_and_its_folder_receives_the_run()
    {
        if (OperatingSystem.IsWindows()) return; // links ask for a privilege there
        using var parent = new TemporaryFolder();
        var (shared, place) = (Path.Combine(parent.Path, "share", "week"), Path.Combine(parent.Path, "out"));
        Directory.CreateDirectory(shared);
        Directory.CreateSymbolicLink(place, shared);
        Write(place, "first", commit: true);
        File.WriteAllText(Path.Combine(shared, "notes.txt"), "mine");
        Write(place, "second", commit: true);
        Assert.Equal(shared, new DirectoryInfo(place).LinkTarget);
        Assert.Equal("second", File.ReadAllText(Path.Combine(shared, "run.json")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(shared, "notes.txt")));
        Assert.Equal(["out", "share"], Directory.GetFileSystemEntries(parent.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
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
