using Batch.Flight.Plan;

namespace Batch.Checks.Remedies;

/// <summary>
/// What a search for remedies looked at in the week: aircraft, pilots and trips, by name, and whether the days of all legs. While none of them has changed the
/// search would find the same again.
/// </summary>
internal sealed class Footprint
{
    private readonly HashSet<string> _aircraft = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _pilots = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _trips = new(StringComparer.OrdinalIgnoreCase);
    private bool _days;

    /// <summary>Notes an aircraft.</summary>
    /// <param name="registration">Registration.</param>
    public void Aircraft(string registration) => _aircraft.Add(registration);

    /// <summary>Notes a pilot.</summary>
    /// <param name="code">Code.</param>
    public void Pilot(string code) => _pilots.Add(code);

    /// <summary>Notes a trip.</summary>
    /// <param name="trip">Name.</param>
    public void Trip(string trip) => _trips.Add(trip);

    /// <summary>Notes the days of all legs.</summary>
    public void Days() => _days = true;

    /// <summary>Notes a leg with its aircraft and pilots.</summary>
    /// <param name="plan">The leg.</param>
    public void Leg(LegPlan plan)
    {
        Trip(plan.Key.Trip);
        Aircraft(Who.Aircraft(plan));
        foreach (var code in Who.Pilots(plan)) Pilot(code);
    }

    /// <summary>Whether two have something in common.</summary>
    /// <param name="other">The other.</param>
    public bool Meets(Footprint other) =>
        (_days && other._days) || _aircraft.Overlaps(other._aircraft) || _pilots.Overlaps(other._pilots) || _trips.Overlaps(other._trips);
}
