namespace Batch.Flight.Fleet;

/// <summary>The fuels an airport sells and a type burns.</summary>
public enum FuelKind
{
    /// <summary>Jet A-1 (kerosene).</summary>
    JetA1,

    /// <summary>Aviation gasoline.</summary>
    Avgas,
}
