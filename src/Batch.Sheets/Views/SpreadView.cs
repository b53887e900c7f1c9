using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>How far the centre of gravity at takeoff may lie from the sheet's if passengers sit elsewhere.</summary>
internal sealed record SpreadView
{
    [Value("Centre of gravity at takeoff with the passengers as far forward as the seats allow")]
    public required Quantity Forward { get; init; }

    [Value("Centre of gravity at takeoff with the passengers as far aft as the seats allow")]
    public required Quantity Aft { get; init; }

    [Value("Whether any envelope was there to test it against")]
    public required bool IsTested { get; init; }

    [Value("Whether every seating stays inside the envelopes at takeoff, on landing and without fuel")]
    public required bool StaysInside { get; init; }

    public static SpreadView? Of(LoadSpread? spread) => spread is null ? null : new SpreadView
    {
        Forward = Quantity.Of(spread.Forward.Takeoff.CentreOfGravity),
        Aft = Quantity.Of(spread.Aft.Takeoff.CentreOfGravity),
        IsTested = !spread.Forward.Tests.IsEmpty,
        StaysInside = spread.StaysInside,
    };
}
