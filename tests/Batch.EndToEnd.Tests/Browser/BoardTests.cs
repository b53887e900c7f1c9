using System.Text.RegularExpressions;

namespace Batch.EndToEnd.Tests.Browser;

/// <summary>The week board of the sample, clicked through and typed at in a browser, as large as a desk's and a phone's.</summary>
public sealed partial class BoardTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    public static TheoryData<int, int> Sizes => new() { { 1440, 900 }, { 390, 844 } };

    [SkippableTheory]
    [MemberData(nameof(Sizes))]
    public async Task It_opens_without_a_complaint_and_asks_nothing_of_a_network(int width, int height)
    {
        await using var board = await browser.Page(width, height);
        await board.Open();
        Assert.Empty(board.Complaints);
        Assert.Equal(BrowserFixture.AllLegs, await board.Text("#shown"));
        Assert.Equal(BrowserFixture.Planned, await board.Seen("[data-line=aircraft] .bar"));
        Assert.Equal(0, await board.Seen("[data-line=crew] .bar"));
        Assert.Equal(0, await board.Ask<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
    }

    [SkippableTheory]
    [MemberData(nameof(Sizes))]
    public async Task A_state_is_chosen_by_a_click(int width, int height)
    {
        await using var board = await browser.Page(width, height);
        await board.Open();
        await board.Page.ClickAsync("[data-state=fail]");
        var fails = Number(await board.Text("#shown"));
        Assert.Equal((fails, fails), (await board.Seen("table.legs tr[id]"), await board.Seen("[data-line=aircraft] .bar")));
        Assert.Equal(fails, await board.Seen("table.legs tr[data-state=fail]"));
        Assert.Equal(0, await board.Seen(".finding[data-leg=\"leg=T119/1\"]"));
        Assert.Equal("#state=fail", await board.Hash());
        await board.Page.ClickAsync("[data-state=unplanned]");
        Assert.Equal(fails + 1, Number(await board.Text("#shown")));
        await board.Page.ClickAsync("#clear");
        Assert.Equal(BrowserFixture.AllLegs, await board.Text("#shown"));
    }

    [SkippableFact]
    public async Task Aircraft_person_day_and_check_are_chosen_together()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open();
        await board.Page.SelectAsync("#aircraft", "Q-TOB");
        await board.Page.SelectAsync("#person", "KAI");
        Assert.Equal(["Q-TOB"],
            await board.Ask<string[]>("[...new Set([...document.querySelectorAll('table.legs tr[id]:not([hidden])')].map(row => row.dataset.aircraft))]"));
        Assert.Equal(1, await board.Seen("[data-line=aircraft] .row"));
        await board.Page.ClickAsync("#clear");
        await board.Page.SelectAsync("#day", "2026-12-12");
        await board.Page.SelectAsync("#check", "FUEL-06");
        Assert.Equal("#day=2026-12-12&check=FUEL-06", await board.Hash());
        Assert.Equal(await board.Seen(".finding"), await board.Seen(".finding[data-check=FUEL-06]"));
        Assert.InRange(await board.Seen("table.legs tr[id]"), 1, 5);
    }

    [SkippableFact]
    public async Task Words_are_searched_in_trips_airports_crew_and_findings()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open();
        await board.Page.Keyboard.PressAsync("/");
        await board.Page.Keyboard.TypeAsync("xgra landing distance");
        Assert.Equal("T119/1 T125/1",
            await board.Ask<string>("[...document.querySelectorAll('table.legs tr[id]:not([hidden])')].map(row => row.dataset.key).join(' ')"));
        await board.Page.Keyboard.PressAsync("Escape");
        Assert.Equal(BrowserFixture.AllLegs, await board.Text("#shown"));
    }

    [SkippableTheory]
    [MemberData(nameof(Sizes))]
    public async Task A_link_to_a_leg_opens_it_with_its_findings_and_remedies(int width, int height)
    {
        await using var board = await browser.Page(width, height);
        await board.Open("#leg=T106/1");
        Assert.Contains("T106/1", await board.Text("#detail h2"), StringComparison.Ordinal);
        Assert.Contains("week.xlsx/Legs/H15", await board.Text("#detail .remedies"), StringComparison.Ordinal);
        Assert.Equal(1, await board.Seen(".bar[aria-current]"));
        Assert.Equal(0, await board.Ask<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
        await board.Page.ClickAsync("#detail button");
        Assert.Equal((0, ""), (await board.Seen("#detail"), await board.Hash()));
    }

    [SkippableFact]
    public async Task A_link_keeps_filters_and_rows()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open("#leg=T106/1&view=crew&state=fail,caution&q=xfen");
        Assert.Equal(("xfen", "2"), (await board.Ask<string>("document.querySelector('#q').value"),
            await board.Ask<string>("String(document.querySelectorAll('.toggle[aria-pressed=true]').length)")));
        Assert.Equal(0, await board.Seen("[data-line=aircraft] .bar"));
        Assert.True(await board.Seen("[data-line=crew] .bar") > 0);
        await board.Page.ReloadAsync();
        Assert.Equal("#leg=T106/1&view=crew&state=fail,caution&q=xfen", await board.Hash());
        Assert.Equal("xfen", await board.Ask<string>("document.querySelector('#q').value"));
    }

    [SkippableFact]
    public async Task A_part_of_the_page_can_still_be_linked_to()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open("#margins");
        Assert.Equal("#margins", await board.Hash());
        Assert.InRange(await board.Ask<double>("document.querySelector('#margins').getBoundingClientRect().top"), 0, 200);
        await board.Page.ClickAsync("nav a[href='#legs']");
        Assert.Equal("#legs", await board.Hash());
        Assert.Equal(BrowserFixture.AllLegs, await board.Text("#shown"));
    }

    [SkippableTheory]
    [MemberData(nameof(Sizes))]
    public async Task The_crew_rows_show_duty_and_rest(int width, int height)
    {
        await using var board = await browser.Page(width, height);
        await board.Open();
        await board.Page.ClickAsync("[data-view=crew]");
        Assert.Equal(0, await board.Seen("[data-line=aircraft] .bar"));
        Assert.Equal(10, await board.Seen("[data-line=crew] .row") + 1);
        Assert.True(await board.Seen(".duty") > 20);
        Assert.Contains("rest 13:25", await board.Ask<string>("document.querySelector('[data-line=crew]').textContent"), StringComparison.Ordinal);
        Assert.Equal("#view=crew", await board.Hash());
    }

    [SkippableFact]
    public async Task Every_link_to_a_sheet_leads_to_a_file()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open();
        var links = await board.Ask<string[]>(
            "[...new Set([...document.querySelectorAll('a.sheet, a.pdf')].map(link => decodeURI(new URL(link.href).pathname)))]");
        Assert.Equal(2 * BrowserFixture.Trips, links.Length);
        Assert.All(links, link => Assert.True(File.Exists(link), link));
    }

    private static int Number(string text) => int.Parse(Digits().Match(text).Value, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\d+", RegexOptions.None, 1000)]
    private static partial Regex Digits();
}
