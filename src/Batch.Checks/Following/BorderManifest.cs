using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Following;

/// <summary>How long before a border crossing the passenger manifest is sent.</summary>
internal sealed class BorderManifest : ICheck
{
    /// <inheritdoc/>
    public string Id => "ADM-03";

    /// <inheritdoc/>
    public string Title => "Manifest for the border";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Airports: country", "Legs: manifest sent"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["lead"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var (from, to) = (leg.Plan.From, leg.Plan.To);
        if (new[] { from, to }.FirstOrDefault(airport => airport.Country.Length == 0) is { } unknown)
        {
            return [ruling.NotChecked($"the country of {unknown.Ident} is not given, so whether the leg crosses a border is open", unknown.Origin.Cell(nameof(Airport.Country)))];
        }

        if (string.Equals(from.Country, to.Country, StringComparison.OrdinalIgnoreCase))
        {
            return [ruling.NotApplicable($"The leg stays in {from.Country}.")];
        }

        if (ruling.AmountOrNone("lead") is not { } lead)
        {
            return [ruling.NotApplicable($"The leg crosses the border from {from.Country} to {to.Country} without passengers.")];
        }

        var cell = leg.Cell(nameof(Leg.ManifestSent));
        var leaves = leg.Plan.Times.OffBlocks;
        if (leg.Plan.Leg.ManifestSent is not { } sent)
        {
            var due = leaves - Duration.FromMinutes(lead.Value);
            return [ruling.NotChecked($"the leg crosses the border from {from.Country} to {to.Country}, and when the manifest is sent is not given; it is due by {Words.LocalDay(due, from.Zone)}, {Words.Amount(lead.Value, "min")} before off blocks", cell)];
        }

        var before = (leaves - sent).TotalMinutes;
        var asked = ruling.AtLeast("The time from sending the manifest for the border to off blocks", before, lead.Value, "min", "required", lead, cell, leg.Cell(nameof(Leg.OffBlocks)));
        return asked.Verdict == Verdict.Pass && ruling.AmountOrNone("lead without haste") is { } calm && before < calm.Value - Ruling.Noise
            ? [asked, ruling.Trips(calm, $"The manifest for the border is sent {Words.Amount(before, "min")} before off blocks, less than the {Words.Amount(calm.Value, "min")} that leave time to mend it.", cell)]
            : [asked];
    }
}
