using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Enroute;

/// <summary>Whether every point over water is in gliding reach of land, takeoff and landing excepted.</summary>
internal sealed class GlideToLand : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-01";

    /// <inheritdoc/>
    public string Title => "Gliding reach of land";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Land", "Types: glide ratio"];

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["glide ratio less"];

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

        var near = ruling.Amount("distance from the airports").Value;
        var length = leg.Plan.Route.Length.Value;
        var water = leg.Water.Where(point => point.ShoreNm > 0 && point.AlongNm >= near && point.AlongNm <= length - near).ToImmutableArray();
        if (water.IsEmpty)
        {
            return ruling.NotApplicable("The leg stays over land, save for takeoff and landing.");
        }

        if (leg.Type.GlideRatio is not { } book)
        {
            return ruling.NotChecked($"the leg crosses water, and the glide ratio of {leg.Type.Name} is not given",
                leg.TypeCell(nameof(AircraftType.GlideRatio)));
        }

        var ratio = book * (1 - (ruling.Amount("glide ratio less").Value / 100));
        var left = ruling.Amount("height left at the shore").Value;
        var worst = water.MinBy(point => OverWater.ReachNm(point.AltitudeFt, left, ratio) - point.ShoreNm);
        var reach = OverWater.ReachNm(worst.AltitudeFt, left, ratio);
        var beyond = water.Where(point => OverWater.ReachNm(point.AltitudeFt, left, ratio) - point.ShoreNm < -Ruling.Noise).ToImmutableArray();
        var at = $"{Words.Amount(worst.AlongNm, "NM")} after {leg.Plan.From.Ident} at {Words.Amount(worst.AltitudeFt, "ft")}";
        var printed = PrintedTrio.Of(worst.ShoreNm, reach, isLeast: true, beyond.IsEmpty);
        var answer = beyond.IsEmpty
            ? ruling.Pass($"Land is in gliding reach all the way; nearest to the limit {at}, {Words.Amount(printed.Limit, "NM")} from land with {Words.Amount(printed.Actual, "NM")} of reach in still air.",
                null, leg.TypeCell(nameof(AircraftType.GlideRatio)))
            : ruling.Trips(
                $"Out of gliding reach of land from {Words.Amount(beyond[0].AlongNm, "NM")} to {Words.Amount(beyond[^1].AlongNm, "NM")} after {leg.Plan.From.Ident}; worst {at}: {Words.Amount(printed.Limit, "NM")} from land with {Words.Amount(printed.Actual, "NM")} of reach in still air.",
                leg.Cell(nameof(Leg.Level)),
                leg.Cell(nameof(Leg.Route)));
        return answer with { Required = worst.ShoreNm, Actual = reach, Margin = reach - worst.ShoreNm, Unit = "NM" };
    }
}
