namespace Batch.Books.Units;

/// <summary>One way of writing a unit.</summary>
/// <param name="Word">The word, case ignored.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Size of one in the dimension's base unit.</param>
/// <param name="Offset">Added to the number before the factor; only temperatures have one.</param>
internal sealed record UnitWord(string Word, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>
    /// The significant digits of a number that was converted: what a double carries of them beyond is noise, and a ceiling of 8,534.4 m is 28,000 ft, not
    /// 27,999.999999999996.
    /// </summary>
    private const int Digits = 13;

    /// <summary>The number in another unit of the same dimension, to 13 significant digits; the same number where both are the same size.</summary>
    /// <param name="number">Number of this unit.</param>
    /// <param name="other">The unit sought.</param>
    public double To(UnitWord other, double number)
    {
        if (Factor.Equals(other.Factor) && Offset.Equals(other.Offset)) return number;
        var converted = ((number + Offset) * Factor / other.Factor) - other.Offset;
        // Nought, infinite and very small numbers stay as they are.
        var places = Digits - 1 - Math.Floor(Math.Log10(Math.Abs(converted)));
        return places is >= 0 and <= 15 ? Math.Round(converted, (int)places) : converted;
    }
}
