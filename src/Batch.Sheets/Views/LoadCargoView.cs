using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One piece of cargo on a load sheet.</summary>
internal sealed record LoadCargoView
{
    [Value("What it is, as in the book")]
    public required string What { get; init; }

    [Value("Weight")]
    public required Quantity Weight { get; init; }

    [Value("Where it goes; nothing where no station was left")]
    public required string Station { get; init; }

    public static LoadCargoView Of(LoadItem item) => new() { What = item.What, Weight = Quantity.Of(item.Weight), Station = item.Station };
}
