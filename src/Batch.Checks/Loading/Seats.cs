using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Checks.Loading;

/// <summary>A seat for every person of two years or more.</summary>
internal sealed class Seats : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-06";

    /// <inheritdoc/>
    public string Title => "Seats";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Manifest", "Types: seats, or Stations: seats"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var load = leg.Plan.Load;
        var seated = load.Items.Count(item => item is { Kind: LoadItemKind.Passenger, TakesSeat: true });
        if (load.WithoutSeat > 0)
        {
            yield return ruling.Trips($"{Words.Count(load.WithoutSeat, "passenger", "passengers")} aged two or more {(load.WithoutSeat == 1 ? "has" : "have")} no seat{(leg.Type.Seats is { } there ? $": {leg.Type.Name} has {Words.Count(there, "passenger seat", "passenger seats")}" : "")}.",
                leg.TypeCell(nameof(AircraftType.Seats)))
                with
            { Actual = load.WithoutSeat, Margin = -load.WithoutSeat, Unit = "persons" };
        }
        else if (load.Passengers > 0 && leg.Type.Stations.All(station => station.Seats == 0) && leg.Type.Seats is null)
        {
            yield return ruling.NotChecked($"neither the seats of {leg.Type.Name} nor its seat stations are given", leg.TypeCell(nameof(AircraftType.Seats)));
        }
        else
        {
            yield return ruling.Pass($"Each of the {Words.Count(seated, "passenger", "passengers")} who need one has a seat{(load.Passengers > seated ? $"; {Words.Count(load.Passengers - seated, "infant", "infants")} on a lap" : "")}.");
        }

        if (leg.Type.Seats is { } seats && seated > seats)
        {
            yield return ruling.AtMostSaid($"{Words.Count(seated, "passenger needs a seat", "passengers need a seat")}, and {leg.Type.Name} has {Words.Count(seats, "passenger seat", "passenger seats")}.",
                seated, seats, "persons", null, leg.TypeCell(nameof(AircraftType.Seats)));
        }
    }
}
