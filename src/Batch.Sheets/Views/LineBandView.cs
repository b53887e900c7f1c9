using Batch.Sheets.Board;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A stretch of the time line, such as a night.</summary>
internal sealed record LineBandView
{
    [Value("Where it begins [% of the line]")]
    public required double Place { get; init; }

    [Value("How wide it is [% of the line]")]
    public required double Width { get; init; }

    public static LineBandView Of(Stretch stretch, Instant from, Instant to) => new() { Place = stretch.PlaceOf(from), Width = stretch.WidthOf(from, to) };
}
