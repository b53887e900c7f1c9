using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace Batch.EndToEnd.Tests.Watching;

/// <summary>The real program, watching.</summary>
internal sealed class WatchedProgram : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    private readonly BlockingCollection<string> _lines = [];
    private readonly Process _process;

    public WatchedProgram(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])[Path.Combine(AppContext.BaseDirectory, "tripbatch.dll"), "watch", .. arguments]) start.ArgumentList.Add(argument);
        _process = Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
        _process.OutputDataReceived += (_, said) => Add(said.Data);
        _process.ErrorDataReceived += (_, said) => Add(said.Data);
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        var first = Line("Board: ");
        Address = new Uri(first.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1]);
    }

    /// <summary>
    /// Whether Ctrl-C can reach it: not from Windows by a signal, nor where this process was told to ignore interrupts (as shells tell what they start in the
    /// background), which its children inherit.
    /// </summary>
    public static bool CanBeInterrupted { get; } = OperatingSystem.IsLinux() && (IgnoredSignals() & 2) == 0; // SIGINT is signal 2, bit 1 of the mask

    /// <summary>Where it says that the board is.</summary>
    public Uri Address { get; }

    /// <summary>The next line that it prints with a certain text in it; what comes before is passed over.</summary>
    public string Line(string text)
    {
        var seen = new List<string>();
        while (_lines.TryTake(out var line, Patience))
        {
            if (line.Contains(text, StringComparison.Ordinal)) return line;
            seen.Add(line);
        }

        throw new TimeoutException($"'{text}' did not come; the program said: {string.Join(" | ", seen)}");
    }

    /// <summary>Whether it has said nothing more.</summary>
    public bool IsQuiet(TimeSpan time) => !_lines.TryTake(out _, time);

    /// <summary>Presses Ctrl-C, or asks it to end in another way.</summary>
    /// <param name="signal">Name of the signal, <c>INT</c> for Ctrl-C.</param>
    /// <returns>Exit status and how long it took to end.</returns>
    public (int Status, TimeSpan Took) Interrupt(string signal)
    {
        var clock = Stopwatch.StartNew();
        using var kill = Process.Start("kill", ["-" + signal, _process.Id.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
        if (!_process.WaitForExit(Patience)) throw new TimeoutException("The program did not end.");
        return (_process.ExitCode, clock.Elapsed);
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
            _process.WaitForExit();
        }

        _process.Dispose();
        _lines.Dispose();
    }

    private void Add(string? line)
    {
        if (line is not null) _lines.Add(line);
    }

    private static ulong IgnoredSignals() =>
        ulong.Parse(File.ReadLines("/proc/self/status").First(line => line.StartsWith("SigIgn:", StringComparison.Ordinal))["SigIgn:".Length..].Trim(),
            NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
