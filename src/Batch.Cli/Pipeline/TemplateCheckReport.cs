using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>What a trial of templates came to.</summary>
/// <param name="Problems">What is wrong or not honoured on paper, by file and line, each once.</param>
/// <param name="Unused">The user's own templates that no sheet used.</param>
/// <param name="NotReached">Lines of the user's own templates that no sheet came to.</param>
/// <param name="IsStopped">Whether a sheet stopped at a problem, so that what comes after it was not seen.</param>
/// <param name="Sheets">How many sheets were rendered.</param>
public sealed record TemplateCheckReport(ImmutableArray<TemplateProblem> Problems, ImmutableArray<string> Unused,
    ImmutableArray<(string File, ImmutableArray<int> Lines)> NotReached, bool IsStopped, int Sheets);
