namespace Batch.Checks.Remedies.Kinds;

/// <summary>The fewest pounds of cargo and bags left behind, in steps of 5 lb.</summary>
internal sealed class LessGoods : IRemedyKind
{
    private const double StepLb = 5;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Goods;

    /// <inheritdoc/>
    public bool Suits(Failure failure) =>
        failure.IsOneOf("WB-01", "WB-02", "WB-03", "WB-04", "WB-05", "WB-07", "PERF-01", "PERF-02", "PERF-03", "PERF-04", "FUEL-06");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials)
    {
        var rows = Goods.Rows(failure);
        var over = failure.Plan.Load.Stations.Where(stand => stand.Station.Maximum is { } maximum && stand.Weight > maximum).Select(stand => stand.Station.Name)
            .ToImmutableArray();
        if (failure.IsOneOf("WB-07"))
        {
            rows = [.. rows.Where(row => row.Station.Length == 0 || over.Contains(row.Station, StringComparer.Ordinal))];
        }
        else if (failure.IsOneOf("WB-04", "WB-05") && failure.Finding is { Unit: "in", Actual: { } arm, Required: { } limit })
        {
            // The end from which weight must go: what lies there is taken first.
            var ends = failure.Plan.Type.Stations.Where(station => arm > limit ? station.Arm.Value > limit : station.Arm.Value < limit)
                .Select(station => station.Name).ToImmutableArray();
            rows = [.. rows.Where(row => ends.Contains(row.Station, StringComparer.Ordinal))];
        }

        var most = (int)Math.Floor(rows.Sum(row => row.Weight.Value) / StepLb);
        return trials.Least(steps => Goods.Off(rows, new Pounds(steps * StepLb)), most, failure.Check);
    }
}
