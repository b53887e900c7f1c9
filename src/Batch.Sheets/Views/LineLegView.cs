using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A leg on the time line.</summary>
internal sealed record LineLegView
{
    [Value("The leg")]
    public required BoardLegView Leg { get; init; }

    [Value("Where it begins [% of the line]")]
    public required double Place { get; init; }

    [Value("How wide it is [% of the line]; half an hour for a leg that was not planned")]
    public required double Width { get; init; }

    [Value("Its lane within the row, 0 for the first")]
    public required int Lane { get; init; }

    [Value("Whether its length is known; a leg that was not planned has none")]
    public required bool IsLengthKnown { get; init; }
}
