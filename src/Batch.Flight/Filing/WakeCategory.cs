namespace Batch.Flight.Filing;

/// <summary>Wake turbulence category of an aircraft by its maximum certificated takeoff mass (ICAO Doc 4444, 4.9.1 and appendix 2, item 9).</summary>
public enum WakeCategory
{
    /// <summary>7,000 kg or less.</summary>
    Light,

    /// <summary>More than 7,000 kg and less than 136,000 kg.</summary>
    Medium,

    /// <summary>136,000 kg or more.</summary>
    Heavy,
}
