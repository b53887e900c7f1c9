namespace Batch.Flight.Fleet;

/// <summary>The category an aircraft type is certificated in; landing rules depend on it (14 CFR 135.385, 135.397, 135.398).</summary>
public enum CertificationCategory
{
    /// <summary>Normal, utility or acrobatic category.</summary>
    Normal,

    /// <summary>Commuter category.</summary>
    Commuter,

    /// <summary>Transport category, large or small.</summary>
    Transport,
}
