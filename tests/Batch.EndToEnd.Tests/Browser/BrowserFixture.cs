using PuppeteerSharp;

namespace Batch.EndToEnd.Tests.Browser;

/// <summary>A headless Chromium of the system for a class of tests, which are skipped where it is missing.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private static readonly string? Path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
        .SelectMany(folder => new[] { "chromium", "chromium-browser", "google-chrome" }.Select(name => System.IO.Path.Combine(folder, name))).FirstOrDefault(File.Exists);

    private IBrowser? _browser;

    /// <summary>An empty page of a size; whatever the page complains of is gathered in <see cref="BoardPage.Complaints"/>.</summary>
    internal async Task<BoardPage> Page(int width, int height, bool hasScript = true)
    {
        Skip.If(Path is null, "chromium is not installed");
        _browser ??= await Puppeteer.LaunchAsync(new LaunchOptions
        {
            ExecutablePath = Path,
            Headless = true,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
        var context = await _browser.CreateBrowserContextAsync();
        var page = await context.NewPageAsync();
        await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = height, HasTouch = width < 500, IsMobile = width < 500 });
        await page.SetJavaScriptEnabledAsync(hasScript);
        return new BoardPage(page);
    }

    public Task InitializeAsync() => Task.CompletedTask;

    public async Task DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
    }
}
