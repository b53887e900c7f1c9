namespace Batch.Sheets.Pictures;

/// <summary>A linear axis with round marks.</summary>
/// <param name="From">Value at the start.</param>
/// <param name="To">Value at the end, greater than the start.</param>
/// <param name="Start">Place of the start.</param>
/// <param name="End">Place of the end.</param>
internal readonly record struct Axis(double From, double To, double Start, double End)
{
    private static readonly double[] RoundSteps = [1, 2, 2.5, 5, 10];

    public double At(double value) => Start + ((value - From) / (To - From) * (End - Start));

    /// <summary>Round values on the axis, about as many as asked for.</summary>
    public IEnumerable<double> Marks(int about)
    {
        var step = Step((To - From) / Math.Max(1, about));
        for (var k = Math.Ceiling((From / step) - 1e-9); k * step <= To + (step * 1e-9); k++)
            yield return k * step;
    }

    /// <summary>The round number at least as great as a step: 1, 2, 2.5, 5 times a power of ten.</summary>
    public static double Step(double least)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(least, 1e-9))));
        return RoundSteps.Select(round => round * power).First(step => step >= least * (1 - 1e-9));
    }

    /// <summary>The round number at most as great as a step: 1, 2, 2.5, 5 times a power of ten.</summary>
    public static double StepBelow(double most)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(most, 1e-9))));
        return RoundSteps.Select(round => round * power).Last(step => step <= most * (1 + 1e-9));
    }
}
