using Batch.Checks.Rules;

namespace Batch.Checks.Runways;

/// <summary>Takeoff distance with the factors of performance class B.</summary>
internal sealed class FactoredTakeoff : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-02";

    /// <inheritdoc/>
    public string Title => "Takeoff distance with margin";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Takeoff table", "Runways", "temperature at the departure", "wind at the departure", "altimeter setting"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["factor on takeoff run available"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff: true);
        if (use is null)
        {
            return missing is null ? [] : [missing];
        }

        var runway = use.Runway;
        Finding Held(string amount, Feet available, string name)
        {
            var by = ruling.Amount(amount);
            return Distances.Compare(leg, ruling, use, isTakeoff: true, by.Value, available, name, by);
        }

        // Declared distances as long as the run say that there is neither clearway nor stopway.
        if (runway.TakeoffRun == (runway.TakeoffDistance ?? runway.TakeoffRun) && runway.TakeoffRun == (runway.AccelerateStop ?? runway.TakeoffRun))
        {
            return [Held("factor on takeoff run available", runway.TakeoffRun, "takeoff run available")];
        }

        return
        [
            Distances.Compare(leg, ruling, use, isTakeoff: true, 1, runway.TakeoffRun, "takeoff run available",
                ruling.Amount("factor on takeoff run available")),
            Held("factor on takeoff distance available", runway.TakeoffDistance ?? runway.TakeoffRun, "takeoff distance available"),
            Held("factor on accelerate-stop distance available", runway.AccelerateStop ?? runway.TakeoffRun, "accelerate-stop distance available"),
        ];
    }
}
