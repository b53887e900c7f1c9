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
        Assert.False(Directory.Exists(folder.Path + ".new"));
    }

    [Fact]
    public void A_finished_run_replaces_the_last_one_whole()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true, extra: "sheets/T1.html");
        Write(folder.Path, "second", commit: true);
        Assert.Equal(["run.json"], folder.Files());
        Assert.Equal("second", File.ReadAllText(Path.Combine(folder.Path, "run.json")));
        Assert.False(Directory.Exists(folder.Path + ".old"));
    }

    [Fact]
    public void A_run_killed_between_the_two_moves_is_put_back()
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, "first", commit: true);
        Directory.Move(folder.Path, folder.Path + ".old");
        Write(folder.Path, "second", commit: false);
        Assert.Equal("first", File.ReadAllText(Path.Combine(folder.Path, "run.json")));
    }

    private static void Write(string path, string text, bool commit, string? extra = null)
    {
        using var output = new OutputFolder(path);
        output.Write("run.json", System.Text.Encoding.UTF8.GetBytes(text));
        if (extra is not null) output.Write(extra, []);
        if (commit) output.Commit();
    }
}
