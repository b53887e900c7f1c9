using Batch.Testing;
using PuppeteerSharp;

namespace Batch.EndToEnd.Tests.Browser;

/// <summary>The week board of the sample in a browser.</summary>
internal sealed class BoardPage : IAsyncDisposable
{
    private readonly List<string> _complaints = [];

    public BoardPage(IPage page)
    {
        Page = page;
        page.Console += (_, line) => _complaints.Add(line.Message.Text);
        page.PageError += (_, error) => _complaints.Add(error.Message);
        page.Request += (_, asked) =>
        {
            if (!asked.Request.Url.StartsWith("file:", StringComparison.Ordinal) && !asked.Request.Url.StartsWith("data:", StringComparison.Ordinal))
                _complaints.Add("asked for " + asked.Request.Url);
        };
    }

    public IPage Page { get; }

    /// <summary>What the console said, errors of the script, and whatever was asked of a network.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Opens the board of the output samples.</summary>
    /// <param name="hash">What follows the address, such as <c>#leg=T106/1</c>.</param>
    public Task Open(string hash = "") => Page.GoToAsync(new Uri(RepositoryRoot.PathOf("output-samples", "index.html")).AbsoluteUri + hash);

    public Task<T> Ask<T>(string script) => Page.EvaluateExpressionAsync<T>(script);

    /// <summary>Waits until something holds: a change of the address is told to the page a moment later.</summary>
    /// <param name="condition">An expression of the page.</param>
    public Task Until(string condition) => Page.WaitForExpressionAsync(condition);

    /// <summary>How many elements of a kind can be seen.</summary>
    public Task<int> Seen(string selector) =>
        Ask<int>($"[...document.querySelectorAll('{selector}')].filter(one => one.checkVisibility() && !one.classList.contains('off')).length");

    /// <summary>The text of the first element of a kind, as seen.</summary>
    public Task<string> Text(string selector) => Ask<string>($"document.querySelector('{selector}').innerText.trim()");

    public Task<string> Hash() => Ask<string>("location.hash");

    public async ValueTask DisposeAsync()
    {
        await Page.BrowserContext.CloseAsync();
    }
}
