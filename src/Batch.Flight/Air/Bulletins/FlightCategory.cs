namespace Batch.Flight.Air.Bulletins;

/// <summary>The flight categories of the FAA (Aeronautical Information Manual 7-1-7), by ceiling and visibility, worst first.</summary>
public enum FlightCategory
{
    /// <summary>Ceiling below 500 ft or visibility below 1 SM.</summary>
    LowInstrument,

    /// <summary>Ceiling 500 ft to below 1,000 ft or visibility 1 to below 3 SM.</summary>
    Instrument,

    /// <summary>Ceiling 1,000 to 3,000 ft or visibility 3 to 5 SM.</summary>
    MarginalVisual,

    /// <summary>Ceiling above 3,000 ft and visibility above 5 SM.</summary>
    Visual,
}
