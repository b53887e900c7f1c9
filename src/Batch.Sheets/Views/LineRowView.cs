using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One row of the time line: an aircraft or a pilot.</summary>
internal sealed record LineRowView
{
    [Value("Registration, or code of the pilot; nothing where the book names none")]
    public required string Name { get; init; }

    [Value("Name of the type, or base of the pilot")]
    public required string Detail { get; init; }

    [Value("How many lanes its legs need: 1, or more where some overlap")]
    public required int Lanes { get; init; }

    [Value("The nights where the aircraft or pilot is")]
    public required ImmutableArray<LineBandView> Nights { get; init; }

    [Value("The duties of a pilot, report to release")]
    public required ImmutableArray<LineDutyView> Duties { get; init; }

    [Value("The legs, in order of time")]
    public required ImmutableArray<LineLegView> Legs { get; init; }

    [Value("The time on the ground between two legs of an aircraft")]
    public required ImmutableArray<LineGapView> Gaps { get; init; }
}
