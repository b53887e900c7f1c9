using System.Reflection;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>What the outputs say about the program.</summary>
public static class ProgramFacts
{
    /// <summary>Version of the program.</summary>
    public static string Version { get; } = typeof(ProgramFacts).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
        ?? "0";

    /// <summary>The facts of a run.</summary>
    /// <param name="madeAt">The instant printed as made at.</param>
    public static RunFacts At(Instant madeAt) => new() { MadeAt = madeAt, ToolVersion = Version };
}
