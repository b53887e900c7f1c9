using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Alternates;

/// <summary>Forecast at the landing against the landing minima.</summary>
internal sealed class DestinationForecast : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-01";

    /// <inheritdoc/>
    public string Title => "Forecast at the destination";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Bulletins: forecast at the destination", "Airports: approach minimum", "Airports: approach visibility"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var to = leg.Plan.To;
        yield return to is { ApproachMinimum: { } ceiling, ApproachVisibilityM: { } visibility }
            ? Minima.Look(leg, ruling, to, leg.Plan.Times.Landing, ceiling, visibility, "landing minima", null)
            : ruling.NotChecked($"the landing minima of {to.Ident} are not given", to.Origin.Cell(nameof(Airport.ApproachMinimum)));
    }
}
