using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>What a run wrote.</summary>
/// <param name="Week">The week as written, after <c>--only</c>, <c>--from</c> and <c>--to</c>.</param>
/// <param name="Sheets">Paths of the trip sheets, load sheets and packets in the folder, without their endings.</param>
/// <param name="TemplateProblems">What is wrong in templates; each costs its sheets.</param>
/// <param name="PaperNotes">What the paper engine did not honour, each once.</param>
/// <param name="BookNotes">What could not be kept or marked in the checked workbooks.</param>
/// <param name="Post">What the crews are to be told.</param>
public sealed record RunReport(
    WeekResult Week, ImmutableArray<string> Sheets, ImmutableArray<TemplateProblem> TemplateProblems, ImmutableArray<string> PaperNotes,
    ImmutableArray<string> BookNotes, WeekPost Post)
{
    /// <summary>The files, by path inside the output folder.</summary>
    public required ImmutableDictionary<string, byte[]> Files { get; init; }

    /// <summary>
    /// What should stand in the folder and does not, such as <c>packets/RIM</c>, for a template or a fault of the program that is named elsewhere in the
    /// report; empty for a whole run.
    /// </summary>
    public required ImmutableArray<string> NotWritten { get; init; }
}
