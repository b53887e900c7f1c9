using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Runways;

/// <summary>A margin on the landing distance for the conditions that are forecast at the arrival.</summary>
internal sealed class ArrivalMargin : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-05";

    /// <inheritdoc/>
    public string Title => "Margin at the arrival";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Landing table", "Runways", "temperature at the destination", "wind at the destination", "altimeter setting",
        "Bulletins: rain", "Types: wet landing correction"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["factor"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff: false);
        if (use is null)
        {
            return missing is null ? [] : [missing];
        }

        if (use.IsWet && leg.Type.Corrections.LandingWet is null)
        {
            return [ruling.NotChecked(
                $"{leg.Plan.To.Ident} runway {use.Runway.Ident} is taken as wet, and the wet landing correction of {leg.Type.Name} is not given",
                leg.TypeCell(nameof(RunwayCorrections.LandingWet)), leg.Cell(nameof(Leg.ArrivalRunway)))];
        }

        var factor = ruling.Amount("factor");
        return [Distances.Compare(leg, ruling, use, isTakeoff: false, factor.Value, use.Available, "landing distance available", factor)];
    }
}
