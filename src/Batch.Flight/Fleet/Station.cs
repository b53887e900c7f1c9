namespace Batch.Flight.Fleet;

/// <summary>A place where load is put, at one arm: a seat row, a baggage compartment, the pilot seats.</summary>
public sealed record Station
{
    /// <summary>Name as the loading documents call it.</summary>
    public required string Name { get; init; }

    /// <summary>What it holds.</summary>
    public required StationKind Kind { get; init; }

    /// <summary>Arm of the load put here [in] aft of the datum.</summary>
    public required Inches Arm { get; init; }

    /// <summary>Number of seats here; 0 for a baggage station.</summary>
    public int Seats { get; init; }

    /// <summary>Greatest weight allowed here; null where the book gives none.</summary>
    public Pounds? Maximum { get; init; }

    /// <summary>Order in which persons or bags without a named place fill the stations, low first; null: after the numbered ones, in book order.</summary>
    public int? FillOrder { get; init; }

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
