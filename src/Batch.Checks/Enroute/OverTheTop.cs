using Batch.Checks.Alternates;
using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Enroute;

/// <summary>Passengers above cloud under VFR: a descent under VFR at the destination, and for a single engine on the way.</summary>
internal sealed class OverTheTop : ICheck
{
    private static readonly Duration Hour = Duration.FromHours(1);

    /// <inheritdoc/>
    public string Id => "ENR-04";

    /// <inheritdoc/>
    public string Title => "Over the top under VFR";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Bulletins: forecast at the departure", "Bulletins: forecast at the destination"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var times = leg.Plan.Times;
        return [At(leg, ruling, leg.Plan.To, times.Landing, times.Landing + Hour, isDestination: true),
            At(leg, ruling, leg.Plan.From, times.Takeoff, times.Takeoff, isDestination: false)];
    }

    private static Finding At(LegUnderCheck leg, Ruling ruling, Airport airport, Instant from, Instant to, bool isDestination)
    {
        var level = leg.Plan.Profile.Highest;
        var when = isDestination ? "to one hour after the landing" : "at the takeoff";
        if (leg.Forecasts.WorstBetween(airport.Ident, from, to) is not { } forecast)
        {
            return ruling.NotChecked(
                $"no forecast for {airport.Ident} {when} is in the Bulletins, so whether the cruise at {Words.Amount(level)} is above cloud is open");
        }

        if (forecast.Ceiling is not { } ceiling || ceiling + airport.Elevation >= level)
        {
            return ruling.Pass($"No ceiling below the cruise at {Words.Amount(level)} is forecast at {airport.Ident} {when}.");
        }

        var seen =
            $"The cruise at {Words.Amount(level)} under VFR with passengers is above a ceiling forecast {Words.Amount(ceiling)} over {airport.Ident} {when}";
        var cell = leg.Cell(nameof(Leg.Level));
        return ceiling.Value < ruling.Amount("ceiling").Value || forecast.VisibilityMetres < Visibilities.Metres(ruling.Amount("visibility"))
            ? ruling.Trips(ruling.Condition("weather under the ceiling"),
                $"{seen}, and with {Words.Visibility(forecast.VisibilityMetres)} of visibility VFR would not do under it. Wait, or fly under IFR.", cell)
            : ruling.Trips(ruling.Condition("descent under VFR"), $"{seen}: VFR would do under it, and whether a descent to beneath it{(leg.Type.Engines == 1 ? ", also with the engine stopped," : "")} stays possible is for the captain to see.", cell);
    }
}
