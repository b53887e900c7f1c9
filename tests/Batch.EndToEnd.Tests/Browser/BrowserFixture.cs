using System.Globalization;
using System.Text.Json;
using Batch.Testing;
using PuppeteerSharp;

namespace Batch.EndToEnd.Tests.Browser;

/// <summary>A headless Chromium of the system for a class of tests, which are skipped where it is missing.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private static readonly string? Path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
        .SelectMany(folder => new[] { "chromium", "chromium-browser", "google-chrome" }.Select(name => System.IO.Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists);

    private static readonly (string Trip, string State)[] Sample = ReadSample();

    private IBrowser? _browser;

    /// <summary>Legs of the sample.</summary>
    internal static int Legs => Sample.Length;

    /// <summary>What the board says while every leg is shown.</summary>
    internal static string AllLegs => string.Create(CultureInfo.InvariantCulture, $"All {Legs} legs");

    /// <summary>Trips of the sample.</summary>
    internal static int Trips => Sample.Select(leg => leg.Trip).Distinct(StringComparer.Ordinal).Count();

    /// <summary>Legs of the sample that have a place on the time line.</summary>
    internal static int Planned => Sample.Count(leg => leg.State != "unplanned");

    /// <summary>An empty page of a size; whatever the page complains of is gathered in <see cref="BoardPage.Complaints"/>.</summary>
    internal async Task<BoardPage> Page(int width, int height, bool hasScript = true)
    {
        Skip.If(Path is null, "chromium is not installed");
        _browser ??= await Puppeteer.LaunchAsync(new LaunchOptions
        {
            ExecutablePath = Path,
            Headless = true,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
                "--disable-sync"],
        });
        var context = await _browser.CreateBrowserContextAsync();
        var page = await context.NewPageAsync();
        await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = height, HasTouch = width < 500, IsMobile = width < 500 });
        await page.SetJavaScriptEnabledAsync(hasScript);
        return new BoardPage(page);
    }

    private static (string Trip, string State)[] ReadSample()
    {
        using var run = JsonDocument.Parse(File.ReadAllBytes(RepositoryRoot.PathOf("output-samples", "run.json")));
        return [.. run.RootElement.Legs().Select(leg => (leg.GetProperty("trip").GetString() ?? "", leg.State()))];
    }

    public Task InitializeAsync() => Task.CompletedTask;

    public async Task DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
    }
}
