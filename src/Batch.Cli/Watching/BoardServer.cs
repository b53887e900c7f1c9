using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Threading.Channels;
using Batch.Sheets;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Batch.Cli.Watching;

/// <summary>
/// Serves the files of the last good run to a browser on this machine, and tells it when there are new ones. Loopback only, a port of the system's choice, an
/// address that cannot be guessed, GET and HEAD only; a request that names another host is refused (so that a page from elsewhere cannot reach it by a name of
/// its own); files come from memory by their exact name, never from a path.
/// </summary>
internal sealed class BoardServer : IAsyncDisposable
{
    private static readonly Dictionary<string, string> Types = new(StringComparer.OrdinalIgnoreCase)
    {
        [".html"] = "text/html; charset=utf-8",
        [".pdf"] = "application/pdf",
        [".csv"] = "text/csv; charset=utf-8",
        [".json"] = "application/json",
        [".ics"] = "text/calendar; charset=utf-8",
        [".xlsx"] = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    };

    private readonly byte[] _root = Encoding.ASCII.GetBytes("/" + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)) + "/");
    private readonly Lock _lock = new();
    private readonly List<Channel<int>> _listeners = [];
    private readonly WebApplication _web;
    private string[] _hosts = [];
    private volatile ServedRun _run = ServedRun.None;

    private BoardServer()
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, 0);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 0;
        });
        _web = builder.Build();
        _web.Run(Answer);
    }

    /// <summary>Where the board is.</summary>
    public string Address { get; private set; } = "";

    private string Root => Encoding.ASCII.GetString(_root);

    /// <summary>Starts serving.</summary>
    /// <param name="cancel">Gives up.</param>
    public static async Task<BoardServer> Start(CancellationToken cancel)
    {
        var server = new BoardServer();
        await server._web.StartAsync(cancel);
        var port = new Uri(server._web.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses.Single()
            ?? throw new InvalidOperationException("The server has no address.")).Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
        server._hosts = ["127.0.0.1:" + port, "localhost:" + port];
        server.Address = "http://" + server._hosts[0] + server.Root;
        return server;
    }

    /// <summary>Serves another run from now on and tells the pages that are open.</summary>
    /// <param name="run">The run.</param>
    public void Show(ServedRun run)
    {
        _run = run;
        lock (_lock)
        {
            foreach (var listener in _listeners) listener.Writer.TryWrite(run.Number);
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        lock (_lock)
        {
            foreach (var listener in _listeners) listener.Writer.TryComplete();
        }

        await _web.DisposeAsync();
    }

    private Task Answer(HttpContext context)
    {
        var (asked, answer) = (context.Request, context.Response);
        answer.Headers.CacheControl = "no-store";
        answer.Headers.XContentTypeOptions = "nosniff";
        answer.Headers.XFrameOptions = "DENY";
        answer.Headers["Referrer-Policy"] = "no-referrer";
        answer.Headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (!_hosts.Contains(asked.Host.Value, StringComparer.OrdinalIgnoreCase)) return Refuse(answer, StatusCodes.Status421MisdirectedRequest);
        var path = asked.Path.Value ?? "";
        if (path.Length < _root.Length || !CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(path).AsSpan(0, _root.Length), _root))
            return Refuse(answer, StatusCodes.Status404NotFound);
        if (!HttpMethods.IsGet(asked.Method) && !HttpMethods.IsHead(asked.Method)) return Refuse(answer, StatusCodes.Status405MethodNotAllowed);
        return path[_root.Length..] switch
        {
            LivePage.EventsName => Notices(context),
            LivePage.ScriptName => Send(context, Encoding.UTF8.GetBytes(LivePage.Script), "text/javascript; charset=utf-8"),
            "" => File(context, SheetPaths.Board),
            var name => File(context, name),
        };
    }

    private Task File(HttpContext context, string name)
    {
        var run = _run;
        var isPage = name.EndsWith(".html", StringComparison.OrdinalIgnoreCase);
        if (!run.Files.TryGetValue(name, out var content))
        {
            if (name != SheetPaths.Board) return Refuse(context.Response, StatusCodes.Status404NotFound);
            content = LivePage.NoBoard;
        }

        return Send(context, isPage ? LivePage.Of(content, run, Root) : content, Types.GetValueOrDefault(Path.GetExtension(name), "application/octet-stream"));
    }

    private static async Task Send(HttpContext context, byte[] content, string type)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength = content.Length;
        if (HttpMethods.IsGet(context.Request.Method)) await context.Response.Body.WriteAsync(content, context.RequestAborted);
    }

    /// <summary>The number of the run that is served, at once and after every change, as server-sent events.</summary>
    private async Task Notices(HttpContext context)
    {
        var listener = Channel.CreateUnbounded<int>();
        listener.Writer.TryWrite(_run.Number);
        lock (_lock) _listeners.Add(listener);
        try
        {
            context.Response.ContentType = "text/event-stream";
            await foreach (var number in listener.Reader.ReadAllAsync(context.RequestAborted))
            {
                await context.Response.WriteAsync(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"data: {number}\n\n"),
                    context.RequestAborted);
                await context.Response.Body.FlushAsync(context.RequestAborted);
            }
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            return; // the page was closed
        }
        finally
        {
            lock (_lock) _listeners.Remove(listener);
        }
    }

    private static Task Refuse(HttpResponse answer, int status)
    {
        answer.StatusCode = status;
        return Task.CompletedTask;
    }
}
