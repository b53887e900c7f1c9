namespace Batch.Flight.Air.Bulletins;

/// <summary>What a pasted bulletin is.</summary>
public enum BulletinKind
{
    /// <summary>A report of an aerodrome's weather: METAR or SPECI.</summary>
    Report,

    /// <summary>A forecast for an aerodrome: TAF.</summary>
    Forecast,

    /// <summary>Winds and temperatures aloft.</summary>
    WindsAloft,
}
