namespace Batch.Flight.Fleet;

/// <summary>Runway surface, as far as the distances depend on it.</summary>
public enum RunwaySurface
{
    /// <summary>Asphalt, concrete or another hard surface.</summary>
    Paved,

    /// <summary>Grass.</summary>
    Grass,

    /// <summary>Gravel or another unpaved surface.</summary>
    Gravel,
}
