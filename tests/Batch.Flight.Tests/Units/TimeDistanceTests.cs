using System.Globalization;
using Batch.Testing;

namespace Batch.Flight.Tests.Units;

public sealed class TimeDistanceTests
{
    private static readonly CheckFile Problems = CheckFile.Read("time-distance.csv");

    public static IEnumerable<object[]> NavigationIds => Problems.Ids(r => r["kind"] != "trip_fuel");

    public static IEnumerable<object[]> FuelIds => Problems.Ids(r => r["kind"] == "trip_fuel");

    [Theory]
    [MemberData(nameof(NavigationIds))]
    public void Time_speed_and_distance_are_as_published(string id)
    {
        var row = Problems[id];
        var (given, answers) = (row.Parts("inputs"), row.Parts("outputs"));
        switch (row["kind"])
        {
            case "time":
                var time = new NauticalMiles(Number(given["distance"])) / new Knots(Number(given["gs"]));
                var inMinutes = answers["time"].EndsWith("min", StringComparison.Ordinal);
                Assert.Equal(Number(answers["time"]), inMinutes ? time.TotalMinutes : time.TotalHours, inMinutes ? 1 : 1e-9);
                break;
            case "distance":
                var clock = given["time"].Split(':').Select(Number).ToArray();
                Assert.Equal(Number(answers["distance"]), (new Knots(Number(given["gs"])) * Duration.FromMinutes(clock[0] * 60 + clock[1])).Value, 1e-9);
                break;
            default:
                Assert.Equal("groundspeed", row["kind"]);
                var took = new NauticalMiles(Number(given["distance"])) / new Knots(Number(answers["gs"]));
                Assert.Equal(Number(given["time"]), took.TotalHours, 1e-9);
                break;
        }
    }

    [Theory]
    [MemberData(nameof(FuelIds))]
    public void Fuel_by_time_and_flow_is_as_computed_outside(string id)
    {
        var row = Problems[id];
        var (given, answers) = (row.Parts("inputs"), row.Parts("outputs"));
        var legs = given["legs NM@kt"].Split(',').Aggregate(Duration.Zero, (sum, leg) => sum + Time(leg));
        var flow = new PoundsPerHour(Number(given["fuel_flow"]));
        var (trip, alternate, reserve) = (flow * legs, flow * Time(given["alternate"]), flow * Duration.FromMinutes(Number(given["reserve"])));
        var tolerance = row.Number("tolerance");
        Assert.Equal(Number(answers["time_min"]), legs.TotalMinutes, tolerance);
        Assert.Equal(Number(answers["trip"]), trip.Value, tolerance);
        Assert.Equal(Number(answers["alternate"]), alternate.Value, tolerance);
        Assert.Equal(Number(answers["reserve"]), reserve.Value, tolerance);
        Assert.Equal(Number(answers["required"]), (new Pounds(Number(given["taxi"])) + trip + alternate + reserve).Value, tolerance);
    }

    private static Duration Time(string distanceAtSpeed)
    {
        var parts = distanceAtSpeed.Split('@');
        return new NauticalMiles(Number(parts[0])) / new Knots(Number(parts[1]));
    }

    private static double Number(string text) => double.Parse(text.Trim().Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture);
}
