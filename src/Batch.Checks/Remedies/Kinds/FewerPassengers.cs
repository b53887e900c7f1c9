using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>
/// A passenger or two less; who it is, is not for the program to say: the last rows of the manifest are taken, where one is enough for a weight the lightest
/// that is.
/// </summary>
internal sealed class FewerPassengers : IRemedyKind
{
    private const int Most = 3;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Passengers;

    /// <inheritdoc/>
    public bool Suits(Failure failure) =>
        failure.IsOneOf("WB-01", "WB-02", "WB-03", "WB-04", "WB-05", "WB-06", "WB-07", "PERF-01", "PERF-02", "PERF-03", "PERF-04", "ENR-05");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials)
    {
        var lines = failure.Manifest.Where(line => line.Category != PersonCategory.Infant).Reverse().ToImmutableArray();
        var order = failure.IsOneOf("WB-06") ? lines.AsEnumerable() : lines.OrderBy(line => line.Weight?.Value ?? double.MaxValue);
        var ones = order.Select(line => new WeekEdit("Leave one passenger behind, for example this one", Disruptions.Passengers).Without(line));
        var more = Enumerable.Range(2, Most - 1).Where(count => count < lines.Length)
            .Select(count => lines.OrderByDescending(line => line.Weight?.Value ?? 0).Take(count)
            .Aggregate(new WeekEdit(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Leave {count} passengers behind, for example these"),
                Disruptions.Passengers), (edit, line) => edit.Without(line)));
        return trials.First(ones.Take(failure.IsOneOf("WB-06") ? 1 : 10).Concat(more), failure.Check);
    }
}
