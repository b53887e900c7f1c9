using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The same leg with the same fuel at another level or on the backup route.</summary>
internal sealed record OptionView
{
    [Value("Level")]
    public required Quantity Level { get; init; }

    [Value("Route text; nothing for direct")]
    public required string Route { get; init; }

    [Value("Whether this is the plan itself")]
    public required bool IsPlan { get; init; }

    [Value("Whether it is on the backup route")]
    public required bool IsBackupRoute { get; init; }

    [Value("Takeoff to landing")]
    public required Elapsed Time { get; init; }

    [Value("Time more than the plan; negative for less")]
    public required Elapsed TimeMore { get; init; }

    [Value("Trip fuel")]
    public required Quantity Trip { get; init; }

    [Value("Fuel on landing")]
    public required Quantity Landing { get; init; }

    [Value("Landing fuel beyond what must be left; negative when short")]
    public required Quantity Margin { get; init; }

    [Value("Headwind in cruise, mean over time; negative for a tailwind")]
    public required Quantity Headwind { get; init; }

    [Value("State")]
    public required StateView State { get; init; }

    [Value("Why it does not work")]
    public required string Why { get; init; }

    public static ImmutableArray<OptionView> Of(LegPlan.Planned plan) => [.. plan.Options.Select(option => new OptionView
    {
        Level = Quantity.Of(option.Level),
        Route = option.Route,
        IsPlan = option.IsPlan,
        IsBackupRoute = option.IsBackupRoute,
        Time = new Elapsed(option.Time),
        TimeMore = new Elapsed(option.Time - plan.Profile.Time),
        Trip = Quantity.OfFuel(option.Trip, plan.Type.FuelDensity, RoundingWay.Up),
        Landing = Quantity.OfFuel(option.Landing, plan.Type.FuelDensity, RoundingWay.Down),
        Margin = Quantity.Trio(
            Quantity.OfFuel(plan.Fuel.Aboard - option.Margin, plan.Type.FuelDensity),
            Quantity.OfFuel(plan.Fuel.Aboard, plan.Type.FuelDensity),
            isLeast: true).Margin,
        Headwind = Quantity.Of(option.CruiseHeadwind).Signed(),
        State = StateView.OfOption(option.State),
        Why = option.Why,
    })];
}
