namespace Batch.Flight.Fleet;

/// <summary>How an aircraft type is powered; reserve and oxygen rules depend on it.</summary>
public enum EngineKind
{
    /// <summary>Reciprocating engine.</summary>
    Piston,

    /// <summary>Turbine driving a propeller.</summary>
    Turboprop,

    /// <summary>Turbojet or turbofan.</summary>
    Jet,
}
