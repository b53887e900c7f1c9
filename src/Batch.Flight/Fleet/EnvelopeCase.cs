namespace Batch.Flight.Fleet;

/// <summary>The condition for which an envelope of weight and centre of gravity holds.</summary>
public enum EnvelopeCase
{
    /// <summary>At takeoff and in flight.</summary>
    Takeoff,

    /// <summary>At landing.</summary>
    Landing,

    /// <summary>With no usable fuel.</summary>
    ZeroFuel,
}
