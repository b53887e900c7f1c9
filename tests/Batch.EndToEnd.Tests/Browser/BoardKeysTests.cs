namespace Batch.EndToEnd.Tests.Browser;

/// <summary>The week board by keys alone.</summary>
public sealed class BoardKeysTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const string Focused = "document.activeElement.dataset.leg ?? document.activeElement.tagName";

    [SkippableFact]
    public async Task Arrows_go_through_the_legs_and_rows_and_enter_opens_the_sheet()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open();
        async Task<string> After(string key)
        {
            await board.Page.Keyboard.PressAsync(key);
            return await board.Ask<string>(Focused);
        }

        Assert.Equal("leg=T103/1", await After("ArrowRight"));
        Assert.Equal("leg=T103/2", await After("ArrowRight"));
        Assert.Equal("leg=T103/1", await After("ArrowLeft"));
        Assert.Equal("leg=T104/1", await After("ArrowDown"));
        Assert.Equal("leg=T103/1", await After("ArrowUp"));
        Assert.Equal("leg=T127/1", await After("End"));
        Assert.Equal("leg=T103/1", await After("Home"));
        Assert.Contains("T103/1", await board.Text("#detail h2"), StringComparison.Ordinal);
        await Task.WhenAll(board.Page.WaitForNavigationAsync(), board.Page.Keyboard.PressAsync("Enter"));
        Assert.EndsWith("/sheets/T103.html", board.Page.Url, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Arrows_pass_by_legs_that_are_filtered_out()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open("#state=fail");
        var seen = new List<string>();
        for (var press = 0; press < 20; press++)
        {
            await board.Page.Keyboard.PressAsync("ArrowRight");
            seen.Add(await board.Ask<string>("document.getElementById(document.activeElement.dataset.leg).dataset.state"));
        }

        Assert.All(seen, state => Assert.Equal("fail", state));
    }

    [SkippableFact]
    public async Task A_line_takes_one_stop_of_the_tab_key()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open();
        Assert.Equal(1, await board.Ask<int>("[...document.querySelectorAll('[data-line=aircraft] .bar')].filter(bar => bar.tabIndex === 0).length"));
        await board.Page.FocusAsync("[data-line=aircraft] .scroll");
        await board.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("leg=T103/1", await board.Ask<string>(Focused));
        Assert.Equal("solid", await board.Ask<string>("getComputedStyle(document.activeElement).outlineStyle"));
    }

    [SkippableFact]
    public async Task A_question_mark_explains_the_keys_and_escape_closes_step_by_step()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open("#state=fail");
        await board.Page.Keyboard.TypeAsync("?");
        Assert.Equal(1, await board.Seen("#help"));
        await board.Page.Keyboard.PressAsync("Escape");
        Assert.Equal(0, await board.Seen("#help"));
        await board.Page.Keyboard.PressAsync("ArrowRight");
        await board.Until("document.querySelector('#detail').checkVisibility()");
        Assert.Equal(1, await board.Seen("#detail"));
        await board.Page.Keyboard.PressAsync("Escape");
        await board.Until("!document.querySelector('#detail').checkVisibility()");
        Assert.Equal((0, "#state=fail"), (await board.Seen("#detail"), await board.Hash()));
        await board.Page.Keyboard.PressAsync("Escape");
        Assert.Equal("", await board.Hash());
    }

    [SkippableFact]
    public async Task Keys_change_rows_and_scale_but_not_while_typing()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open();
        var width = await board.Ask<double>("document.querySelector('.bar').getBoundingClientRect().width");
        await board.Page.Keyboard.PressAsync("+");
        await board.Page.Keyboard.PressAsync("+");
        Assert.True(await board.Ask<double>("document.querySelector('.bar').getBoundingClientRect().width") > width);
        await board.Page.Keyboard.PressAsync("v");
        Assert.Equal("crew", await board.Ask<string>("document.documentElement.dataset.view"));
        await board.Page.Keyboard.PressAsync("/");
        await board.Page.Keyboard.TypeAsync("v?");
        Assert.Equal(("v?", 0, "crew"), (await board.Ask<string>("document.activeElement.value"), await board.Seen("#help"),
            await board.Ask<string>("document.documentElement.dataset.view")));
    }
}
