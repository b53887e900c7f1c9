using System.Diagnostics;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Batch.Benchmarks;

/// <summary>A headless Chromium that stays open and prints pages by its DevTools protocol, on this machine only.</summary>
internal sealed class WarmBrowser : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly string _folder = Directory.CreateTempSubdirectory("browser-").FullName;
    private readonly Process _process;
    private readonly ClientWebSocket _socket = new();
    private int _id;

    public WarmBrowser()
    {
        var start = new ProcessStartInfo("chromium") { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true };
        foreach (var argument in new[] { "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
            "--disable-component-update", "--disable-sync",
            "--remote-debugging-port=0", "--remote-allow-origins=*", "--user-data-dir=" + _folder, "about:blank" }) start.ArgumentList.Add(argument);
        _process = Process.Start(start) ?? throw new InvalidOperationException("chromium did not start.");
        _process.ErrorDataReceived += (_, _) => { };
        _process.OutputDataReceived += (_, _) => { };
        _process.BeginErrorReadLine();
        _process.BeginOutputReadLine();
        _socket.ConnectAsync(Page(Port()), CancellationToken.None).Wait(Patience);
        Call("Page.enable", []);
    }

    /// <summary>Loads a document and prints it.</summary>
    public byte[] Print(string html)
    {
        var file = Path.Combine(_folder, "page.html");
        File.WriteAllText(file, html);
        Call("Page.navigate", new JsonObject { ["url"] = new Uri(file).AbsoluteUri }, "Page.loadEventFired");
        var printed = Call("Page.printToPDF", new JsonObject { ["preferCSSPageSize"] = true, ["printBackground"] = true });
        return Convert.FromBase64String(printed["data"]?.GetValue<string>() ?? "");
    }

    public void Dispose()
    {
        _socket.Dispose();
        _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private int Port()
    {
        var file = Path.Combine(_folder, "DevToolsActivePort");
        for (var clock = Stopwatch.StartNew(); clock.Elapsed < Patience; Thread.Sleep(50))
        {
            if (File.Exists(file) && File.ReadAllLines(file) is [var port, ..] && port.Length > 0)
                return int.Parse(port, System.Globalization.CultureInfo.InvariantCulture);
        }

        throw new TimeoutException("chromium opened no port.");
    }

    private static Uri Page(int port)
    {
        using var http = new HttpClient();
        var pages = JsonNode.Parse(http.GetStringAsync(new Uri(FormattableString.Invariant($"http://127.0.0.1:{port}/json/list"))).Result)?.AsArray() ?? [];
        return new Uri(pages.First(p => p?["type"]?.GetValue<string>() == "page")?["webSocketDebuggerUrl"]?.GetValue<string>() ?? "");
    }

    /// <summary>Sends a command and reads until its answer, and the event when one is named, have come.</summary>
    private JsonNode Call(string method, JsonObject parameters, string? until = null)
    {
        var id = ++_id;
        var command = new JsonObject { ["id"] = id, ["method"] = method, ["params"] = parameters }.ToJsonString();
        using var patience = new CancellationTokenSource(Patience);
        _socket.SendAsync(Encoding.UTF8.GetBytes(command), WebSocketMessageType.Text, endOfMessage: true, patience.Token).Wait();
        JsonNode? answer = null;
        while (answer is null || until is not null)
        {
            var message = JsonNode.Parse(Received(patience.Token)) ?? throw new JsonException("An empty message.");
            if (message["id"]?.GetValue<int>() == id) answer = message["result"] ?? throw new InvalidOperationException(message.ToJsonString());
            if (message["method"]?.GetValue<string>() == until) until = null;
        }

        return answer;
    }

    private string Received(CancellationToken patience)
    {
        using var text = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (var more = true; more;)
        {
            var part = _socket.ReceiveAsync(buffer, patience).Result;
            text.Write(buffer, 0, part.Count);
            more = !part.EndOfMessage;
        }

        return Encoding.UTF8.GetString(text.ToArray());
    }
}
