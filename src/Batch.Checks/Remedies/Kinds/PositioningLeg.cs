using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>
/// A leg without passengers that brings the aircraft from where it stands to where the leg starts; it adds a row, so that it is said in words only.
/// </summary>
internal sealed class PositioningLeg : IRemedyKind
{
    private static readonly Duration UsualTurnaround = Duration.FromMinutes(45);
    private static readonly Duration Rounding = Duration.FromMinutes(5);

    /// <inheritdoc/>
    public int Disruption => Disruptions.People;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("CREW-11");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check, looksAlone: false);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var leg = failure.Leg;
        var before = failure.Ground.Aircraft(leg.Aircraft).Select(other => other.Plan).OfType<LegPlan.Planned>()
            .Where(plan => plan.Leg.OffBlocks < leg.OffBlocks).MaxBy(plan => plan.Leg.OffBlocks);
        var stands = before?.To.Ident ?? failure.Plan.Aircraft.Home;
        if (stands.Length == 0 || string.Equals(stands, leg.From, StringComparison.OrdinalIgnoreCase)) yield break;

        // The alternate of a short hop is the place it comes from.
        foreach (var alternate in new[] { stands, leg.Alternate, leg.To }.Where(ident => ident.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase))
        {
            if (Edit(failure, stands, alternate, before?.Times.OnBlocks) is { } edit) yield return edit;
        }
    }

    private static WeekEdit? Edit(Failure failure, string stands, string alternate, Instant? freeFrom)
    {
        var leg = failure.Leg;
        if (!failure.Ground.Input.Airports.TryGetValue(stands, out var from)) return null;
        var added = leg with
        {
            Key = new LegKey($"{leg.Key.Trip} positioning", 1),
            Purpose = LegPurpose.Ferry,
            From = stands,
            To = leg.From,
            Alternate = alternate,
            SecondAlternate = "",
            Route = "",
            BackupRoute = "",
            Level = null,
            IsLevelAuto = true,
            FuelPlan = new FuelPlan.Minimum(Pounds.Zero),
            FuelAboard = null,
            DepartureRunway = "",
            ArrivalRunway = "",
        };
        if (failure.Ground.Guard(added, () => failure.Ground.Planner.PlanAlone(added, failure.Plan.Fuel)) is not LegPlan.Planned flown) return null;

        var turnaround = failure.Ground.Input.Operator.Turnaround ?? UsualTurnaround;
        var latest = leg.OffBlocks - turnaround - (flown.Times.OnBlocks - flown.Leg.OffBlocks) - Rounding;
        var off = latest - Duration.FromTicks(latest.ToUnixTimeTicks() % Rounding.BclCompatibleTicks);
        if (freeFrom is { } free && off < free + turnaround) return null;
        var local = off.InZone(from.Zone).LocalDateTime;
        added = added with { OffBlocks = off, OffBlocksLocal = local };
        var day = local.Date == leg.OffBlocksLocal.Date ? "" : $" on {Typed.Date(local.Date)}";
        return new WeekEdit($"Add a leg {stands}-{leg.From} before it, purpose ferry, with the same crew, off blocks {Typed.Time(local.TimeOfDay)}{day} at {stands}, direct, alternate {alternate}, with minimum fuel",
            Disruptions.People)
        { Added = [added], IsWritable = false };
    }
}
