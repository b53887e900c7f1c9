using Batch.Checks.Rules;
using Batch.Flight.Plan;

namespace Batch.Checks.Loading;

/// <summary>
/// Whether every weight is stated, not a standard weight, and whether a stated one holds clothing and hand baggage where the rules ask for it.
/// </summary>
internal sealed class WeightBasis : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-08";

    /// <inheritdoc/>
    public string Title => "Basis of the weights";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs =>
        ["Manifest: weight", "Manifest: bags", "Crew: weight", "Manifest: weight basis, or Operator: passenger weights, where the rules ask for allowances"];

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

        foreach (var answer in Allowances(leg, ruling, [.. passengers.Where(item => !item.IsAssumed && item.Category != Infant)]))
        {
            yield return answer;
        }
    }

    /// <summary>An infant on a lap carries no hand baggage.</summary>
    private const string Infant = "infant";

    private static IEnumerable<Finding> Allowances(LegUnderCheck leg, Ruling ruling, ImmutableArray<LoadItem> stated)
    {
        string BasisOf(LoadItem item) => item.Basis.Length > 0 ? item.Basis : leg.Operator.PassengerWeights;
        var (clothing, hand) = (ruling.AmountOrNone("clothing on a stated mass"), ruling.AmountOrNone("hand baggage with a stated mass"));
        var weighedOnly = ruling.Condition("weighed or standard masses");
        if (stated.IsEmpty || (weighedOnly is null && (clothing is null || hand is null)))
        {
            yield break;
        }

        var open = stated.Where(item => BasisOf(item).Length == 0).ToImmutableArray();
        var bare = stated.Where(item => BasisOf(item) == "stated" || (weighedOnly is not null && BasisOf(item) == "with allowances")).ToImmutableArray();
        var cell = leg.Operator.Cells.GetValueOrDefault("Passenger weights", "");
        if (!open.IsEmpty)
        {
            yield return ruling.NotChecked(
                $"what the weights of {Words.Count(open.Length, "passenger", "passengers")} are is not given (Manifest, Weight basis; or Operator, Passenger weights): stated, with allowances for clothing and hand baggage, or weighed",
                [.. open.Select(item => item.Cell)]);
        }

        if (!bare.IsEmpty && clothing is not null && hand is not null)
        {
            yield return ruling.Trips(
                clothing,
                $"{Words.Count(bare.Length, "passenger", "passengers")} at the mass as stated: at least {Words.Amount(clothing.Value, "kg")} of clothing and {Words.Amount(hand.Value, "kg")} of hand baggage are added to each, {Words.Amount(bare.Length * (clothing.Value + hand.Value), "kg")} in all.",
                [.. bare.Select(item => item.Cell), cell]);
        }
        else if (!bare.IsEmpty)
        {
            yield return ruling.Trips(weighedOnly,
                $"{Words.Count(bare.Length, "passenger", "passengers")} at a stated mass; with this many seats passengers are weighed or taken at standard masses.",
                [.. bare.Select(item => item.Cell), cell]);
        }
        else if (open.IsEmpty)
        {
            yield return ruling.Pass($"The weights of {Words.Count(stated.Length, "passenger", "passengers")} hold clothing and hand baggage.",
                clothing ?? weighedOnly, [.. stated.Select(item => item.Cell), cell]);
        }
    }

    private static IEnumerable<string> Kinds(ImmutableArray<LoadItem> assumed) => assumed.GroupBy(item => item.Kind).OrderBy(group => group.Key)
        .Select(group => group.Key switch
    {
        LoadItemKind.Pilot => Words.Count(group.Count(), "pilot", "pilots"),
        LoadItemKind.Passenger => Words.Count(group.Count(), "passenger", "passengers"),
        LoadItemKind.Bags => "bags of " + Words.Count(group.Count(), "passenger", "passengers"),
        LoadItemKind.Cargo => Words.Count(group.Count(), "cargo item", "cargo items"),
    });
}
