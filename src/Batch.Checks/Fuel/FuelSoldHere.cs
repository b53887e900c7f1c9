using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Whether what must be loaded here can be loaded here.</summary>
internal sealed class FuelSoldHere : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-09";

    /// <inheritdoc/>
    public string Title => "Fuel available at the departure";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Airports: fuel", "Legs: fuel aboard, of the first leg", "Notices"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var fuel = leg.Plan.Fuel;
        var from = leg.Plan.From;
        if (!fuel.IsBeforeKnown)
        {
            yield return ruling.NotChecked($"the fuel aboard before fuelling at {from.Ident} is not known, so the uplift is counted from empty tanks",
                leg.Cell(nameof(Leg.FuelAboard)));
        }
        else if (fuel.Before - fuel.Aboard > new Pounds(Ruling.Noise))
        {
            yield return ruling.Trips(
                $"{Words.Amount(fuel.Before - fuel.Aboard)} of fuel must come off: {Words.Amount(fuel.Before)} stand in the tanks and {Words.Amount(fuel.Aboard)} are planned.", FinalReserve.Cells(leg));
        }

        if (fuel.Uplift <= Pounds.Zero)
        {
            yield return ruling.Pass($"No fuel is loaded at {from.Ident}; {Words.Amount(fuel.Before)} are aboard.");
        }
        else if (leg.Week.Notices(from.Ident, leg.Plan.Times.OffBlocks).FirstOrDefault(notice => notice.Effect == NoticeEffect.NoFuel) is { } notice)
        {
            yield return ruling.Trips($"{Words.Amount(fuel.Uplift)} must be loaded at {from.Ident}, where a notice says that no fuel is sold.",
                notice.Origin.ToString(), leg.Cell(nameof(Leg.From)));
        }
        else if (fuel.IsSoldHere is not { } sold)
        {
            yield return ruling.NotChecked($"whether {from.Ident} sells fuel is not given, and {Words.Amount(fuel.Uplift)} must be loaded there",
                from.Origin.Cell(nameof(Airport.FuelsSold)));
        }
        else if (sold)
        {
            yield return ruling.Pass($"{Words.Amount(fuel.Uplift)} are loaded at {from.Ident}, which sells the fuel.", null,
                from.Origin.Cell(nameof(Airport.FuelsSold)));
        }
        else
        {
            yield return ruling.Trips(
                $"{Words.Amount(fuel.Uplift)} must be loaded at {from.Ident}, which does not sell this fuel; it must be carried from before.",
                from.Origin.Cell(nameof(Airport.FuelsSold)),
                leg.Cell(nameof(Leg.FuelPlan)));
        }
    }
}
