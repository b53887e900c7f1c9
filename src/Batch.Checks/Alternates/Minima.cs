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
    /// <param name="hours">Hours before and after the time through which the forecast counts.</param>
    /// <param name="isCeilingAsked">Whether the ceiling counts; else the visibility alone.</param>
    public static Finding Look(LegUnderCheck leg, Ruling ruling, Airport airport, Instant at, Feet ceiling, double visibilityM, string name, RuleAmount? by,
        double hours = 0, bool isCeilingAsked = true)
    {
        var around = Duration.FromHours(hours);
        var asked = isCeilingAsked ? $"{Words.Amount(ceiling)} and {Words.Visibility(visibilityM)}" : $"{Words.Visibility(visibilityM)} of visibility";
        if (leg.Forecasts.WorstBetween(airport.Ident, at - around, at + around) is not { } forecast)
        {
            return ruling.NotChecked($"no forecast for {airport.Ident} at {Words.LocalDay(at, airport.Zone)}{(hours > 0 ? $" and {Words.Time(around)} before and after" : "")} is in the Bulletins; the {name} are {asked}");
        }

        var cell = airport.Origin.Cell(nameof(Airport.ApproachMinimum));
        var when = hours > 0
            ? $"From {Words.Local(at - around, airport.Zone)} to {Words.Local(at + around, airport.Zone)}"
            : $"At {Words.Local(at, airport.Zone)}";
        var seen = $"{when} {airport.Ident} is forecast with {(forecast.Ceiling is { } layer ? Words.Amount(layer) + " of ceiling" : "no ceiling")} and {Words.Visibility(forecast.VisibilityMetres)}";
        Finding Below(double actual, double required, string unit) =>
            ruling.Trips(by, $"{seen}, below the {name} of {asked}.", cell) with
            {
                Required = required,
                Actual = actual,
                Margin = actual - required,
                Unit = unit
            };

        return isCeilingAsked && forecast.Ceiling is { } low && low < ceiling ? Below(low.Value, ceiling.Value, "ft")
            : forecast.VisibilityMetres < visibilityM ? Below(forecast.VisibilityMetres, visibilityM, "m")
            : ruling.Pass($"{seen}, at or above the {name} of {asked}.", by, cell);
    }
}
