using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Crews;

/// <summary>Whether there are pilots enough for the type, the rules and the passengers.</summary>
internal sealed class CrewComposition : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-10";

    /// <inheritdoc/>
    public string Title => "Crew composition";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Types: required pilots", "Types: seats", "Aircraft: autopilot, with one pilot"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var two = leg.Plan.Leg.SecondPilot.Length > 0;
        var cell = leg.Cell(nameof(Leg.SecondPilot));
        yield return leg.Type.RequiredPilots switch
        {
            null => ruling.NotChecked($"the number of pilots that {leg.Type.Name} requires is not given", leg.TypeCell(nameof(AircraftType.RequiredPilots))),
            > 1 when !two => ruling.Trips(ruling.Condition("required pilots"), $"{leg.Type.Name} requires two pilots, and no second pilot is named.", cell),
            _ => ruling.Pass($"{(two ? "Two pilots" : "One pilot")}, as {leg.Type.Name} requires.", null, leg.TypeCell(nameof(AircraftType.RequiredPilots))),
        };
        if (!two && ruling.Condition("second pilot under IFR") is { } underIfr)
        {
            yield return leg.Aircraft.AutopilotForOnePilot switch
            {
                null => ruling.NotChecked(
                    $"one pilot flies passengers under IFR, and whether {leg.Aircraft.Registration} has an autopilot approved in place of the second is not given",
                    leg.Aircraft.Origin.Cell(nameof(Aircraft.AutopilotForOnePilot))),
                true => ruling.Pass($"One pilot under IFR: {leg.Aircraft.Registration} has an autopilot approved in place of the second.", underIfr,
                    leg.Aircraft.Origin.Cell(nameof(Aircraft.AutopilotForOnePilot))),
                false => ruling.Trips(underIfr,
                    $"Passengers fly under IFR with one pilot, and {leg.Aircraft.Registration} has no autopilot approved in place of the second.", cell),
            };
        }

        if (!two && ruling.Condition("second pilot by seats") is { } bySeats)
        {
            yield return ruling.Trips(bySeats,
                $"{leg.Type.Name} has {Words.Count(leg.Type.Seats ?? 0, "passenger seat", "passenger seats")}, which asks for a second pilot.", cell);
        }

        var inPilotSeat = leg.Plan.Load.Items.Count(item => item.Kind == LoadItemKind.Passenger
            && leg.Type.Stations.Any(station => station.Kind == StationKind.Crew && station.Name == item.Station));
        if (inPilotSeat > 0 && ruling.Condition("passenger in a pilot seat") is { } pilotSeat)
        {
            yield return ruling.Trips(pilotSeat, $"{Words.Count(inPilotSeat, "passenger sits", "passengers sit")} in a pilot seat.",
                [.. leg.Plan.Load.Items.Where(item => item.Kind == LoadItemKind.Passenger).Select(item => item.Cell)]);
        }
    }
}
