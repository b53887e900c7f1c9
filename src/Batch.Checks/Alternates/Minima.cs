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
            return ruling.NotChecked($"no forecast for {airport.Ident} at {Words.LocalDay(at, airport.Zone)} is in the Bulletins; the {name} are {Words.Amount(ceiling)} and {Words.Visibility(visibilityM)}");
        }

        var seen = $"{(forecast.Ceiling is { } layer ? Words.Amount(layer) + " of ceiling" : "no ceiling")} and {Words.Visibility(forecast.VisibilityMetres)}";
        return forecast.Ceiling is { } low && low < ceiling || forecast.VisibilityMetres < visibilityM
            ? ruling.Trips(by, $"At {Words.Local(at, airport.Zone)} {airport.Ident} is forecast with {seen}, below the {name} of {Words.Amount(ceiling)} and {Words.Visibility(visibilityM)}.", airport.Origin.Cell(nameof(Airport.ApproachMinimum)))
            : ruling.Pass($"At {Words.Local(at, airport.Zone)} {airport.Ident} is forecast with {seen}, at or above the {name} of {Words.Amount(ceiling)} and {Words.Visibility(visibilityM)}.", by, airport.Origin.Cell(nameof(Airport.ApproachMinimum)));
    }
}
