using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A state of loading held against an envelope.</summary>
internal sealed record EnvelopeTestView
{
    [Value("The state, such as takeoff, landing, zero fuel, during the flight")]
    public required string When { get; init; }

    [Value("Weight of the worst point")]
    public required Quantity Weight { get; init; }

    [Value("Centre of gravity of the worst point")]
    public required Quantity CentreOfGravity { get; init; }

    [Value("Forward limit at this weight; nothing outside the envelope's weights")]
    public required Quantity? Forward { get; init; }

    [Value("Aft limit at this weight")]
    public required Quantity? Aft { get; init; }

    [Value("Distance to the nearest edge in arm; negative outside; rounded down")]
    public required Quantity ArmMargin { get; init; }

    [Value("Weight that could be added at this arm; negative above the edge; rounded down")]
    public required Quantity WeightMargin { get; init; }

    [Value("Whether it lies inside or on the edge")]
    public required bool IsInside { get; init; }

    public static EnvelopeTestView Of(EnvelopeTest test) => new()
    {
        When = test.When,
        Weight = Quantity.Of(test.Point.Weight),
        CentreOfGravity = Quantity.Of(test.Point.Arm),
        Forward = Quantity.Of(test.ForwardLimit),
        Aft = Quantity.Of(test.AftLimit),
        ArmMargin = (Quantity.Of(test.ArmMargin) with { Rounding = RoundingWay.Down }).Signed(),
        WeightMargin = Quantity.Of(test.WeightMargin, RoundingWay.Down).Signed(),
        IsInside = test.IsInside,
    };
}
