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
    public string Needs => "Winds or Bulletins at the airports; Runways bearing";

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

        var crosswind = ruling.Amount("crosswind");
        var tailwind = ruling.Amount("tailwind");
        var place = $"{(isTakeoff ? leg.Plan.From.Ident : leg.Plan.To.Ident)} {use.Runway.Ident}";
        var cell = leg.Cell(isTakeoff ? nameof(Leg.DepartureRunway) : nameof(Leg.ArrivalRunway));
        return
        [
            ruling.AtMost($"Crosswind on {place}", Math.Abs(use.Crosswind.Value), crosswind.Value, "kt", "limit", crosswind, cell),
            ruling.AtMost($"Tailwind on {place}", Math.Max(-use.Headwind.Value, 0), tailwind.Value, "kt", "limit", tailwind, cell),
        ];
    }
}
