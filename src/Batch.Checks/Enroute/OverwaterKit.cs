using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Enroute;

/// <summary>Flotation beyond gliding reach of land, rafts far from it.</summary>
internal sealed class OverwaterKit : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-02";

    /// <inheritdoc/>
    public string Title => "Overwater equipment";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Land", "Aircraft: overwater kit", "Types: glide ratio"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["extended overwater"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return Answer(leg, ruling);
    }

    private static Finding Answer(LegUnderCheck leg, Ruling ruling)
    {
        if (leg.Week.Plan.Input.Land.IsEmpty)
        {
            return ruling.NotChecked("the book has no Land sheet, so where water lies is not known");
        }

        var farthest = leg.Water.DefaultIfEmpty().MaxBy(point => point.ShoreNm);
        var extended = ruling.Amount("extended overwater");
        var kit = leg.Aircraft.OverwaterKit.Trim().ToUpperInvariant();
        var cell = leg.Aircraft.Origin.Cell(nameof(Aircraft.OverwaterKit));
        var where = $"The leg goes {Words.Amount(farthest.ShoreNm, "NM")} from land";
        if (farthest.ShoreNm > extended.Value)
        {
            return kit switch
            {
                "" => ruling.NotChecked(
                    $"the leg goes {Words.Amount(farthest.ShoreNm, "NM")} from land, and the overwater kit of {leg.Aircraft.Registration} is not given", cell),
                "RAFTS" => ruling.Pass($"{where}, with rafts aboard.", extended, cell),
                _ => ruling.Trips(extended, $"{where}, and {leg.Aircraft.Registration} carries no rafts.", cell),
            };
        }

        if (ruling.Condition("beyond gliding reach") is not { } beyond || !IsBeyondReach(leg))
        {
            return ruling.NotApplicable(farthest.ShoreNm > 0 ? $"{where} and stays in gliding reach of it." : "The leg stays over land.");
        }

        return kit switch
        {
            "" => ruling.NotChecked($"the leg leaves gliding reach of land, and the overwater kit of {leg.Aircraft.Registration} is not given", cell),
            "NONE" => ruling.Trips(beyond, $"The leg leaves gliding reach of land, and {leg.Aircraft.Registration} carries no flotation.", cell),
            _ => ruling.Pass($"The leg leaves gliding reach of land, with {leg.Aircraft.OverwaterKit.Trim()} aboard.", beyond, cell),
        };
    }

    /// <summary>Without a glide ratio every point over water counts as out of reach.</summary>
    private static bool IsBeyondReach(LegUnderCheck leg) =>
        leg.Water.Any(point => point.ShoreNm > 0 && OverWater.ReachNm(point.AltitudeFt, 0, leg.Type.GlideRatio ?? 0) < point.ShoreNm);
}
