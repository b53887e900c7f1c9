using Batch.Checks.Alternates;
using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Enroute;

/// <summary>Ceiling and visibility at departure and destination for a leg under VFR.</summary>
internal sealed class VisualWeather : ICheck
{
    /// <inheritdoc/>
    public string Id => "ENR-07";

    /// <inheritdoc/>
    public string Title => "VFR weather";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Bulletins: forecast at the departure", "Bulletins: forecast at the destination", "Airports: airspace"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) =>
    [
        At(leg, ruling, leg.Plan.From, leg.Plan.Times.Takeoff, leg.Plan.Daylight.IsNightTakeoff, "takeoff"),
        At(leg, ruling, leg.Plan.To, leg.Plan.Times.Landing, leg.Plan.Daylight.IsNightLanding, "landing"),
    ];

    private static Finding At(LegUnderCheck leg, Ruling ruling, Airport airport, Instant at, bool isNight, string what)
    {
        var ceiling = ruling.Amount("ceiling");
        var visibility = ruling.Amount("visibility");
        if (leg.Forecasts.WorstBetween(airport.Ident, at, at) is not { } forecast)
        {
            return ruling.NotChecked($"no forecast for {airport.Ident} at the {what}, {Words.LocalDay(at, airport.Zone)}, is in the Bulletins; VFR wants {Words.Amount(ceiling.Value, "ft")} and {Words.Amount(visibility.Value, visibility.Unit)}");
        }

        var seen = $"{(forecast.Ceiling is { } layer ? Words.Amount(layer) + " of ceiling" : "no ceiling")} and {Words.Visibility(forecast.VisibilityMetres)}";
        var isLow = forecast.Ceiling?.Value < ceiling.Value;
        if (!isLow && forecast.VisibilityMetres >= Visibilities.Metres(visibility))
        {
            return ruling.Pass($"{airport.Ident} is forecast with {seen} at the {what}, enough for VFR.");
        }

        Finding Below(RuleAmount by, string where) =>
            ruling.Trips(by, $"{airport.Ident} is forecast with {seen} at the {what}, below what VFR wants{where}: {Words.Amount(by.Value, by.Unit)}{(by.Unit == "ft" ? " of ceiling" : " of visibility")}.", airport.Origin.Cell(nameof(Airport.Airspace)));

        var outside = new[] { ruling.AmountOrNone(isNight
            ? "visibility outside controlled airspace by night"
            : "visibility outside controlled airspace by day"), isLow
                ? ruling.AmountOrNone("visibility outside controlled airspace with a low ceiling")
                : null }
            .OfType<RuleAmount>().OrderByDescending(Visibilities.Metres).FirstOrDefault();
        if (outside is not null && airport.Airspace is "G" or "")
        {
            return forecast.VisibilityMetres < Visibilities.Metres(outside)
                ? Below(outside, airport.Airspace == "G" ? " outside controlled airspace" : " even outside controlled airspace")
                : airport.Airspace == "G"
                    ? ruling.Pass($"{airport.Ident} is forecast with {seen} at the {what}, enough for VFR outside controlled airspace.", outside)
                : ruling.NotChecked(
                    $"{airport.Ident} is forecast with {seen} at the {what}; whether that is enough depends on the class of the airspace, which is not given",
                    airport.Origin.Cell(nameof(Airport.Airspace)));
        }

        return Below(isLow ? ceiling : visibility, airport.Airspace.Length > 0 ? $" in airspace {airport.Airspace}" : "");
    }
}
