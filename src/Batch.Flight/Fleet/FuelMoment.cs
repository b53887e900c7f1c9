namespace Batch.Flight.Fleet;

/// <summary>One point of the curve of fuel moment against fuel weight.</summary>
/// <param name="Fuel">Usable fuel in the tanks [lb].</param>
/// <param name="Moment">Moment of that fuel about the datum [lb·in].</param>
public readonly record struct FuelMoment(Pounds Fuel, PoundInches Moment);
