using Batch.Checks.Rules;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Alternates;

/// <summary>The forecast at the departure against the takeoff minima, and an alternate near enough where a return could not land.</summary>
internal sealed class DepartureWeather : ICheck
{
    /// <inheritdoc/>
    public string Id => "ALT-04";

    /// <inheritdoc/>
    public string Title => "Departure minima and takeoff alternate";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Bulletins: forecast at the departure", "Airports: approach minimum", "Airports: approach visibility",
        "Airports: takeoff visibility", "Legs: takeoff alternate, where a return could not land", "Types: engines"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var from = leg.Plan.From;
        var at = leg.Plan.Times.Takeoff;
        if (leg.Forecasts.WorstBetween(from.Ident, at, at) is not { } forecast)
        {
            return [ruling.NotChecked($"no forecast for {from.Ident} at {Words.LocalDay(at, from.Zone)} is in the Bulletins, so takeoff minima and the need of a takeoff alternate are open")];
        }

        return [.. Takeoff(from, ruling, forecast), Return(leg, ruling, forecast)];
    }

    /// <summary>Cruising speed of the leg [kt], true; 0 where it has no cruise.</summary>
    /// <param name="leg">The leg.</param>
    public static double CruiseKt(LegUnderCheck leg) => leg.Plan.Profile.Slices.Where(slice => slice.Phase == FlightPhase.Cruise)
        .Select(slice => slice.TrueAirspeedKt).DefaultIfEmpty(0).Max();

    private static IEnumerable<Finding> Takeoff(Airport from, Ruling ruling, ForecastPeriod forecast)
    {
        var usual = ruling.AmountOrNone("takeoff visibility");
        var own = ruling.Condition("takeoff minima of the airport");
        var cell = from.Origin.Cell(nameof(Airport.TakeoffVisibilityM));
        if (from.TakeoffVisibilityM is { } published && own is not null)
        {
            yield return ruling.AtLeast($"Visibility forecast at {from.Ident} for the takeoff", forecast.VisibilityMetres, published, "m",
                "of the airport's takeoff minimum", own, cell);
        }
        else if (usual is not null)
        {
            yield return ruling.AtLeast($"Visibility forecast at {from.Ident} for the takeoff", forecast.VisibilityMetres, Visibilities.Metres(usual), "m",
                "usual where the book names no takeoff minimum", usual, cell);
        }
        else if (own is not null)
        {
            yield return ruling.NotChecked($"the takeoff visibility of {from.Ident} is not given, and the rules name no usual one", cell);
        }
    }

    private static Finding Return(LegUnderCheck leg, Ruling ruling, ForecastPeriod forecast)
    {
        var from = leg.Plan.From;
        if (from is not { ApproachMinimum: { } ceiling, ApproachVisibilityM: { } visibility })
        {
            return ruling.NotChecked($"the landing minima of {from.Ident} are not given, so whether a takeoff alternate is needed is open",
                from.Origin.Cell(nameof(Airport.ApproachMinimum)));
        }

        if (!(forecast.Ceiling < ceiling) && forecast.VisibilityMetres >= visibility)
        {
            return ruling.Pass($"{from.Ident} is forecast at or above its landing minima at the takeoff; no takeoff alternate is asked for.");
        }

        if (ruling.AmountOrNone("time to the takeoff alternate") is not { } longest)
        {
            return ruling.NotChecked($"{from.Ident} is forecast below its landing minima, and how near a takeoff alternate must be depends on the number of engines of {leg.Type.Name}, which is not given",
                leg.TypeCell(nameof(AircraftType.Engines)));
        }

        var speed = CruiseKt(leg);
        if (speed <= 0)
        {
            return ruling.NotChecked(
                $"{from.Ident} is forecast below its landing minima, and the leg has no cruise whose speed would tell which takeoff alternate is near enough",
                leg.Cell(nameof(Leg.TakeoffAlternate)));
        }

        if (Nearest(leg) is not { } alternate)
        {
            return ruling.Trips(longest, $"{from.Ident} is forecast below its landing minima at the takeoff, and no takeoff alternate is named.",
                leg.Cell(nameof(Leg.TakeoffAlternate)));
        }

        return ruling.AtMost(
            $"{from.Ident} is forecast below its landing minima at the takeoff. The way to {alternate.Airport.Ident}, {(alternate.IsNamed ? "the takeoff alternate" : "the nearest airport filed (no takeoff alternate is named)")}, in still air at cruising speed",
            alternate.Nm / speed * 60,
            longest.Value,
            "min",
            "limit for a takeoff alternate",
            longest,
            leg.Cell(nameof(Leg.TakeoffAlternate)));
    }

    /// <summary>The named takeoff alternate; where none is named the nearest of destination and alternates.</summary>
    private static (Airport Airport, double Nm, bool IsNamed)? Nearest(LegUnderCheck leg)
    {
        var named = leg.Plan.Leg.TakeoffAlternate;
        var idents = named.Length > 0 ? [named] : leg.Plan.Alternates.Select(alternate => alternate.Airport).Append(leg.Plan.To.Ident);
        var near = idents.Select(ident => leg.Week.Plan.Input.Airports.GetValueOrDefault(ident)).OfType<Airport>()
            .Where(airport => !string.Equals(airport.Ident, leg.Plan.From.Ident, StringComparison.OrdinalIgnoreCase))
            .Select(airport => (Airport: airport, new GeodesicPath(leg.Plan.From.Position, airport.Position).Length.Value, named.Length > 0))
            .OrderBy(found => found.Value).ToImmutableArray();
        return near.IsEmpty ? null : near[0];
    }
}
