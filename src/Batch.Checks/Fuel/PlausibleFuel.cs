using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Fuel;

/// <summary>Whether the density that turns gallons into weight, and the aircraft's own burn, are such as occur.</summary>
internal sealed class PlausibleFuel : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-08";

    /// <inheritdoc/>
    public string Title => "Fuel figures plausible";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Types: fuel", "Types: fuel density", "Aircraft: fuel burn bias"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["difference of density", "difference of burn"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return Density(leg, ruling);
        var most = ruling.Amount("difference of burn");
        yield return ruling.AtMost(
            $"The fuel burn bias of {leg.Aircraft.Registration}",
            Math.Abs(leg.Aircraft.BurnBias) * 100,
            most.Value,
            "%",
            "plausible range",
            most,
            leg.Aircraft.Origin.Cell(nameof(Aircraft.BurnBias)));
    }

    private static Finding Density(LegUnderCheck leg, Ruling ruling)
    {
        var cell = leg.TypeCell(nameof(AircraftType.FuelDensity));
        if (leg.Type.Fuel is not { } fuel)
        {
            return ruling.NotChecked($"the fuel of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.Fuel)));
        }

        if (leg.Type.FuelDensity is not { } density)
        {
            return ruling.NotChecked($"the fuel density of {leg.Type.Name} is not given", cell);
        }

        var name = fuel switch
        {
            FuelKind.JetA1 => "Jet A-1",
            FuelKind.Avgas => "Avgas",
        };
        var usual = ruling.Amount("usual density of " + name);
        var most = ruling.Amount("difference of density");
        return ruling.AtMost(
            $"The difference of the {name} density of {leg.Type.Name} ({Words.Amount(density, "lb/USG")}) from the usual {Words.Amount(usual.Value, "lb/USG")}",
            Math.Abs((density / usual.Value) - 1) * 100,
            most.Value,
            "%",
            "plausible range",
            most,
            cell);
    }
}
