using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The values of one template.</summary>
internal sealed record ValueGroupView
{
    [Value("Name of the template")]
    public required string Template { get; init; }

    [Value("Its values")]
    public required ImmutableArray<ValueView> Values { get; init; }
}
