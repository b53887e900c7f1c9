using Batch.Checks.Rules;
using Batch.Flight.Fleet;

namespace Batch.Checks.Loading;

/// <summary>Load of every station against its maximum, and a place for every bag.</summary>
internal sealed class StationLimits : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-07";

    /// <inheritdoc/>
    public string Title => "Stations and stowage";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Stations: maximum of a bag station", "Stations: maximum of a row", "Manifest: bags", "Cargo"];

    /// <inheritdoc/>
    public string Actor => "ramp";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var load = leg.Plan.Load;
        var trips = 0;
        foreach (var (station, weight, persons) in load.Stations)
        {
            var cell = station.Origin.Cell(nameof(Station.Maximum));
            if (station.Maximum is { } maximum && weight - maximum > new Pounds(Ruling.Noise))
            {
                trips++;
                yield return ruling.AtMost($"Load at {station.Name}", weight.Value, maximum.Value, "lb", "maximum of that station", null, cell);
            }
            else if (station.Maximum is null && station.Kind == StationKind.Bags && weight > Pounds.Zero)
            {
                trips++;
                yield return ruling.NotChecked(
                    $"the maximum load of {station.Name} on {leg.Type.Name} is not given, and {Words.Amount(weight)} lie there", cell);
            }

            if (station.Kind != StationKind.Bags && persons > station.Seats)
            {
                trips++;
                yield return ruling.AtMostSaid(
                    $"{Words.Count(persons, "person is", "persons are")} seated at {station.Name}, which has {Words.Count(station.Seats, "seat", "seats")}.",
                    persons, station.Seats, "persons", null, station.Origin.Cell(nameof(Station.Seats)));
            }
        }

        if (load.WithoutStation > Pounds.Zero)
        {
            trips++;
            yield return ruling.Trips($"{Words.Amount(load.WithoutStation)} of bags or cargo have no place: every station is full.",
                [.. load.Items.Where(item => item.Station.Length == 0).Select(item => item.Cell)])
                with
            { Actual = load.WithoutStation.Value, Margin = -load.WithoutStation.Value, Unit = "lb" };
        }

        if (load.WithoutSeat > 0)
        {
            trips++;
            yield return ruling.NotChecked($"{Words.Count(load.WithoutSeat, "person has", "persons have")} no seat (WB-06) and {(load.WithoutSeat == 1 ? "stands" : "stand")} at no station, so the loads of the rows are not whole",
                leg.TypeCell(nameof(Flight.Fleet.AircraftType.Seats)));
        }

        if (trips == 0)
        {
            yield return ruling.Pass("Every station is within its maximum, and everything has a place.");
        }
    }
}
