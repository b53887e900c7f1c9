using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Airframe;

/// <summary>Whether the VOR receivers were checked recently enough for a leg under IFR that may navigate by them.</summary>
internal sealed class VorCheck : ICheck
{
    /// <inheritdoc/>
    public string Id => "ACFT-05";

    /// <inheritdoc/>
    public string Title => "VOR check";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Aircraft: VOR checked on", "Types: equipment"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["days", "days, with satellite navigation"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        // Item 10a of a flight plan: S holds VOR, O is VOR, G is satellite navigation. A type whose equipment is not given counts as with VOR and without
        // satellites, the stricter.
        var equipment = leg.Type.Equipment.Split('/')[0];
        if (equipment.Length > 0
            && !equipment.Contains('S', StringComparison.OrdinalIgnoreCase)
            && !equipment.Contains('O', StringComparison.OrdinalIgnoreCase))
        {
            yield return ruling.NotApplicable($"The equipment of {leg.Type.Name} has no VOR.");
            yield break;
        }

        if (leg.Operator.VorCheck == "approved procedure" && ruling.Condition("approved procedure") is { } procedure)
        {
            yield return ruling.Pass("The VOR receivers are kept by an approved procedure, by the Operator sheet; no check of 30 days is asked for.", procedure,
                leg.Operator.Cells.GetValueOrDefault("VOR check", ""));
            yield break;
        }

        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.VorCheckedOn));
        if (leg.Aircraft.VorCheckedOn is not { } last)
        {
            yield return ruling.NotChecked(
                $"when the VOR receivers of {leg.Aircraft.Registration} were last checked is not given; the leg is not flown by VOR before that", cell);
            yield break;
        }

        var hasSatellites = equipment.Contains('G', StringComparison.OrdinalIgnoreCase);
        var days = ruling.Amount(hasSatellites ? "days, with satellite navigation" : "days");
        var ago = Period.DaysBetween(last, leg.EndDate);
        // Dated after the day of off blocks it is still to be made, even where the leg ends on that day.
        yield return last > leg.Plan.Times.OffBlocks.InZone(leg.Plan.From.Zone).Date
            ? ruling.NotChecked($"the VOR check of {leg.Aircraft.Registration} is dated {Words.Day(last)}, after the departure of this leg", cell,
                leg.Cell(nameof(Leg.OffBlocks)))
            : ruling.AtMostSaid(
                $"The VOR receivers of {leg.Aircraft.Registration} were checked on {Words.Day(last)}, {Words.Count(ago, "day", "days")} before the day of this leg; the limit is {Words.Amount(days.Value, "days")}."
                    + (ago > days.Value
                        ? hasSatellites
                            ? " Until they are checked and logged the leg is flown by satellite navigation alone."
                            : " They are checked and logged before the leg."
                        : ""),
                ago,
                days.Value,
                "days",
                days,
                cell);
    }
}
