namespace Batch.Sheets.Board;

/// <summary>Puts what overlaps under each other, so that an aircraft or a person booked twice is seen.</summary>
internal static class Lanes
{
    /// <summary>The lane of each time, 0 for the first: the first lane that is free at its start.</summary>
    /// <param name="times">Start and end, in order of start.</param>
    public static ImmutableArray<int> Of(IEnumerable<(Instant From, Instant To)> times)
    {
        var free = new List<Instant>();
        var lanes = ImmutableArray.CreateBuilder<int>();
        foreach (var (from, to) in times)
        {
            var lane = free.FindIndex(until => until <= from);
            if (lane < 0)
            {
                lane = free.Count;
                free.Add(to);
            }

            free[lane] = to;
            lanes.Add(lane);
        }

        return lanes.DrainToImmutable();
    }
}
