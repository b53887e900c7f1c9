using System.Diagnostics;
using System.Globalization;
using Batch.Cli.Pipeline;

namespace Batch.Cli.Commands;

/// <summary>
/// Progress on the error output: on a terminal one line that is drawn over, with count, rate and time left, and taken away at the end; elsewhere one plain line
/// when a stage is done.
/// </summary>
internal sealed class ProgressLines(Terminal terminal) : IProgress<RunProgress>, IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    private readonly Lock _lock = new();
    private readonly Stopwatch _stage = new();
    private TimeSpan _drawn;
    private string _name = "";
    private int _width;

    /// <summary>Shows progress while some work is done; the line is gone when it ends, however it ends.</summary>
    /// <typeparam name="T">What the work gives.</typeparam>
    /// <param name="terminal">Where it is shown.</param>
    /// <param name="work">The work, told where to report.</param>
    public static T During<T>(Terminal terminal, Func<IProgress<RunProgress>, T> work)
    {
        using var lines = new ProgressLines(terminal);
        return work(lines);
    }

    /// <inheritdoc/>
    public void Report(RunProgress value)
    {
        lock (_lock)
        {
            if (!string.Equals(value.Stage, _name, StringComparison.Ordinal))
            {
                _name = value.Stage;
                _stage.Restart();
                _drawn = -Pause;
            }

            var isDone = value.Total > 0 && value.Done >= value.Total;
            if (!terminal.HasLiveProgress)
            {
                if (isDone) terminal.Errors.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{value.Stage}: {value.Done} done"));
                return;
            }

            if (!isDone && _stage.Elapsed - _drawn < Pause) return;
            _drawn = _stage.Elapsed;
            var text = Text(value);
            terminal.Errors.Write("\r" + text.PadRight(_width));
            _width = text.Length;
        }
    }

    /// <summary>Takes the line away.</summary>
    public void Dispose()
    {
        lock (_lock)
        {
            if (_width > 0) terminal.Errors.Write("\r\u001b[K"); // ECMA-48: erase to the end of the line
            _width = 0;
        }
    }

    private string Text(RunProgress value)
    {
        const int Cells = 24;
        var filled = value.Total > 0 ? Cells * value.Done / value.Total : 0;
        var seconds = _stage.Elapsed.TotalSeconds;
        var rate = seconds > 0.2 && value.Done > 0 ? value.Done / seconds : 0;
        var left = rate > 0 ? string.Create(CultureInfo.InvariantCulture,
            $"  {rate.ToString(rate < 10 ? "0.0" : "0", CultureInfo.InvariantCulture)}/s  {(value.Total - value.Done) / rate:0} s left") : "";
        return string.Create(CultureInfo.InvariantCulture,
            $"{value.Stage,-9} [{new string('#', filled)}{new string('.', Cells - filled)}] {value.Done}/{value.Total}{left}");
    }
}
