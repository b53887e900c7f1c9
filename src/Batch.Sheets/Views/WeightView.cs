using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One line of the weights.</summary>
internal sealed record WeightView
{
    private const double Noise = 1e-6; // lb: rounding of the computation

    [Value("Which weight, such as Takeoff")]
    public required string What { get; init; }

    [Value("Whether it is a sum with a limit, not an item that is added")]
    public required bool IsSum { get; init; }

    [Value("The weight")]
    public required Quantity Weight { get; init; }

    [Value("Its limit; nothing where the book gives none")]
    public Quantity? Limit { get; init; }

    [Value("Limit less weight; negative when over")]
    public Quantity? Margin { get; init; }

    [Value("Centre of gravity; nothing where moments are not known")]
    public Quantity? CentreOfGravity { get; init; }

    [Value("Forward limit of the centre of gravity at this weight")]
    public Quantity? Forward { get; init; }

    [Value("Aft limit of the centre of gravity at this weight")]
    public Quantity? Aft { get; init; }

    public static ImmutableArray<WeightView> Of(LegPlan.Planned plan)
    {
        var load = plan.Load;
        var type = plan.Type;
        return
        [
            Item("Basic empty", load.BasicEmpty.Weight) with { CentreOfGravity = load.HasMoments ? Quantity.Of(load.BasicEmpty.CentreOfGravity) : null },
            Item("Occupants", load.OccupantWeight),
            Item("Bags and cargo", load.Baggage),
            Sum("Zero fuel", "zero fuel", load.ZeroFuel, type.MaximumZeroFuel, load),
            Item("Block fuel", plan.Fuel.Aboard) with { Weight = FuelView.Printed(plan).Aboard },
            Sum("Ramp", "ramp", load.Ramp, type.MaximumRamp, load),
            Item("Less taxi fuel", -plan.Fuel.Taxi),
            Sum("Takeoff", "takeoff", load.Takeoff, type.MaximumTakeoff, load),
            Item("Less trip fuel", -plan.Fuel.Trip),
            Sum("Landing", "landing", load.Landing, type.MaximumLanding, load),
        ];
    }

    /// <summary>Ramp, takeoff or landing weight, printed wherever it stands as it is beside its limit.</summary>
    /// <param name="weight">The weight.</param>
    /// <param name="limit">Its limit; null where the book gives none.</param>
    public static Quantity Printed(Pounds weight, Pounds? limit) =>
        limit is { } most ? Quantity.Trio(Quantity.Of(most), Quantity.Of(weight), isLeast: false).Actual : Quantity.Of(weight);

    /// <summary>Payload that can still be added, printed as the margin of the weight that binds it; null where no limit is known.</summary>
    /// <param name="plan">The leg.</param>
    public static Quantity? Spare(LegPlan.Planned plan) => plan.PayloadSpare is { } spare
        ? Of(plan).Select(line => line.Margin).FirstOrDefault(margin => margin is not null && Math.Abs(margin.Value - spare.Value) < Noise)
            ?? Quantity.Of(spare, RoundingWay.Down).Signed()
        : null;

    private static WeightView Item(string what, Pounds weight) => new() { What = what, IsSum = false, Weight = Quantity.Of(weight) };

    private static WeightView Sum(string what, string when, WeightAndBalance state, Pounds? limit, LoadSheet load)
    {
        var test = load.Tests.FirstOrDefault(candidate => string.Equals(candidate.When, when, StringComparison.OrdinalIgnoreCase));
        var held = limit is { } most
            ? Quantity.Trio(Quantity.Of(most), Quantity.Of(state.Weight), isLeast: false)
            : ((Quantity Limit, Quantity Actual, Quantity Margin)?)null;
        return new WeightView
        {
            What = what,
            IsSum = true,
            Weight = Printed(state.Weight, limit),
            Limit = held?.Limit,
            Margin = held?.Margin,
            CentreOfGravity = load.HasMoments ? Quantity.Of(state.CentreOfGravity) : null,
            Forward = Quantity.Of(test?.ForwardLimit),
            Aft = Quantity.Of(test?.AftLimit),
        };
    }
}
