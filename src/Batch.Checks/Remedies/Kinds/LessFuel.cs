namespace Batch.Checks.Remedies.Kinds;

/// <summary>Less fuel aboard: as much as still makes the check pass, not below what the rules require nor below what stands in the tanks.</summary>
internal sealed class LessFuel : IRemedyKind
{
    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) =>
        failure.IsOneOf("WB-02", "WB-03", "WB-04", "WB-05", "FUEL-06", "PERF-01", "PERF-02", "PERF-03", "PERF-04") && failure.Plan.Fuel.Uplift > Pounds.Zero;

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials)
    {
        var fuel = failure.Plan.Fuel;
        var unit = failure.Ground.WeightUnit;
        var step = Typed.Step(unit);
        var from = step * Math.Ceiling(fuel.Aboard / step);
        var least = Pounds.Max(fuel.Required, fuel.Before);
        var most = (int)Math.Floor((from - least) / step);
        return trials.Least(steps => FuelEdits.Amount(failure.Leg, from - step * steps, fuel.Aboard, unit), most, failure.Check)
            ?? (fuel.Margin > step ? trials.First([FuelEdits.Minimum(failure.Leg, fuel.Aboard)], failure.Check) : null);
    }
}
