namespace Batch.Flight.Earth;

/// <summary>Whether the sun crosses the horizon in question on a day.</summary>
public enum SunState
{
    /// <summary>It rises or sets.</summary>
    Normal,

    /// <summary>It stays above all day.</summary>
    PolarDay,

    /// <summary>It stays below all day.</summary>
    PolarNight,
}
