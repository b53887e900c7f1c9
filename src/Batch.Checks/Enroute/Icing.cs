using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Enroute;

/// <summary>Temperatures in which cloud may bring ice, against the protection of the aircraft.</summary>
internal sealed class Icing : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-06";

    /// <inheritdoc/>
    public string Title => "Icing";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Aircraft: icing protection", "Winds: temperature on the way"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return Answer(leg, ruling);
    }

    private static Finding Answer(LegUnderCheck leg, Ruling ruling)
    {
        if (ruling.AmountOrNone("icing from") is null)
        {
            return ruling.NotApplicable("Under VFR only icing that is known, and frost, ice or snow on the aircraft, keep the leg on the ground; the book holds neither.");
        }

        var from = ruling.Amount("icing from").Value;
        var to = ruling.Amount("icing to").Value;
        var isKnown = leg.Plan.Profile.Slices.All(slice => !slice.Air.TemperatureAssumed);
        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.IcingProtection));
        if (leg.Aircraft.IcingProtection == true)
        {
            return ruling.Pass($"{leg.Aircraft.Registration} is protected for light and moderate icing.", null, cell);
        }

        var cold = leg.Plan.Profile.Slices.Any(slice => slice.Air.Temperature.Value >= from && slice.Air.Temperature.Value <= to);
        return cold
            ? leg.Aircraft.IcingProtection is null
                ? ruling.NotChecked(
                    $"the leg flies in temperatures in which cloud may bring ice, and whether {leg.Aircraft.Registration} is protected is not given", cell)
                : ruling.Trips($"The leg flies under IFR in temperatures between {Words.Amount(from, "°C")} and {Words.Amount(to, "°C")}, in which cloud may bring ice, and {leg.Aircraft.Registration} is not protected.", cell, leg.Cell(nameof(Leg.Level)))
            : !isKnown
                ? ruling.NotChecked("the temperature is not known all the way, so icing cannot be judged", cell)
                : ruling.Pass("No part of the leg flies in temperatures in which cloud brings ice.");
    }
}
