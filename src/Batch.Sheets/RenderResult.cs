namespace Batch.Sheets;

/// <summary>A rendered sheet, or what is wrong in its template.</summary>
public sealed record RenderResult
{
    /// <summary>The page, or the text of a template that ends in <c>.txt</c>; empty when <see cref="Problems"/> is not.</summary>
    public required string Html { get; init; }

    /// <summary>What is wrong in the template; empty for a page that was rendered.</summary>
    public ImmutableArray<TemplateProblem> Problems { get; init; } = [];

    /// <summary>Whether there is a page.</summary>
    public bool IsRendered => Problems.IsEmpty;
}
