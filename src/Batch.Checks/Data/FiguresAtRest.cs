using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Data;

/// <summary>Whether the iteration of fuel and weight came to rest.</summary>
internal sealed class FiguresAtRest : ICheck
{
    /// <inheritdoc/>
    public string Id => "ADM-06";

    /// <inheritdoc/>
    public string Title => "Figures at rest";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var fuel = leg.Plan.Fuel;
        yield return fuel.IsConverged
            ? ruling.Pass($"Fuel and weight came to rest within 1 lb in {Words.Count(fuel.Rounds, "round", "rounds")}.")
            : ruling.Trips(
                $"Fuel and weight did not come to rest within 1 lb in {Words.Count(fuel.Rounds, "round", "rounds")}; the figures of this leg are not final.",
                leg.Cell(nameof(Leg.FuelPlan)));
    }
}
