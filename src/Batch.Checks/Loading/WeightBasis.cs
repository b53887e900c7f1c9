using Batch.Checks.Rules;
using Batch.Flight.Plan;

namespace Batch.Checks.Loading;

/// <summary>Whether every weight is stated, not a standard weight.</summary>
internal sealed class WeightBasis : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-08";

    /// <inheritdoc/>
    public string Title => "Basis of the weights";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Manifest: weight", "Manifest: bags", "Crew: weight"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var passengers = leg.Plan.Load.Items.Where(item => item.Kind == LoadItemKind.Passenger).ToImmutableArray();
        var assumed = leg.Plan.Load.Items.Where(item => item.IsAssumed).ToImmutableArray();
        if (leg.Plan.Load.Items.IsEmpty)
        {
            yield return ruling.NotApplicable("Nobody and nothing is aboard beyond the empty weight.");
        }
        else if (assumed.IsEmpty)
        {
            yield return ruling.Pass($"Every weight is stated: {Words.Count(passengers.Length, "passenger", "passengers")}, bags and cargo.");
        }
        else
        {
            yield return ruling.Trips(
                $"{Words.List(Kinds(assumed))} at a standard weight ({leg.Plan.Planning.Weights.Source}); state the actual weight.",
                [.. assumed.Select(item => item.Cell)]);
        }
    }

    private static IEnumerable<string> Kinds(ImmutableArray<LoadItem> assumed) => assumed.GroupBy(item => item.Kind).OrderBy(group => group.Key).Select(group => group.Key switch
    {
        LoadItemKind.Pilot => Words.Count(group.Count(), "pilot", "pilots"),
        LoadItemKind.Passenger => Words.Count(group.Count(), "passenger", "passengers"),
        LoadItemKind.Bags => "bags of " + Words.Count(group.Count(), "passenger", "passengers"),
        LoadItemKind.Cargo => Words.Count(group.Count(), "cargo item", "cargo items"),
    });
}
