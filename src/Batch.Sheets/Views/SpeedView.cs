using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A named speed.</summary>
internal sealed record SpeedView
{
    [Value("Name as in the book")]
    public required string Name { get; init; }

    [Value("Calibrated airspeed")]
    public required Quantity Speed { get; init; }
}
