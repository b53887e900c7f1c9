using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Alternates;

/// <summary>Forecast at the alternate against the usual alternate minima.</summary>
internal sealed class AlternateForecast : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-03";

    /// <inheritdoc/>
    public string Title => "Forecast at the alternate";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Bulletins: forecast at the alternate", "Airports: instrument approach"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Plan.Alternates.IsEmpty
        ? [ruling.NotApplicable("No alternate is filed.")]
        : leg.Plan.Alternates.Select(alternate => Look(leg, ruling, alternate));

    private static Finding Look(LegUnderCheck leg, Ruling ruling, AlternatePlan alternate)
    {
        if (!leg.Week.Plan.Input.Airports.TryGetValue(alternate.Airport, out var airport))
        {
            return ruling.NotChecked($"{alternate.Airport} is not in the Airports sheet", leg.Cell(nameof(Leg.Alternate)));
        }

        if (airport.ApproachKind.Trim().Length == 0)
        {
            return ruling.NotChecked($"the instrument approach of {airport.Ident} is not given", airport.Origin.Cell(nameof(Airport.ApproachKind)));
        }

        var kind = Precise.Any(word => airport.ApproachKind.Contains(word, StringComparison.OrdinalIgnoreCase)) ? "precision approach" : "nonprecision approach";
        var ceiling = ruling.Amount(kind + " ceiling");
        var visibility = ruling.Amount(kind + " visibility");
        return Minima.Look(
            leg, ruling, airport, leg.Plan.Times.Landing + alternate.Time, new Feet(ceiling.Value), Visibilities.Metres(visibility), $"usual alternate minima for a {kind}", ceiling);
    }

    /// <summary>Words by which the book names an approach with a glide path of its own.</summary>
    private static readonly ImmutableArray<string> Precise = ["ILS", "GLS", "PAR", "MLS"];
}
