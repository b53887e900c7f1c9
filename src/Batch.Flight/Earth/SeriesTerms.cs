using System.Runtime.CompilerServices;

namespace Batch.Flight.Earth;

/// <summary>The coefficients 1 to 6 of a sine series, held in place; index 0 is not used.</summary>
[InlineArray(7)]
internal struct SeriesTerms
{
    private double _first;

    /// <summary>The sum of c[j] sin(2 j x), j = 1 to the number of terms, by Clenshaw's recurrence.</summary>
    /// <param name="terms">The coefficients.</param>
    /// <param name="sin">Sine of x.</param>
    /// <param name="cos">Cosine of x.</param>
    public static double SineSum(in SeriesTerms terms, double sin, double cos)
    {
        var twiceCosine = 2 * (cos - sin) * (cos + sin);
        double older = 0, newer = terms[6];
        for (var j = 5; j >= 1; j--) (older, newer) = (newer, twiceCosine * newer - older + terms[j]);
        return 2 * sin * cos * newer;
    }
}
