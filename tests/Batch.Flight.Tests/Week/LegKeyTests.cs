using Batch.Flight.Week;

namespace Batch.Flight.Tests.Week;

public sealed class LegKeyTests
{
    [Fact]
    public void Trips_stand_in_the_order_in_which_people_count()
    {
        string[] trips = ["", "9", "T", "T1", "T01", "T1a", "T01a", "T1b", "T9", "T10", "T10-2", "T10-11", "T001x", "t2", "row 4", "row 10"];
        string[] expected = ["", "9", "T", "T01", "T1", "T01a", "T1a", "T1b", "T001x", "T9", "T10", "T10-2", "T10-11", "row 4", "row 10", "t2"];
        Assert.Equal(expected, trips.Select(trip => new LegKey(trip, 1)).Order().Select(key => key.Trip));
    }

    // An order that is not one makes a sort throw, or give another week each time.
    [Fact]
    public void The_order_is_one()
    {
        string[] parts = ["", "0", "00", "1", "01", "10", "a", "b"];
        LegKey[] keys = [.. from a in parts from b in parts from c in parts select new LegKey(a + b + c, 1)];
        LegKey[] ordered = [.. keys.Distinct().Order()];
        for (var i = 0; i < ordered.Length; i++)
        {
            for (var j = 0; j < ordered.Length; j++) Assert.Equal(i.CompareTo(j), Math.Sign(ordered[i].CompareTo(ordered[j])));
        }
    }

    [Fact]
    public void Legs_of_a_trip_stand_by_number_then_by_row() =>
        Assert.Equal(["T1, row 7", "T1, row 12", "T1/2", "T1/10"],
            new[] { new LegKey("T1", 10), new LegKey("T1", 0) { Row = 12 }, new LegKey("T1", 2), new LegKey("T1", 0) { Row = 7 } }.Order()
                .Select(key => key.ToString()));
}
