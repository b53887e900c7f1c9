using Batch.Checks.Rules;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Alternates;

/// <summary>
/// Forecast at the alternates, that of the takeoff too where the rules ask, against the usual alternate minima, or its own landing minima with what the rules
/// add.
/// </summary>
internal sealed class AlternateForecast : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-03";

    /// <inheritdoc/>
    public string Title => "Forecast at the alternate";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Bulletins: forecast at the alternate", "Bulletins: forecast at the takeoff alternate",
        "Airports: instrument approach", "Airports: approach minimum, where the rules add to it", "Airports: approach visibility, where the rules add to it"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var answers = leg.Plan.Alternates.Select(alternate => Look(leg, ruling, alternate.Airport, leg.Plan.Times.Landing + alternate.Time,
            nameof(Leg.Alternate), null)).Concat(AfterTakeoff(leg, ruling)).ToImmutableArray();
        return answers.IsEmpty ? [ruling.NotApplicable("No alternate is filed.")] : answers;
    }

    /// <summary>The takeoff alternate that the leg names, where the rules ask for its weather too.</summary>
    private static IEnumerable<Finding> AfterTakeoff(LegUnderCheck leg, Ruling ruling)
    {
        if (leg.Plan.Leg.TakeoffAlternate is not { Length: > 0 } ident
            || (ruling.Condition("takeoff alternate") ?? ruling.Condition(AtLandingMinima)) is not { } by)
        {
            yield break;
        }

        if (leg.Week.Plan.Input.Airports.TryGetValue(ident, out var airport) && DepartureWeather.CruiseKt(leg) is > 0 and var speed)
        {
            var way = Duration.FromHours(new GeodesicPath(leg.Plan.From.Position, airport.Position).Length.Value / speed);
            yield return Look(leg, ruling, ident, leg.Plan.Times.Takeoff + way, nameof(Leg.TakeoffAlternate), by);
        }
        else
        {
            yield return ruling.NotChecked(
                airport is null
                    ? $"{ident} is not in the Airports sheet"
                    : $"the leg has no cruise whose speed would tell when {ident}, the takeoff alternate, is reached", leg.Cell(nameof(Leg.TakeoffAlternate)));
        }
    }

    private static Finding Look(LegUnderCheck leg, Ruling ruling, string ident, Instant at, string field, RuleAmount? by)
    {
        if (!leg.Week.Plan.Input.Airports.TryGetValue(ident, out var airport))
        {
            return ruling.NotChecked($"{ident} is not in the Airports sheet", leg.Cell(field));
        }

        if (airport.ApproachKind.Trim().Length == 0)
        {
            return ruling.NotChecked($"the instrument approach of {airport.Ident} is not given", airport.Origin.Cell(nameof(Airport.ApproachKind)));
        }

        if (string.Equals(airport.ApproachKind.Trim(), "none", StringComparison.OrdinalIgnoreCase))
        {
            return ruling.NotChecked($"{airport.Ident} has no instrument approach: as an alternate it asks for weather that allows a descent from the minimum altitude, approach and landing under VFR, which is not computed",
                airport.Origin.Cell(nameof(Airport.ApproachKind)), leg.Cell(field));
        }

        var kind = KindOf(airport);
        var hours = ruling.AmountOrNone(DestinationForecast.Around)?.Value ?? 0;
        var isAtMinima = by is not null && ruling.Condition(AtLandingMinima) is not null;
        if (isAtMinima || ruling.AmountOrNone(kind + " ceiling beyond the minimum") is not null)
        {
            return airport is { ApproachMinimum: { } least, ApproachVisibilityM: { } leastM }
                ? isAtMinima
                    ? Minima.Look(leg, ruling, airport, at, least, leastM, "landing minima", by, hours, isCeilingAsked: !IsPrecise(airport))
                    : Beyond(leg, ruling, airport, at, kind, least, leastM, hours)
                : ruling.NotChecked($"the landing minima of {airport.Ident} are not given", airport.Origin.Cell(nameof(Airport.ApproachMinimum)));
        }

        var ceiling = ruling.Amount(kind + " ceiling");
        var visibility = ruling.Amount(kind + " visibility");
        return Minima.Look(
            leg, ruling, airport, at, new Feet(ceiling.Value), Visibilities.Metres(visibility), $"usual alternate minima for a {kind}", by ?? ceiling);
    }

    private static Finding Beyond(LegUnderCheck leg, Ruling ruling, Airport airport, Instant at, string kind, Feet least, double leastM, double hours)
    {
        var (ceiling, visibility) = (ruling.Amount(kind + " ceiling beyond the minimum"), ruling.Amount(kind + " visibility beyond the minimum"));
        return Minima.Look(leg, ruling, airport, at, least + new Feet(ceiling.Value), leastM + Visibilities.Metres(visibility),
            "planning minima of an alternate", ceiling, hours);
    }

    /// <summary>Name of the part by which a takeoff alternate is held against its landing minima.</summary>
    private const string AtLandingMinima = "takeoff alternate at its landing minima";

    /// <summary>The kind of an airport's approach, as the amounts of the rules begin: with a glide path of its own, or without.</summary>
    /// <param name="airport">An airport whose approach is given.</param>
    public static string KindOf(Airport airport) => IsPrecise(airport) ? "precision approach" : "nonprecision approach";

    /// <summary>Whether the approach has a glide path of its own.</summary>
    /// <param name="airport">An airport whose approach is given.</param>
    public static bool IsPrecise(Airport airport) => Precise.Any(word => airport.ApproachKind.Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>Words by which the book names an approach with a glide path of its own.</summary>
    private static readonly ImmutableArray<string> Precise = ["ILS", "GLS", "PAR", "MLS"];
}
