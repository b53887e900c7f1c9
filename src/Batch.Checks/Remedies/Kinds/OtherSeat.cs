using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>One passenger, then all, in other seats: forward where the centre of gravity is too far aft, and the other way round.</summary>
internal sealed class OtherSeat : IRemedyKind
{
    private const int MostMoves = 24;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("WB-04", "WB-05", "WB-07");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) =>
        trials.First(OneMoved(failure).Take(MostMoves), failure.Check) ?? trials.First(AllMoved(failure), failure.Check);

    private static IEnumerable<(ManifestLine Line, LoadItem Item)> Seated(Failure failure) =>
        from line in failure.Manifest
        let cells = new[] { line.Origin.Cell(nameof(ManifestLine.Weight)), line.Origin.Cell("") }
        let item = failure.Plan.Load.Items.FirstOrDefault(item => item is { Kind: LoadItemKind.Passenger, TakesSeat: true }
            && cells.Contains(item.Cell, StringComparer.Ordinal))
        where item is not null
        select (line, item);

    private static IEnumerable<WeekEdit> OneMoved(Failure failure)
    {
        var free = failure.Plan.Load.Stations.Where(stand => stand.Station.Kind == StationKind.Seat && stand.Persons < stand.Station.Seats).ToImmutableArray();
        return from seated in Seated(failure)
               from stand in free
               where stand.Station.Name != seated.Item.Station
               orderby Math.Abs(seated.Item.Weight.Value * (stand.Station.Arm - seated.Item.Arm).Value) descending
               select Move(new WeekEdit($"Seat one passenger in {stand.Station.Name} instead of {seated.Item.Station}", Disruptions.Paper), seated.Line,
                   stand.Station);
    }

    private static WeekEdit Move(WeekEdit edit, ManifestLine line, Station station) =>
        edit.With(line, line with { Seat = station.Name }, (nameof(ManifestLine.Seat), station.Name));

    private static IEnumerable<WeekEdit> AllMoved(Failure failure)
    {
        var spread = failure.Plan.Load.Spread;
        if (spread is null)
        {
            yield break;
        }

        foreach (var (isForward, outcome) in new[] { (true, spread.Forward), (false, spread.Aft) })
        {
            if (!outcome.IsInside)
            {
                continue;
            }

            var seats = failure.Plan.Type.Stations.Where(station => station.Kind == StationKind.Seat)
                .SelectMany(station => Enumerable.Repeat(station, station.Seats))
                .OrderBy(station => isForward ? station.Arm.Value : -station.Arm.Value);
            yield return Seated(failure).OrderByDescending(seated => seated.Item.Weight.Value).Zip(seats)
                .Aggregate(new WeekEdit($"Seat the passengers as far {(isForward ? "forward" : "aft")} as they can, the heaviest first", Disruptions.Paper),
                    (edit, pair) => Move(edit, pair.First.Line, pair.Second));
        }
    }
}
