namespace Batch.Checks;

/// <summary>
/// A figure and its limit as they are printed. Rounded against the leg (a least value up and what is there down, a greatest value down and what is there up),
/// and the margin is the difference of the printed numbers, so that the three always agree. Where that would show a limit that is kept as broken, the figure is
/// printed as the limit: at the limit is met. Common practice, no source.
/// </summary>
/// <param name="Limit">The limit as printed.</param>
/// <param name="Actual">The figure as printed.</param>
/// <param name="Margin">How far inside the limit, as printed: never negative where the limit is kept, always where it is not.</param>
public readonly record struct PrintedTrio(double Limit, double Actual, double Margin)
{
    /// <summary>This far, in the unit printed, a figure is still on a step: less than half of what counts as beyond a limit.</summary>
    private const double Grain = 1e-7;

    /// <summary>Rounds a figure and its limit.</summary>
    /// <param name="limit">The limit; finite.</param>
    /// <param name="actual">The figure; finite.</param>
    /// <param name="isLeast">Whether the limit is a least value; else a greatest.</param>
    /// <param name="isKept">Whether the limit is kept, by the numbers as they are computed.</param>
    /// <param name="perUnit">Steps in a unit, above 0: 1 for whole numbers, 100 for two decimals, 60 for hours on the clock.</param>
    public static PrintedTrio Of(double limit, double actual, bool isLeast, bool isKept, double perUnit = 1)
    {
        var sign = isLeast ? 1 : -1;
        // Mirrored at zero a greatest value is a least one.
        var least = Math.Ceiling((sign * limit * perUnit) - Grain);
        var there = Math.Floor((sign * actual * perUnit) + Grain);
        there = isKept ? Math.Max(there, least) : Math.Min(there, least - 1);
        return new PrintedTrio(Plain(sign * least / perUnit), Plain(sign * there / perUnit), (there - least) / perUnit);
    }

    /// <summary>Steps in a unit at which findings print a figure.</summary>
    /// <param name="unit">The unit of a finding; empty for a bare number.</param>
    /// <param name="greatest">The greatest of the figures without its sign: hours beyond two days are no longer written as on a clock.</param>
    public static double StepsPer(string unit, double greatest = 0) => unit switch
    {
        "h" => Math.Abs(greatest) < Rules.Words.ClockHours ? 60 : 10,
        "in" or "SM" or "" => 100,
        "lb/USG" or "kg/L" => 1000,
        "%" => 10,
        _ => 1,
    };

    // No negative zero.
    private static double Plain(double value) => value + 0.0;
}
