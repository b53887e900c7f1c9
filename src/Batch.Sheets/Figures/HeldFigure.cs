using Batch.Checks;

namespace Batch.Sheets.Figures;

/// <summary>One of a limit, the figure held against it and the margin, in the unit of the house.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Actual">The figure.</param>
/// <param name="IsLeast">Whether the limit is a least value; else a greatest.</param>
/// <param name="Part">Which of the three.</param>
internal sealed record HeldFigure(double Limit, double Actual, bool IsLeast, HeldPart Part)
{
    /// <summary>A difference up to this is rounding of the computation, as in the checks.</summary>
    private const double Noise = 1e-6;

    /// <summary>The number as it is printed.</summary>
    /// <param name="factor">Units per unit of the house.</param>
    /// <param name="decimals">Decimals.</param>
    public double Printed(double factor, int decimals)
    {
        var isKept = (IsLeast ? Actual - Limit : Limit - Actual) >= -Noise;
        var printed = PrintedTrio.Of(Limit * factor, Actual * factor, IsLeast, isKept, Math.Pow(10, decimals));
        return Part switch
        {
            HeldPart.Limit => printed.Limit,
            HeldPart.Actual => printed.Actual,
            HeldPart.Margin => printed.Margin,
        };
    }
}
