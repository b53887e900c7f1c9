using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>Cargo and bags of a leg as rows from which weight can be taken.</summary>
internal static class Goods
{
    /// <summary>A rest up to this is rounding of a conversion [lb].</summary>
    private const double NoiseLb = 1e-6;

    /// <summary>The station at which the load sheet has the item of a cell; empty where it has none.</summary>
    /// <param name="plan">The leg.</param>
    /// <param name="cell">The cell of its weight.</param>
    public static string StationOf(LegPlan.Planned plan, string cell) =>
        plan.Load.Items.FirstOrDefault(item => item.Cell == cell && item.Kind is LoadItemKind.Cargo or LoadItemKind.Bags)?.Station ?? "";

    /// <summary>The rows, heaviest first.</summary>
    /// <param name="failure">The failure.</param>
    public static ImmutableArray<Row> Rows(Failure failure) =>
    [
        .. failure.Cargo.Select(line => new Row(line.Weight, line, null, StationOf(failure.Plan, line.Origin.Cell(nameof(CargoLine.Weight)))))
            .Concat(failure.Manifest.Where(line => line.Bags is { Value: > 0 })
                .Select(line => new Row(line.Bags ?? Pounds.Zero, null, line, StationOf(failure.Plan, line.Origin.Cell(nameof(ManifestLine.Bags))))))
            .OrderByDescending(row => row.Weight.Value),
    ];

    /// <summary>How many steps of weight the rows hold.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="unit">The operator's unit.</param>
    public static int MostSteps(ImmutableArray<Row> rows, WeightUnit unit) =>
        (int)Math.Floor(new Pounds(rows.Sum(row => row.Weight.Value) + NoiseLb) / Typed.Step(unit));

    /// <summary>The change that takes weight off: from one row where one is enough, the lightest such; else from the heaviest downward.</summary>
    /// <param name="rows">The rows, in the order in which they are taken from.</param>
    /// <param name="steps">How many steps of <see cref="Typed.Step"/> are taken off.</param>
    /// <param name="unit">The operator's unit.</param>
    /// <returns>Null where the rows do not hold so much.</returns>
    public static WeekEdit? Off(ImmutableArray<Row> rows, int steps, WeightUnit unit)
    {
        var off = Typed.Step(unit) * steps;
        var order = rows.LastOrDefault(row => row.Weight.Value >= off.Value - NoiseLb) is { } enough ? [enough] : rows;
        var taken = ImmutableArray.CreateBuilder<(Row Row, Pounds Off)>();
        var left = off;
        foreach (var row in order.TakeWhile(_ => left.Value > NoiseLb))
        {
            taken.Add((row, Pounds.Min(left, row.Weight)));
            left -= taken[^1].Off;
        }

        // Cargo may be one piece: what is left of it may not exist.
        var parted = taken.FirstOrDefault(one => one.Row.Cargo is not null && one.Off.Value < one.Row.Weight.Value - NoiseLb).Row?.Cargo?.What ?? "";
        var edit = new WeekEdit(
            $"Leave {Words.Amount(off)} of cargo or bags behind{(parted.Length > 0 ? $", {parted} in part if it can be parted" : "")}", Disruptions.Goods);
        return left.Value > NoiseLb ? null : taken.Aggregate(edit, (all, one) => one.Row.Less(all, one.Off, unit));
    }

    /// <summary>A row.</summary>
    /// <param name="Weight">What it holds.</param>
    /// <param name="Cargo">Row of Cargo, or null.</param>
    /// <param name="Bags">Row of Manifest, or null.</param>
    /// <param name="Station">Where it lies.</param>
    internal sealed record Row(Pounds Weight, CargoLine? Cargo, ManifestLine? Bags, string Station)
    {
        /// <summary>The change with so much taken off this row besides.</summary>
        /// <param name="edit">The change.</param>
        /// <param name="off">What is taken.</param>
        /// <param name="unit">The unit in which the rest is typed.</param>
        public WeekEdit Less(WeekEdit edit, Pounds off, WeightUnit unit)
        {
            var rest = Typed.Rest(Weight - off, unit);
            var typed = Typed.Weight(rest, unit);
            return Cargo is { } cargo
                ? rest.Value > NoiseLb ? edit.With(cargo, cargo with { Weight = rest }, (nameof(CargoLine.Weight), typed)) : edit.Without(cargo)
                : Bags is { } bags ? edit.With(bags, bags with { Bags = rest }, (nameof(ManifestLine.Bags), typed)) : edit;
        }
    }
}
