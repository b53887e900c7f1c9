using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Runways;

/// <summary>Wind components on the runways against the operator's limits.</summary>
internal sealed class WindComponents : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-07";

    /// <inheritdoc/>
    public string Title => "Crosswind and tailwind";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Runways", "wind at the departure", "wind at the destination"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["crosswind", "tailwind"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) =>
        Side(leg, ruling, isTakeoff: true).Concat(Side(leg, ruling, isTakeoff: false));

    private static IEnumerable<Finding> Side(LegUnderCheck leg, Ruling ruling, bool isTakeoff)
    {
        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff);
        if (use is null)
        {
            return missing is null ? [] : [missing];
        }

        if (use.IsWindAssumed)
        {
            return [ruling.NotChecked($"no surface wind is known at {(isTakeoff ? leg.Plan.From.Ident : leg.Plan.To.Ident)}, so crosswind and tailwind at the {(isTakeoff ? "takeoff" : "landing")} are open")];
        }

        var crosswind = ruling.Amount("crosswind");
        var tailwind = ruling.Amount("tailwind");
        var place = $"{(isTakeoff ? leg.Plan.From.Ident : leg.Plan.To.Ident)} runway {use.Runway.Ident}";
        var cell = leg.Cell(isTakeoff ? nameof(Leg.DepartureRunway) : nameof(Leg.ArrivalRunway));
        return
        [
            ruling.AtMost($"The crosswind at {place}", Math.Abs(use.Crosswind.Value), crosswind.Value, "kt", "limit", crosswind, cell),
            ruling.AtMost($"The tailwind at {place}", Math.Max(-use.Headwind.Value, 0), tailwind.Value, "kt", "limit", tailwind, cell),
        ];
    }
}
