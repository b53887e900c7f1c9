using System.Globalization;
using System.Net;
using System.Text;

namespace Batch.Cli.Watching;

/// <summary>
/// A page as it is served while a book is watched: with a script that reloads it after a run, and with what went wrong at its top. The files on disk have
/// neither.
/// </summary>
internal static class LivePage
{
    /// <summary>Name of the script below the address.</summary>
    public const string ScriptName = "live.js";

    /// <summary>Name of the stream of notices below the address.</summary>
    public const string EventsName = "live";

    /// <summary>Waits for notices; a notice of another run reloads the page, whatever it is scrolled to.</summary>
    public const string Script = """
        'use strict';
        {
          const me = document.currentScript, gone = 'The watch has ended; this is the last board it made.';
          const say = text => {
            let bar = document.getElementById('live-trouble');
            if (!text) { bar?.remove(); return; }
            if (!bar) {
              bar = document.createElement('p');
              bar.id = 'live-trouble';
              bar.setAttribute('role', 'alert');
              bar.style.cssText = 'position:sticky;top:0;z-index:30;margin:0 0 10px;padding:8px 12px;background:#b3261e;color:#ffffff;font-weight:600;white-space:pre-line';
              document.body.prepend(bar);
            }
            bar.textContent = text;
          };
          say(me.dataset.trouble);
          const events = new EventSource(me.dataset.events);
          events.onmessage = event => { if (event.data !== me.dataset.run) location.reload(); else say(me.dataset.trouble); };
          events.onerror = () => say(me.dataset.trouble || gone);
        }

        """;

    private const string Empty = "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><title>Week board</title></head><body><h1>Week board</h1><p>There is no board yet.</p></body></html>";

    /// <summary>The page to serve before the first good run.</summary>
    public static byte[] NoBoard { get; } = Encoding.UTF8.GetBytes(Empty);

    /// <summary>The page with the script; its own Content-Security-Policy, where it has one, is widened by just that.</summary>
    /// <param name="html">The page as written.</param>
    /// <param name="run">The run it is of.</param>
    /// <param name="root">The address below which everything is served, with slashes at both ends.</param>
    public static byte[] Of(byte[] html, ServedRun run, string root)
    {
        var tag = string.Create(CultureInfo.InvariantCulture,
            $"<script src=\"{root}{ScriptName}\" data-run=\"{run.Number}\" data-events=\"{root}{EventsName}\" data-trouble=\"{WebUtility.HtmlEncode(run.Trouble)}\"></script>");
        var page = Encoding.UTF8.GetString(html);
        var policy = page.IndexOf("http-equiv=\"Content-Security-Policy\"", StringComparison.Ordinal);
        var end = policy < 0 ? -1 : page.IndexOf('>', policy);
        if (end > 0)
            page = string.Concat(page.AsSpan(0, policy), page[policy..end].Replace("default-src 'none'", "default-src 'none'; connect-src 'self'",
                StringComparison.Ordinal).Replace("script-src ", "script-src 'self' ", StringComparison.Ordinal), page.AsSpan(end));
        var body = page.LastIndexOf("</body>", StringComparison.OrdinalIgnoreCase);
        return Encoding.UTF8.GetBytes(body < 0 ? page + tag : page.Insert(body, tag));
    }
}
