using System.Globalization;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Flight.Tests.Fleet;

/// <summary>Interpolation and corrections as others have worked them.</summary>
public sealed class PublishedPerformanceTests
{
    private static readonly CheckFile Published = CheckFile.Read("performance-published.csv");
    private static readonly CheckFile Computed = CheckFile.Read("performance-computed.csv");

    public static IEnumerable<object[]> ChartIds() => Published.Ids(row => row.Has("axis"));

    public static IEnumerable<object[]> HeadwindIds() => Published.Ids(row => row["kind"] == "landing_distance" && !row.Has("axis"));

    public static IEnumerable<object[]> CruiseIds() => Computed.Ids(row => row["kind"] == "cruise_bilinear");

    public static IEnumerable<object[]> ClimbIds() => Computed.Ids(row => row["kind"] == "climb_difference");

    public static IEnumerable<object[]> OutsideIds() => Computed.Ids(row => row["kind"] == "cruise_out_of_table");

    [Theory]
    [MemberData(nameof(ChartIds))]
    public void A_printed_table_gives_the_printed_answer(string id)
    {
        var row = Published[id];
        var table = Some.Table(id, [row["axis"]], row["value_names"].Split(' '),
            [.. row["rows"].Split(';').Select(line => line.Split(':')).Select(part => (Numbers(part[0]), Numbers(part[1])))]);
        var queries = Numbers(row["query"]);
        var answers = Numbers(row["answers"]);
        // Two queries ask for what lies between them, as from the field to the cruise level.
        var read = Read(table, queries[^1]);
        var before = queries.Length == 2 ? Read(table, queries[0]) : new double[answers.Length];
        for (var i = 0; i < answers.Length; i++) Assert.Equal(answers[i], read[i] - before[i], row.Number("tolerance"));
    }

    [Theory]
    [MemberData(nameof(HeadwindIds))]
    public void A_printed_landing_with_headwind_comes_out_when_twice_the_wind_is_half_credited(string id)
    {
        var (given, row) = (Published[id].Parts("query"), Published[id]);
        var distance = Number(given["over_50ft"]);
        var table = Some.Table(id, ["weight [lb]", "pressure altitude [ft]", "temperature [°C]"], ["ground roll [ft]", "over obstacle [ft]"],
            ([double.NaN, Number(given["pa"]), double.NaN], [distance, distance]));
        var result = RunwayPlanner.Landing(Some.RunwayRequest with
        {
            Airport = Some.Xand with { Runways = [Some.Runway("09", 90, 2000) with { ThresholdElevation = new Feet(Number(given["pa"])) }] },
            Type = new AircraftType
            {
                Name = "T",
                Corrections = new RunwayCorrections { LandingHeadwindPerKnot = 0.1 / 4 },
                Tables = new PerformanceTables { Landing = Some.Flaps(("", table)) },
            },
            AltimeterSetting = null,
            Air = Some.Surface(90, 2 * Number(given["headwind"]), 5),
        });
        Assert.Equal(row.Number("answers"), Assert.IsType<RunwayResult.Computed>(result).Use.Required.Value, row.Number("tolerance"));
    }

    [Theory]
    [MemberData(nameof(CruiseIds))]
    public void A_cruise_table_is_read_on_both_axes(string id)
    {
        var row = Computed[id];
        var query = row.Parts("query");
        var read = new double[2];
        Assert.True(Cruise(row).Read([Number(query["isa_dev"]), Number(query["pa"])], read).IsInside);
        Assert.Equal(Number(row.Parts("result")["tas"]), read[0], 1e-4);
        Assert.Equal(Number(row.Parts("result")["ff"]), read[1], 1e-4);
    }

    [Theory]
    [MemberData(nameof(ClimbIds))]
    public void A_climb_is_the_difference_of_two_readings(string id)
    {
        var row = Computed[id];
        var lines = row["table"][(row["table"].IndexOf(' ', StringComparison.Ordinal) + 1)..].Split(';').Select(line => line.Split(':'));
        var table = Some.Table(id, ["pressure altitude [ft]"], ["time [min]", "fuel [lb]", "distance [NM]"],
            [.. lines.Select(part => (Numbers(part[0]), Numbers(part[1])))]);
        var (from, to) = (Read(table, Number(row.Parts("query")["from"])), Read(table, Number(row.Parts("query")["to"])));
        var answers = row.Parts("result");
        Assert.Equal(Number(answers["time"]), to[0] - from[0], 1e-4);
        Assert.Equal(Number(answers["fuel"]), to[1] - from[1], 1e-4);
        Assert.Equal(Number(answers["dist"]), to[2] - from[2], 1e-4);
    }

    [Theory]
    [MemberData(nameof(OutsideIds))]
    public void A_query_outside_is_told(string id)
    {
        var row = Computed[id];
        var query = row.Parts("query");
        var table = Cruise(row);
        var reading = table.Read([Number(query["isa_dev"]), Number(query["pa"])], new double[table.ValueNames.Length]);
        Assert.False(reading.IsInside);
        Assert.Equal(reading.Axis == 0 ? Number(query["isa_dev"]) : Number(query["pa"]), reading.Asked);
    }

    // "tas_kt by pa for isa_dev (-20,0,20): 2000:(158, 162, 166); ... | fuel_lb_h: 2000:(92, 89, 86); ..."
    private static PerformanceTable Cruise(CheckRow row)
    {
        var parts = row["table"].Split('|');
        var head = parts[0][..parts[0].IndexOf(": ", StringComparison.Ordinal)];
        var deviations = Numbers(head[(head.IndexOf('(', StringComparison.Ordinal) + 1)..]);
        var values = parts.Select(part => part[(part.IndexOf(": ", StringComparison.Ordinal) + 2)..].Split(';')
            .Select(line => line.Split(':')).ToDictionary(line => Number(line[0]), line => Numbers(line[1]))).ToArray();
        return Some.Table(row.Id, ["ISA deviation [K]", "pressure altitude [ft]"], [.. values.Select((_, i) => i == 0 ? "tas" : "flow")],
        [
            .. from altitude in values[0].Keys
               from i in Enumerable.Range(0, deviations.Length)
               select (new[] { deviations[i], altitude }, values.Select(value => value[altitude][i]).ToArray()),
        ]);
    }

    private static double[] Read(PerformanceTable table, double key)
    {
        var values = new double[table.ValueNames.Length];
        Assert.True(table.Read([key], values).IsInside);
        return values;
    }

    private static double[] Numbers(string text) => [.. text.Split([' ', ',', '(', ')', ':'], StringSplitOptions.RemoveEmptyEntries).Select(Number)];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
