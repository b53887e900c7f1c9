using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Alternates;

/// <summary>A forecast against a ceiling and a visibility.</summary>
internal static class Minima
{
    /// <summary>The answer.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling.</param>
    /// <param name="airport">Airport.</param>
    /// <param name="at">When.</param>
    /// <param name="ceiling">Least ceiling above the airport [ft].</param>
    /// <param name="visibilityM">Least visibility [m].</param>
    /// <param name="name">What the minima are, such as <c>landing minima</c>.</param>
    /// <param name="by">Part they come from; null for the check as a whole.</param>
    public static Finding Look(LegUnderCheck leg, Ruling ruling, Airport airport, Instant at, Feet ceiling, double visibilityM, string name, RuleAmount? by)
    {
        if (leg.Forecasts.WorstBetween(airport.Ident, at, at) is not { } forecast)
        {
            return ruling.NotChecked($"no forecast for {airport.Ident} at {Words.Clock(at.InZone(airport.Zone).TimeOfDay)} is known; the {name} are {Words.Amount(ceiling)} and {Words.Amount(visibilityM, "m")}");
        }

        var seen = $"{(forecast.Ceiling is { } layer ? Words.Amount(layer) + " of ceiling" : "no ceiling")} and {Words.Amount(forecast.VisibilityMetres, "m")}";
        return forecast.Ceiling is { } low && low < ceiling || forecast.VisibilityMetres < visibilityM
            ? ruling.Trips(by, $"{airport.Ident} is forecast with {seen}, below the {name} of {Words.Amount(ceiling)} and {Words.Amount(visibilityM, "m")}.", airport.Origin.Cell(nameof(Airport.ApproachMinimum)))
            : ruling.Pass($"{airport.Ident} is forecast with {seen}, at or above the {name} of {Words.Amount(ceiling)} and {Words.Amount(visibilityM, "m")}.", by);
    }
}
