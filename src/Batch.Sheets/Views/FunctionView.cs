using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One function on the page that lists them.</summary>
internal sealed record FunctionView
{
    [Value("Name")]
    public required string Name { get; init; }

    [Value("Parameters after the value")]
    public required string Parameters { get; init; }

    [Value("What it does")]
    public required string Text { get; init; }
}
