namespace Batch.Flight.Week;

/// <summary>The rules a leg is flown under.</summary>
public enum FlightRules
{
    /// <summary>Instrument flight rules.</summary>
    Ifr,

    /// <summary>Visual flight rules.</summary>
    Vfr,
}
