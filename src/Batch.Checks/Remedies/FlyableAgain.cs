using Batch.Checks.Remedies.Kinds;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies;

/// <summary>
/// Changes for a leg whose flight cannot be made, least disruptive first: the minimum fuel, a level left to the planner, the usual cruise setting, goods left
/// behind, another aircraft, passengers left behind. Each was planned with the whole chain: the leg can be flown and passes its checks, and nothing else fails
/// that did not fail before.
/// </summary>
/// <param name="ground">The week.</param>
/// <param name="plan">The leg without a plan.</param>
/// <param name="leg">The leg as read.</param>
/// <param name="check">Id of the check that says that the leg was not planned.</param>
/// <param name="trials">Tries changes.</param>
internal sealed class FlyableAgain(RemedyGround ground, LegPlan plan, Leg leg, string check, Trials trials)
{
    private const int MostPassengers = 3;

    /// <summary>The changes that were found.</summary>
    public IEnumerable<FoundRemedy> Find() =>
        new[] { First(OnPaper()), LeastGoods(), First(OtherAircraft.Edits(ground, plan).Take(OtherAircraft.MostWhole)), First(FewerPassengers()) }
            .OfType<FoundRemedy>();

    private FoundRemedy? First(IEnumerable<WeekEdit> edits) => edits.Select(Flyable).FirstOrDefault(found => found is not null);

    // Of a leg without a plan nothing was known: what its checks leave to be looked at is not owed to the change.
    private FoundRemedy? Flyable(WeekEdit edit) => trials.Whole(edit, check) is { } found
        ? found with { Leaves = [.. found.Leaves.Where(left => !left.EndsWith($" of leg {leg.Key}", StringComparison.Ordinal))] }
        : null;

    private IEnumerable<WeekEdit> OnPaper()
    {
        if (leg.FuelPlan is not null and not FuelPlan.Minimum { Extra.Value: 0 })
        {
            yield return FuelEdits.Of(leg, new FuelPlan.Minimum(Pounds.Zero), "minimum", $"Plan leg {leg.Key} with the minimum fuel of the rules");
        }

        if (leg.Level is not null)
        {
            yield return new WeekEdit($"Leave the level of leg {leg.Key} to the planner", Disruptions.Paper)
                .With(leg, leg with { Level = null, IsLevelAuto = true }, (nameof(Leg.Level), "auto"));
        }

        if (leg.Setting.Length > 0)
        {
            yield return new WeekEdit($"Fly leg {leg.Key} at the usual cruise setting", Disruptions.Paper)
                .With(leg, leg with { Setting = "" }, (nameof(Leg.Setting), ""));
        }
    }

    // The least by halving, each tried as a whole.
    private FoundRemedy? LeastGoods()
    {
        ImmutableArray<Goods.Row> rows =
        [
            .. ground.Input.Cargo.Where(line => IsOfLeg(line.Trip, line.Legs)).Select(line => new Goods.Row(line.Weight, line, null, ""))
                .Concat(ground.Input.Manifest.Where(line => IsOfLeg(line.Trip, line.Legs) && line.Bags is { Value: > 0 })
                    .Select(line => new Goods.Row(line.Bags ?? Pounds.Zero, null, line, "")))
                .OrderByDescending(row => row.Weight.Value),
        ];
        FoundRemedy? Off(int steps) => Goods.Off(rows, steps, ground.WeightUnit) is { } edit ? Flyable(edit) : null;
        var (fails, passes) = (0, Goods.MostSteps(rows, ground.WeightUnit));
        if (passes < 1 || Off(passes) is not { } best)
        {
            return null;
        }

        while (passes - fails > 1)
        {
            var middle = (passes + fails) / 2;
            if (Off(middle) is { } less)
            {
                (passes, best) = (middle, less);
            }
            else
            {
                fails = middle;
            }
        }

        return best;
    }

    // One passenger, the lightest that is enough; else the heaviest two or three.
    private IEnumerable<WeekEdit> FewerPassengers()
    {
        var lines = ground.Input.Manifest.Where(line => IsOfLeg(line.Trip, line.Legs) && line.Category != PersonCategory.Infant)
            .OrderBy(line => line.Weight?.Value ?? double.MaxValue).ToImmutableArray();
        foreach (var line in lines)
        {
            yield return new WeekEdit("Leave one passenger behind, for example this one", Disruptions.Passengers).Without(line);
        }

        for (var count = 2; count <= MostPassengers && count < lines.Length; count++)
        {
            yield return lines.Reverse().Take(count).Aggregate(
                new WeekEdit(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Leave {count} passengers behind, for example these"),
                    Disruptions.Passengers),
                (edit, line) => edit.Without(line));
        }
    }

    private bool IsOfLeg(string trip, LegSelection legs)
    {
        ground.Seen.Trip(leg.Key.Trip);
        return legs.Contains(leg.Key.Number) && string.Equals(trip, leg.Key.Trip, StringComparison.OrdinalIgnoreCase);
    }
}
