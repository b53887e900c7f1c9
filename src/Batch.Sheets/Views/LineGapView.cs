using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The time on the ground between two legs of an aircraft.</summary>
internal sealed record LineGapView
{
    [Value("Where it begins [% of the line]")]
    public required double Place { get; init; }

    [Value("How wide it is [% of the line]")]
    public required double Width { get; init; }

    [Value("The time on the ground")]
    public required Elapsed Time { get; init; }

    [Value("Whether it is shorter than the operator's turnaround; no where the book says none")]
    public required bool IsShort { get; init; }
}
