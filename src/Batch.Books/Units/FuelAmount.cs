namespace Batch.Books.Units;

/// <summary>Fuel, or fuel flow, as written: by weight or by volume. It becomes weight once the type's density is known.</summary>
/// <param name="Number">Pounds, or US gallons where <paramref name="IsVolume"/>.</param>
/// <param name="IsVolume">Whether written by volume.</param>
internal readonly record struct FuelAmount(double Number, bool IsVolume)
{
    /// <summary>Pounds; null where it was written by volume and there is no density.</summary>
    /// <param name="densityLbPerGallon">Density [lb/US gal].</param>
    public double? Pounds(double? densityLbPerGallon) => IsVolume ? Number * densityLbPerGallon : Number;
}
