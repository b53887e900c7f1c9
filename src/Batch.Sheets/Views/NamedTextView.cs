using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A column of the user's own.</summary>
internal sealed record NamedTextView
{
    [Value("Header as written")]
    public required string Name { get; init; }

    [Value("Text as written")]
    public required string Text { get; init; }
}
