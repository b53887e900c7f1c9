using System.Diagnostics;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary>The sample week, run once for all tests of the class with a fixed made-at time.</summary>
public sealed class SampleRun : IDisposable
{
    /// <summary>The instant that the sample's outputs carry.</summary>
    public const string MadeAt = "2026-12-03T15:00:00Z";

    public SampleRun()
    {
        Folder = Path.Combine(Path.GetTempPath(), "tripbatch-test-" + Path.GetRandomFileName());
        (Status, Output, Errors) = Run("run", RepositoryRoot.PathOf("input-samples"), "--out", Folder, "--made-at", MadeAt);
    }

    public string Folder { get; }

    public int Status { get; }

    public string Output { get; }

    public string Errors { get; }

    public byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(Folder, name));

    public string Text(string name) => File.ReadAllText(Path.Combine(Folder, name));

    /// <summary>Runs a command line: inside the test, or, where the variable PROGRAM names a published program, that.</summary>
    public static (int Status, string Output, string Errors) Run(params string[] args)
    {
        if (Environment.GetEnvironmentVariable("PROGRAM") is { Length: > 0 } program) return Published(program, args);
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var status = Cli.Program.Run(args, output, errors);
        return (status, output.ToString(), errors.ToString());
    }

    private static (int Status, string Output, string Errors) Published(string program, string[] args)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, args) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw new InvalidOperationException(program);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, errors.Result);
    }

    public void Dispose()
    {
        if (Directory.Exists(Folder)) Directory.Delete(Folder, recursive: true);
    }
}
