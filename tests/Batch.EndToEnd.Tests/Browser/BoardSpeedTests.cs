using System.Globalization;
using Batch.SampleMaker;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.Week;
using Xunit.Abstractions;

namespace Batch.EndToEnd.Tests.Browser;

/// <summary>
/// The board of a large random week: it stays whole, and how long it takes is printed. BOARD_LEGS=500 gives the figures of the README; no time is asserted,
/// machines differ.
/// </summary>
public sealed class BoardSpeedTests(BrowserFixture browser, ITestOutputHelper output) : IClassFixture<BrowserFixture>
{
    private const string Measured = """
        (async () => {
          const frame = () => new Promise(done => requestAnimationFrame(() => setTimeout(done, 0)));
          const timed = async act => { await frame(); const start = performance.now(); act(); await frame(); return Math.round(performance.now() - start); };
          const click = selector => timed(() => document.querySelector(selector).click());
          const search = document.querySelector('#q');
          const gaps = [];
          const times = { 'loaded': Math.round(performance.getEntriesByType('navigation')[0].loadEventEnd), 'one state': await click('.toggle'), 'all again': await click('#clear'),
            'search': await timed(() => { search.value = 'xbel'; search.dispatchEvent(new Event('input')); }), 'cleared': await click('#clear'), 'crew rows': await click('[data-view=crew]') };
          for (let step = 0, last = performance.now(); step < 120; step++) { scrollTo(0, step * 120); const now = await new Promise(requestAnimationFrame); gaps.push(now - last); last = now; }
          gaps.sort((a, b) => a - b);
          times['a frame while scrolling, median'] = Math.round(gaps[60]);
          times['a frame while scrolling, one in twenty longer'] = Math.round(gaps[114]);
          return Object.entries(times).map(([what, ms]) => `${what}: ${ms} ms`).join('\n');
        })()
        """;

    [SkippableFact]
    public async Task A_large_week_is_shown_whole()
    {
        await using var board = await browser.Page(1440, 900);
        var count = int.Parse(Environment.GetEnvironmentVariable("BOARD_LEGS") ?? "40", CultureInfo.InvariantCulture);
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path);
        var week = RandomWeek.Of(count, 7);
        WorkbookWriter.Write(Sample.OperatorBook(week.Fleet, week.Pilots, new LocalDate(2026, 11, 16)), Path.Combine(folder.Path, "operator.xlsx"));
        WorkbookWriter.Write(Sample.WeekBook(week.Trips, "A random week."), Path.Combine(folder.Path, "week.xlsx"));
        var into = Path.Combine(folder.Path, "out");
        SampleRun.Run("run", folder.Path, "--no-pdf", "--out", into, "--made-at", SampleRun.MadeAt);
        await board.Page.GoToAsync(new Uri(Path.Combine(into, "index.html")).AbsoluteUri);
        Assert.Equal("All " + count.ToString(CultureInfo.InvariantCulture) + " legs", await board.Text("#shown"));
        Assert.Equal(count, await board.Seen("[data-line=aircraft] .bar"));
        output.WriteLine(await board.Ask<string>(Measured));
        Assert.Empty(board.Complaints);
    }
}
