using System.Diagnostics;
using System.Globalization;
using Batch.Cli.Pipeline;

namespace Batch.Cli.Commands;

/// <summary>
/// Progress on the error output: a line that is drawn over on a terminal, with count, rate and time left; elsewhere one plain line when a stage is done.
/// </summary>
internal sealed class ProgressLines(Terminal terminal) : IProgress<RunProgress>
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    private readonly Lock _lock = new();
    private readonly Stopwatch _stage = new();
    private TimeSpan _drawn;
    private string _name = "";
    private int _width;

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
            if (isDone)
            {
                terminal.Errors.WriteLine();
                _width = 0;
            }
        }
    }

    private string Text(RunProgress value)
    {
        const int Cells = 24;
        var filled = value.Total > 0 ? Cells * value.Done / value.Total : 0;
        var seconds = _stage.Elapsed.TotalSeconds;
        var rate = seconds > 0.2 && value.Done > 0 ? value.Done / seconds : 0;
        var left = rate > 0 ? string.Create(CultureInfo.InvariantCulture, $"  {rate:0}/s  {(value.Total - value.Done) / rate:0} s left") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{value.Stage,-9} [{new string('#', filled)}{new string('.', Cells - filled)}] {value.Done}/{value.Total}{left}");
    }
}
