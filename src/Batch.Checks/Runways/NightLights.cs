using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Runways;

/// <summary>Runway lights for a takeoff or landing at night.</summary>
internal sealed class NightLights : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-08";

    /// <inheritdoc/>
    public string Title => "Lights at night";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Airports: lighting, or Runways: lighted", "Notices"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var light = leg.Plan.Daylight;
        if (!light.IsNightTakeoff && !light.IsNightLanding)
        {
            return [ruling.NotApplicable("Takeoff and landing are by day.")];
        }

        var answers = new List<Finding>();
        if (light.IsNightTakeoff)
        {
            answers.Add(At(leg, ruling, leg.Plan.From, leg.Plan.Departure, leg.Plan.Times.Takeoff, "takeoff"));
        }

        if (light.IsNightLanding)
        {
            answers.Add(At(leg, ruling, leg.Plan.To, leg.Plan.Arrival, leg.Plan.Times.Landing, "landing"));
        }

        return answers;
    }

    private static Finding At(LegUnderCheck leg, Ruling ruling, Airport airport, RunwayResult result, Instant at, string what)
    {
        var runway = (result as RunwayResult.Computed)?.Use.Runway;
        var place = runway is null ? airport.Ident : $"{airport.Ident} runway {runway.Ident}";
        var cell = airport.Origin.Cell(nameof(Airport.Lighting));
        if (leg.Week.Notices(airport.Ident, at).Concat(runway is null ? [] : leg.Week.Notices(airport.Ident, runway.Ident, at))
            .FirstOrDefault(notice => notice.Effect == NoticeEffect.NoLights) is { } notice)
        {
            return ruling.Trips($"The {what} at {airport.Ident} is at night, and a notice says that the lights are out.", notice.Origin.ToString());
        }

        var lighting = airport.Lighting.Trim().ToUpperInvariant();
        if (runway?.Lighted == false || lighting == "NONE" || runway is null && airport.Runways.Length > 0 && airport.Runways.All(any => any.Lighted == false))
        {
            return ruling.Trips($"The {what} at {place} is at night, and the book says that it is not lighted.", cell,
                runway?.Origin.Cell(nameof(Runway.Lighted)) ?? "");
        }

        if (lighting == "ON REQUEST")
        {
            return ruling.Note($"The {what} at {place} is at night; the lights are on request.", cell);
        }

        return runway?.Lighted == true || lighting.Length > 0
            ? ruling.Pass($"The {what} at {place} is at night, and it is lighted.", null, cell, runway?.Origin.Cell(nameof(Runway.Lighted)) ?? "")
            : ruling.NotChecked($"the {what} at {place} is at night, and whether it is lighted is not given", cell);
    }
}
