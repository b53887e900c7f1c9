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
    public bool HasColour { get; } = ReferenceEquals(output, Console.Out)
        && !Console.IsOutputRedirected
        && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));

    /// <summary>Whether a moving progress line may be drawn.</summary>
    public bool HasLiveProgress { get; } = ReferenceEquals(errors, Console.Error) && !Console.IsErrorRedirected;

    /// <summary>Lines of the window that answers go to; null where they go elsewhere.</summary>
    public int? Rows { get; } = IsWindow(output) && Console.WindowHeight is > 0 and var rows ? rows : null;

    /// <summary>Columns of that window; null where answers go elsewhere.</summary>
    public int? Columns { get; } = IsWindow(output) && Console.WindowWidth is > 0 and var columns ? columns : null;

    /// <summary>Writes a sentence that may be longer than the window is wide, broken between words.</summary>
    /// <param name="text">The sentence.</param>
    public void WriteSentence(string text)
    {
        for (var rest = text; ;)
        {
            var end = Columns is { } columns && rest.Length >= columns ? rest.LastIndexOf(' ', columns - 1) : -1;
            Output.WriteLine(end > 0 ? rest[..end] : rest);
            if (end <= 0) return;
            rest = rest[(end + 1)..];
        }
    }

    private static bool IsWindow(TextWriter output) => ReferenceEquals(output, Console.Out) && !Console.IsOutputRedirected;
}
