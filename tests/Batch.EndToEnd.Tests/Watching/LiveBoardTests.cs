using Batch.EndToEnd.Tests.Browser;

namespace Batch.EndToEnd.Tests.Watching;

/// <summary>The watched board, open in a browser while the book is saved.</summary>
public sealed class LiveBoardTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [SkippableFact]
    public async Task An_open_board_reloads_itself_keeps_its_filter_and_says_when_the_book_is_broken()
    {
        await using var board = await browser.Page(1440, 900);
        using var folder = new TemporaryFolder();
        SampleRun.Run("new", folder.Path);
        var week = Path.Combine(folder.Path, "week.xlsx");
        var good = File.ReadAllBytes(week);
        using var program = new WatchedProgram(folder.Path, "--out", Path.Combine(folder.Path, "out"), "--no-pdf");
        program.Line("legs:");
        await board.Page.GoToAsync(program.Address.AbsoluteUri + "#q=xone");
        Assert.Equal("All 2 legs", await board.Text("#shown"));

        File.WriteAllBytes(week, good[..1000]);
        await board.Page.WaitForSelectorAsync("#live-trouble");
        Assert.Contains("This is the last good board.", await board.Text("#live-trouble"), StringComparison.Ordinal);
        Assert.Equal(("xone", "All 2 legs"), (await board.Ask<string>("document.querySelector('#q').value"), await board.Text("#shown")));

        File.WriteAllBytes(week, good);
        await board.Page.WaitForFunctionAsync("() => !document.querySelector('#live-trouble')");
        Assert.Equal("xone", await board.Ask<string>("document.querySelector('#q').value"));
        Assert.DoesNotContain(board.Complaints, complaint => !complaint.StartsWith("asked for " + program.Address.AbsoluteUri, StringComparison.Ordinal));
    }
}
