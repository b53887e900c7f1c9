namespace Batch.Sheets.Templates;

/// <summary>Stops a rendering because an included partial is missing or does not parse.</summary>
/// <param name="problems">What is wrong in it.</param>
internal sealed class PartialBroken(IReadOnlyList<TemplateProblem> problems) : Exception(problems[0].ToString())
{
    public IReadOnlyList<TemplateProblem> Problems { get; } = problems;
}
