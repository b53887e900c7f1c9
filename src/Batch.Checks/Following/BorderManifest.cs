using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Following;

/// <summary>How long before a border crossing the manifests of the passengers and of the crew are sent.</summary>
internal sealed class BorderManifest : ICheck
{
    /// <inheritdoc/>
    public string Id => "ADM-03";

    /// <inheritdoc/>
    public string Title => "Manifest for the border";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Airports: country", "Legs: manifest sent", "Legs: crew manifest sent, on a leg for hire"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["lead", "lead of the crew manifest"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var (from, to) = (leg.Plan.From, leg.Plan.To);
        if (new[] { from, to }.FirstOrDefault(airport => airport.Country.Length == 0) is { } unknown)
        {
            return [ruling.NotChecked($"the country of {unknown.Ident} is not given, so whether the leg crosses a border is open",
                unknown.Origin.Cell(nameof(Airport.Country)))];
        }

        if (string.Equals(from.Country, to.Country, StringComparison.OrdinalIgnoreCase))
        {
            return [ruling.NotApplicable($"The leg stays in {from.Country}.")];
        }

        return [.. Passengers(leg, ruling), .. Crew(leg, ruling)];
    }

    private static IEnumerable<Finding> Passengers(LegUnderCheck leg, Ruling ruling)
    {
        var (from, to) = (leg.Plan.From, leg.Plan.To);
        if (ruling.AmountOrNone("lead") is not { } lead)
        {
            return [ruling.NotApplicable($"The leg crosses the border from {from.Country} to {to.Country} without passengers.")];
        }

        var cell = leg.Cell(nameof(Leg.ManifestSent));
        if (leg.Plan.Leg.ManifestSent is not { } sent)
        {
            return [NotSent(leg, ruling, "manifest", lead, cell)];
        }

        var before = (leg.Plan.Times.OffBlocks - sent).TotalMinutes;
        var asked = Sent(leg, ruling, "manifest", sent, lead, cell);
        return asked.Verdict == Verdict.Pass && ruling.AmountOrNone("lead without haste") is { } calm && before < calm.Value - Ruling.Noise
            ? [asked, ruling.Trips(calm, $"The manifest for the border is sent {Words.Amount(before, "min")} before off blocks, less than the {Words.Amount(calm.Value, "min")} that leave time to mend it.", cell)]
            : [asked];
    }

    private static IEnumerable<Finding> Crew(LegUnderCheck leg, Ruling ruling)
    {
        if (ruling.AmountOrNone("lead of the crew manifest") is not { } lead)
        {
            return [];
        }

        var cell = leg.Cell(nameof(Leg.CrewManifestSent));
        return leg.Plan.Leg.CrewManifestSent is { } sent
            ? [Sent(leg, ruling, "crew manifest", sent, lead, cell)]
            : [NotSent(leg, ruling, "crew manifest", lead, cell)];
    }

    private static Finding Sent(LegUnderCheck leg, Ruling ruling, string what, Instant sent, RuleAmount lead, string cell)
    {
        var before = (leg.Plan.Times.OffBlocks - sent).TotalMinutes;
        var cells = new[] { cell, leg.Cell(nameof(Leg.OffBlocks)) };
        var asked = ruling.AtLeast($"The time from sending the {what} for the border to off blocks", before, lead.Value, "min", "required", lead, cells);
        return before >= 0 || asked.Verdict == Verdict.Pass
            ? asked
            : ruling.Trips(lead,
                $"The {what} for the border is sent {Words.Amount(-before, "min")} after off blocks; {Words.Amount(lead.Value, "min")} before off blocks are required.",
                cells) with
            { Required = asked.Required, Actual = asked.Actual, Margin = asked.Margin, Unit = asked.Unit };
    }

    private static Finding NotSent(LegUnderCheck leg, Ruling ruling, string what, RuleAmount lead, string cell)
    {
        var (from, to) = (leg.Plan.From, leg.Plan.To);
        return ruling.NotChecked(
            lead,
            $"the leg crosses the border from {from.Country} to {to.Country}, and when the {what} is sent is not given; it is due by {Words.LocalDay(leg.Plan.Times.OffBlocks - Duration.FromMinutes(lead.Value), from.Zone)}, {Words.Amount(lead.Value, "min")} before off blocks",
            cell);
    }
}
