using System.Diagnostics;

namespace Batch.Paper.Tests.Oracle;

/// <summary>Runs a program of the system; tests that need one are skipped where it is missing.</summary>
internal static class ExternalTool
{
    public static string? Find(params string[] names) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(folder => names.Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists);

    /// <summary>Exit code and what the program printed on both outputs.</summary>
    public static (int Code, string Output) Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        using var process = Process.Start(start) ?? throw new InvalidOperationException(program + " did not start");
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        if (!process.WaitForExit(TimeSpan.FromMinutes(3)))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException(program + " did not end");
        }

        return (process.ExitCode, output + error.Result);
    }

    /// <summary>A new folder that is removed afterwards.</summary>
    public static void InFolder(Action<string> use)
    {
        var folder = Directory.CreateTempSubdirectory("paper");
        try
        {
            use(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
