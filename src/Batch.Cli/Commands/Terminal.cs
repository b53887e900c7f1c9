namespace Batch.Cli.Commands;

/// <summary>Where a command writes.</summary>
/// <param name="output">Receives answers.</param>
/// <param name="errors">Receives complaints and progress.</param>
public sealed class Terminal(TextWriter output, TextWriter errors)
{
    /// <summary>Receives answers.</summary>
    public TextWriter Output { get; } = output;

    /// <summary>Receives complaints and progress.</summary>
    public TextWriter Errors { get; } = errors;

    /// <summary>Whether colour may be used: answers go to a terminal and NO_COLOR is not set.</summary>
    public bool HasColour { get; } = ReferenceEquals(output, Console.Out) && !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));

    /// <summary>Whether a moving progress line may be drawn.</summary>
    public bool HasLiveProgress { get; } = ReferenceEquals(errors, Console.Error) && !Console.IsErrorRedirected;
}
