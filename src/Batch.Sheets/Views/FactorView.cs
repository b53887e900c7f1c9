using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A correction of a runway distance.</summary>
internal sealed record FactorView
{
    [Value("What for")]
    public required string Name { get; init; }

    [Value("Factor on the distance, a bare number")]
    public required double Factor { get; init; }
}
