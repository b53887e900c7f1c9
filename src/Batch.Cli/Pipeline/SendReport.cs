using Batch.Post;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>What became of the packets of a run.</summary>
/// <param name="Issues">What everybody was to be told, after <c>--only</c>.</param>
/// <param name="Deliveries">What became of the letters that were sent.</param>
/// <param name="Drafts">Paths of the drafts written, by person.</param>
/// <param name="Unfit">Why somebody could not be written to, by person; one sentence each.</param>
/// <param name="TemplateProblems">What is wrong in the templates; then nothing was sent.</param>
/// <param name="Age">How long ago the run was made.</param>
public sealed record SendReport(
    ImmutableArray<CrewIssue> Issues,
    ImmutableArray<Delivery> Deliveries,
    ImmutableSortedDictionary<string, string> Drafts,
    ImmutableSortedDictionary<string, string> Unfit,
    ImmutableArray<TemplateProblem> TemplateProblems,
    Duration Age);
