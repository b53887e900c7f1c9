using System.Diagnostics;
using System.Text;

namespace Batch.Post.Tests;

/// <summary>Debian's own Python, with what its packages install.</summary>
internal static class PythonReader
{
    private const string Program = "/usr/bin/python3";

    public static bool IsInstalled { get; } = File.Exists(Program) && Start("import icalendar", []).Status == 0;

    /// <summary>What a script prints that reads some bytes.</summary>
    public static string Run(string script, byte[] input)
    {
        var (status, output, errors) = Start(script, input);
        Assert.True(status == 0, errors);
        return output;
    }

    private static (int Status, string Output, string Errors) Start(string script, byte[] input)
    {
        var start = new ProcessStartInfo(Program)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(script);
        start.Environment["PYTHONIOENCODING"] = "utf-8";
        using var process = Process.Start(start) ?? throw new InvalidOperationException("Python does not start.");
        var errors = process.StandardError.ReadToEndAsync();
        process.StandardInput.BaseStream.Write(input);
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, errors.GetAwaiter().GetResult());
    }
}
