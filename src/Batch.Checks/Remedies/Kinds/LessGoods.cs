namespace Batch.Checks.Remedies.Kinds;

/// <summary>The least weight of cargo and bags left behind, in steps of 5 lb or 2 kg.</summary>
internal sealed class LessGoods : IRemedyKind
{
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

        var unit = failure.Ground.WeightUnit;
        return trials.Least(steps => Goods.Off(rows, steps, unit), Goods.MostSteps(rows, unit), failure.Check);
    }
}
