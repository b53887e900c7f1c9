namespace Batch.Books.Units;

/// <summary>One way of writing a unit.</summary>
/// <param name="Word">The word, case ignored.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Size of one in the dimension's base unit.</param>
/// <param name="Offset">Added to the number before the factor; only temperatures have one.</param>
internal sealed record UnitWord(string Word, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>The number in another unit of the same dimension; the same number where both are the same size.</summary>
    /// <param name="number">Number of this unit.</param>
    /// <param name="other">The unit sought.</param>
    public double To(UnitWord other, double number)
    {
        if (Factor.Equals(other.Factor) && Offset.Equals(other.Offset)) return number;
        return ((number + Offset) * Factor / other.Factor) - other.Offset;
    }
}
