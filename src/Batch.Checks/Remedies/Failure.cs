using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies;

/// <summary>A failed check of a planned leg, with what stands around it.</summary>
/// <param name="Plan">The plan of the leg.</param>
/// <param name="Finding">What failed.</param>
/// <param name="Ground">The week.</param>
internal sealed record Failure(LegPlan.Planned Plan, Finding Finding, RemedyGround Ground)
{
    /// <summary>Check id.</summary>
    public string Check => Finding.Check;

    /// <summary>The leg as read.</summary>
    public Leg Leg => Plan.Leg;

    /// <summary>Passengers of the leg.</summary>
    public IEnumerable<ManifestLine> Manifest =>
        Ground.Input.Manifest.Where(line => line.Legs.Contains(Leg.Key.Number) && string.Equals(line.Trip, Leg.Key.Trip, StringComparison.OrdinalIgnoreCase));

    /// <summary>Cargo of the leg.</summary>
    public IEnumerable<CargoLine> Cargo =>
        Ground.Input.Cargo.Where(line => line.Legs.Contains(Leg.Key.Number) && string.Equals(line.Trip, Leg.Key.Trip, StringComparison.OrdinalIgnoreCase));

    /// <summary>The legs of the trip that the same aircraft flies, this one included, in order of time.</summary>
    public IEnumerable<Leg> Trip => Ground.Aircraft(Leg.Aircraft)
        .Select(leg => leg.Plan).OfType<LegPlan.Planned>().Select(plan => plan.Leg)
        .Where(leg => string.Equals(leg.Key.Trip, Leg.Key.Trip, StringComparison.OrdinalIgnoreCase))
        .OrderBy(leg => leg.OffBlocks);

    /// <summary>Whether the check is one of some.</summary>
    /// <param name="checks">Ids, or their beginnings such as <c>FUEL-</c>.</param>
    public bool IsOneOf(params ReadOnlySpan<string> checks)
    {
        foreach (var check in checks)
        {
            if (Check.StartsWith(check, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
