using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>Fuel of one kind to load in all.</summary>
internal sealed record FuelTotalView
{
    [Value("Name of the fuel")]
    public required string Kind { get; init; }

    [Value("Departures that load it")]
    public required int Departures { get; init; }

    [Value("Fuel to load in all")]
    public required Quantity Uplift { get; init; }

    [Value("Density of the fuel [lb/US gal], a bare number")]
    public required double? Density { get; init; }

    public static ImmutableArray<FuelTotalView> Of(IEnumerable<CheckedLeg> legs) =>
    [
        .. legs.Select(leg => leg.Plan).OfType<LegPlan.Planned>().Where(plan => plan.Fuel.Uplift > Pounds.Zero)
            .GroupBy(plan => (Kind: Words.Of(plan.Type.Fuel), plan.Type.FuelDensity))
            .OrderBy(group => group.Key.Kind, StringComparer.Ordinal).ThenBy(group => group.Key.FuelDensity)
            .Select(group => new FuelTotalView
            {
                Kind = group.Key.Kind,
                Departures = group.Count(),
                Uplift = Quantity.OfFuel(group.Aggregate(Pounds.Zero, (sum, plan) => sum + plan.Fuel.Uplift), group.Key.FuelDensity, RoundingWay.Up),
                Density = group.Key.FuelDensity,
            }),
    ];
}
