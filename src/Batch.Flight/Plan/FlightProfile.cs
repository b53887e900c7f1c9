namespace Batch.Flight.Plan;

/// <summary>A route flown from takeoff to landing, step by step, at one level or at levels that the route text steps up to.</summary>
public sealed record FlightProfile
{
    /// <summary>First cruise level as altitude [ft].</summary>
    public required Feet Level { get; init; }

    /// <summary>The highest cruise level: <see cref="Level"/>, or a higher one that the flight steps up to on the way [ft].</summary>
    public Feet Highest => new(Slices.Where(slice => slice.Phase == FlightPhase.Cruise).Select(slice => slice.EndFt).Append(Level.Value).Max());

    /// <summary>Cruise setting.</summary>
    public required string Setting { get; init; }

    /// <summary>Weight at takeoff.</summary>
    public required Pounds TakeoffWeight { get; init; }

    /// <summary>The steps in order.</summary>
    public required ImmutableArray<ProfileSlice> Slices { get; init; }

    /// <summary>Top of climb.</summary>
    public required ProfilePoint TopOfClimb { get; init; }

    /// <summary>Top of descent.</summary>
    public required ProfilePoint TopOfDescent { get; init; }

    /// <summary>Distance over the ground.</summary>
    public required NauticalMiles Distance { get; init; }

    /// <summary>Distance through the air.</summary>
    public required NauticalMiles AirDistance { get; init; }

    /// <summary>Takeoff to landing.</summary>
    public required Duration Time { get; init; }

    /// <summary>Fuel from takeoff to landing, the aircraft's burn bias included.</summary>
    public required Pounds TripFuel { get; init; }

    /// <summary>Fuel flow of this setting at this level at the weight at the end of cruise, bias included; the basis of a reserve at normal cruise.</summary>
    public required PoundsPerHour CruiseFlow { get; init; }

    /// <summary>Values taken at a table's edge, as sentences; empty when every query lay inside the tables.</summary>
    public ImmutableArray<string> TableEdges { get; init; } = [];

    /// <summary>What was decided on the way, as sentences: a level asked for by the route that was not flown.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
