using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>A piece of cargo at another baggage station.</summary>
internal sealed class OtherStation : IRemedyKind
{
    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("WB-04", "WB-05", "WB-07");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check);

    private static IEnumerable<WeekEdit> Edits(Failure failure) =>
        from line in failure.Cargo.OrderByDescending(line => line.Weight.Value)
        let now = Goods.StationOf(failure.Plan, line.Origin.Cell(nameof(CargoLine.Weight)))
        from station in failure.Plan.Type.Stations
        where station.Kind == StationKind.Bags && station.Name != now && (station.Maximum is not { } maximum || line.Weight <= maximum)
        select new WeekEdit($"Stow {line.What} at {station.Name} instead of {(now.Length > 0 ? now : "nowhere")}", Disruptions.Paper)
            .With(line, line with { Station = station.Name }, (nameof(CargoLine.Station), station.Name));
}
