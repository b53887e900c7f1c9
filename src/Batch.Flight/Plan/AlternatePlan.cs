namespace Batch.Flight.Plan;

/// <summary>The flight from the destination to an alternate.</summary>
public sealed record AlternatePlan
{
    /// <summary>Ident of the alternate.</summary>
    public required string Airport { get; init; }

    /// <summary>Distance, direct.</summary>
    public required NauticalMiles Distance { get; init; }

    /// <summary>Level.</summary>
    public required Feet Level { get; init; }

    /// <summary>Time from the decision at the destination, the missed approach included.</summary>
    public required Duration Time { get; init; }

    /// <summary>Fuel, the missed approach included.</summary>
    public required Pounds Fuel { get; init; }

    /// <summary>Magnetic course at the destination.</summary>
    public required MagneticDegrees MagneticCourse { get; init; }

    /// <summary>Whether this alternate's fuel is the one in the ladder.</summary>
    public required bool IsFarthest { get; init; }
}
