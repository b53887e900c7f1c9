namespace Batch.SampleMaker.Week;

/// <summary>Writes down a trip leg by leg; aircraft and crew are those of the trip unless a leg says otherwise.</summary>
public sealed class TripDraft(string name, LocalDate date, string aircraft, string captain, string secondPilot = "")
{
    private readonly List<OneLeg> _legs = [];
    private readonly List<Party> _parties = [];
    private readonly List<Freight> _freight = [];

    /// <summary>Adds a leg; off blocks as <c>hh:mm</c> local.</summary>
    public TripDraft Leg(string from, string to, string off, Func<OneLeg, OneLeg>? with = null)
    {
        var leg = new OneLeg
        {
            Trip = name,
            Number = _legs.Count + 1,
            Date = date,
            Off = NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(off).Value,
            Aircraft = aircraft,
            From = from,
            To = to,
            Captain = captain,
            SecondPilot = secondPilot,
        };
        _legs.Add(with is null ? leg : with(leg));
        return this;
    }

    /// <summary>Adds passengers.</summary>
    public TripDraft Carries(string legs, string people, int? bagsLb = null)
    {
        _parties.Add(new Party(legs, people, bagsLb));
        return this;
    }

    /// <summary>Adds cargo.</summary>
    public TripDraft Loads(string legs, string what, int weightLb, string station = "", string notes = "")
    {
        _freight.Add(new Freight(legs, what, weightLb, station, notes));
        return this;
    }

    /// <summary>The trip.</summary>
    public OneTrip Done() => new() { Name = name, Legs = [.. _legs], Parties = [.. _parties], Freight = [.. _freight] };
}
