using System.Globalization;
using Batch.Flight.Route;
using Batch.Testing;

namespace Batch.Flight.Tests.Route;

public sealed class RouteElementTests
{
    private static readonly CheckFile File = CheckFile.Read("route-elements.csv");

    public static IEnumerable<object[]> Of(string field) => File.Ids(row => row["field"] == field);

    [Theory]
    [MemberData(nameof(Of), "coordinate")]
    public void Coordinates_read_as_published(string id)
    {
        var row = File[id];
        var point = CoordinateText.Read(row["token"]);
        if (row["valid"] == "no")
        {
            Assert.Null(point);
            Assert.True(CoordinateText.LooksLikeOne(row["token"]));
            Assert.NotEmpty(CoordinateText.Complaint(row["token"]));
            return;
        }

        Assert.NotNull(point);
        Assert.Equal(Number(row, "lat"), point.Value.LatitudeDeg, 0.0000005);
        Assert.Equal(Number(row, "lon"), point.Value.LongitudeDeg, 0.0000005);
    }

    [Theory]
    [MemberData(nameof(Of), "speed")]
    public void Speeds_read_as_published(string id)
    {
        var row = File[id];
        var group = SpeedLevelGroup.Read(row["token"] + "F160");
        Assert.Equal(row["valid"] == "yes", group is not null);
        if (group is null) return;
        var (value, unit) = Split(row.Parts("meaning")["tas"]);
        Assert.NotNull(group.TrueAirspeed);
        Assert.Equal(value, group.TrueAirspeed.Value.Value * (unit == "km/h" ? 1.852 : 1), 1e-9);
    }

    [Theory]
    [MemberData(nameof(Of), "level")]
    public void Levels_read_as_published(string id)
    {
        var row = File[id];
        var group = SpeedLevelGroup.Read("N0250" + row["token"]);
        Assert.Equal(row["valid"] == "yes", group is not null);
        if (group is null) return;
        Assert.Equal(LevelFt(row), group.Level?.Value);
    }

    [Theory]
    [MemberData(nameof(Of), "point_or_change")]
    public void Changes_at_a_point_read_as_published(string id)
    {
        var row = File[id];
        var parts = row["token"].Split('/');
        if (parts[0] == "C")
        {
            // A cruise climb is understood and refused.
            var refused = Assert.IsType<RouteResult.Unresolved>(RouteReader.Resolve(Some.Book(), Some.Xand, Some.Xbel, row["token"], Some.Day, null));
            Assert.Contains("cruise climb", refused.Why, StringComparison.Ordinal);
            return;
        }

        var group = SpeedLevelGroup.Read(parts[1]);
        Assert.NotNull(group);
        Assert.Equal(LevelFt(row), group.Level?.Value);
        var meaning = row.Parts("meaning");
        if (meaning.TryGetValue("mach", out var mach)) Assert.Equal(double.Parse(mach, CultureInfo.InvariantCulture), group.Mach);
        else Assert.Equal(Split(meaning["tas"]).Value, group.TrueAirspeed?.Value);
        if (!meaning.ContainsKey("lat")) return;
        var point = CoordinateText.Read(parts[0]);
        Assert.NotNull(point);
        Assert.Equal(Number(row, "lat"), point.Value.LatitudeDeg, 0.0000005);
        Assert.Equal(Number(row, "lon"), point.Value.LongitudeDeg, 0.0000005);
    }

    [Theory]
    [MemberData(nameof(Of), "route_designator")]
    [MemberData(nameof(Of), "significant_point")]
    public void A_designator_that_the_book_knows_is_read_as_what_it_is(string id)
    {
        var row = File[id];
        var isAirway = row["field"] == "route_designator";
        var fixes = new[] { Some.Fix(isAirway ? "NORRA" : row["token"], 41.25, -39.5), Some.Fix("TIDES", 41.5, -38.5) };
        Airway airway = new()
        {
            Name = row["token"],
            Points = [.. fixes.Select(fix => new AirwayPoint(fix.Ident, null, AirwayDirection.Both, Origin.None))],
        };
        var book = new NavigationBook([Some.Xand, Some.Xbel], fixes, isAirway ? [airway] : [], []);
        var text = isAirway ? $"NORRA {row["token"]} TIDES" : $"{row["token"]} DCT TIDES";
        var route = Assert.IsType<RouteResult.Resolved>(RouteReader.Resolve(book, Some.Xand, Some.Xbel, text, Some.Day, null)).Route;
        Assert.Equal(["XAND", fixes[0].Ident, "TIDES"], route.Segments.Select(segment => segment.From.Ident));
        Assert.Equal(isAirway ? row["token"] : "DCT", route.Segments[1].Via);
    }

    [Fact]
    public void A_written_coordinate_reads_back()
    {
        foreach (var text in new[] { "4130N03915W", "0000N00000E", "7815N01528E", "3300S15100E" })
            Assert.Equal(text, CoordinateText.Write(CoordinateText.Read(text) ?? default));
    }

    private static double? LevelFt(CheckRow row)
    {
        var parts = row.Parts("meaning");
        if (parts.TryGetValue("level", out var level)) return double.Parse(level.AsSpan(2), CultureInfo.InvariantCulture) * 100;
        if (parts.TryGetValue("flight_level", out var flightLevel)) return Split(flightLevel).Value * 100;
        if (!parts.TryGetValue("altitude", out var altitude)) return null;
        var (value, unit) = Split(altitude);
        return unit == "m" ? value / 0.3048 : value;
    }

    private static double Number(CheckRow row, string name) => double.Parse(row.Parts("meaning")[name], CultureInfo.InvariantCulture);

    private static (double Value, string Unit) Split(string text)
    {
        var words = text.Split(' ');
        return (double.Parse(words[0], CultureInfo.InvariantCulture), words.Length > 1 ? words[1] : "");
    }
}
