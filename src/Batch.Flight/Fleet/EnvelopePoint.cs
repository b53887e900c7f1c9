namespace Batch.Flight.Fleet;

/// <summary>One vertex of an envelope, or one state of loading to be tested against it.</summary>
/// <param name="Weight">Gross weight [lb].</param>
/// <param name="Arm">Centre of gravity [in] aft of the datum.</param>
public readonly record struct EnvelopePoint(Pounds Weight, Inches Arm);
