namespace Batch.Flight.Route;

/// <summary>In which direction an airway may be flown from one of its fixes to the next.</summary>
public enum AirwayDirection
{
    /// <summary>Either way.</summary>
    Both,

    /// <summary>Only in rising sequence.</summary>
    Forward,

    /// <summary>Only in falling sequence.</summary>
    Backward,
}
