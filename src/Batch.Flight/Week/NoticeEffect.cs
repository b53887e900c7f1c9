namespace Batch.Flight.Week;

/// <summary>What a notice does.</summary>
public enum NoticeEffect
{
    /// <summary>Information only.</summary>
    Other,

    /// <summary>The subject is closed.</summary>
    Closed,

    /// <summary>A runway is closed.</summary>
    RunwayClosed,

    /// <summary>No fuel is sold.</summary>
    NoFuel,

    /// <summary>The lights are out.</summary>
    NoLights,
}
