using System.Globalization;
using Batch.Flight.Air;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Air;

public sealed class WindTriangleTests
{
    private static readonly CheckFile Computed = CheckFile.Read("wind-computed.csv");
    private static readonly CheckFile Published = CheckFile.Read("wind-published.csv");

    public static IEnumerable<object[]> ComputedIds => Computed.Ids();

    public static IEnumerable<object[]> PublishedIds => Published.Ids(r => r["kind"] != "min_max_wind");

    public static IEnumerable<object[]> LimitIds => Published.Ids(r => r["kind"] == "min_max_wind");

    [Theory]
    [MemberData(nameof(ComputedIds))]
    public void A_triangle_has_the_parts_of_the_reference(string id)
    {
        var row = Computed[id];
        var solution = WindTriangle.Solve(
            TrueDegrees.Of(row.Number("true_course")), new Knots(row.Number("tas_kt")), TrueDegrees.Of(row.Number("wind_from")),
            new Knots(row.Number("wind_kt")));
        Assert.Equal(row["feasible"] == "yes", solution.IsFlyable);
        if (row.Has("wca")) Assert.Equal(row.Number("wca"), solution.CorrectionDeg, row.HalfDigit("wca"));
        if (row.Has("true_heading")) AssertSameAngle(row.Number("true_heading"), solution.Heading.Value, row.HalfDigit("true_heading"));
        if (row.Has("gs_kt")) Assert.Equal(row.Number("gs_kt"), solution.GroundSpeed.Value, row.HalfDigit("gs_kt"));
        if (row.Has("headwind_kt")) Assert.Equal(row.Number("headwind_kt"), solution.Headwind.Value, row.HalfDigit("headwind_kt"));
        if (row.Has("crosswind_kt")) Assert.Equal(row.Number("crosswind_kt"), solution.Crosswind.Value, row.HalfDigit("crosswind_kt"));
    }

    [Theory]
    [MemberData(nameof(PublishedIds))]
    public void A_published_question_has_its_published_answer(string id)
    {
        var row = Published[id];
        var given = row.Parts("inputs");
        var answers = row.Parts("outputs");
        var found = row["kind"] switch
        {
            "find_wind" => FoundWind(given),
            "runway_components" => Components(given),
            _ => Solved(given),
        };
        Assert.NotEmpty(answers);
        foreach (var (name, text) in answers)
        {
            var (value, isAngle) = found[name];
            var tolerance = Tolerance(row["tolerance"], isAngle ? "deg" : "kt");
            if (isAngle) AssertSameAngle(Number(text), value, tolerance);
            else Assert.Equal(Number(text), value, tolerance);
        }
    }

    [Theory]
    [MemberData(nameof(LimitIds))]
    public void The_least_and_greatest_wind_for_a_runway_have_the_limiting_components(string id)
    {
        var given = Published[id].Parts("inputs");
        var answers = Published[id].Parts("outputs");
        var least = WindTriangle.Solve(TrueDegrees.Of(0), new Knots(200), TrueDegrees.Of(Number(given["angle"])), new Knots(Number(answers["min_wind"])));
        var greatest = WindTriangle.Solve(TrueDegrees.Of(0), new Knots(200), TrueDegrees.Of(Number(given["angle"])), new Knots(Number(answers["max_wind"])));
        Assert.Equal(Number(given["min_headwind"]), least.Headwind.Value, 0.5);
        Assert.Equal(Number(given["max_crosswind"]), greatest.Crosswind.Value, 0.5);
    }

    [Fact]
    public void Calm_wind_leaves_course_and_airspeed()
    {
        var solution = WindTriangle.Solve(TrueDegrees.Of(123), new Knots(140), TrueDegrees.Of(17), Knots.Zero);
        Assert.Equal(new WindSolution(true, 0, TrueDegrees.Of(123), new Knots(140), Knots.Zero, Knots.Zero), solution);
    }

    [Fact]
    public void Wind_from_360_is_wind_from_north() => Assert.Equal(
        WindTriangle.Solve(TrueDegrees.Of(40), new Knots(140), TrueDegrees.Of(0), new Knots(20)),
        WindTriangle.Solve(new TrueDegrees(40), new Knots(140), new TrueDegrees(360), new Knots(20)));

    [Theory]
    [InlineData(90, 100, 0, 100.1, false)] // cannot be corrected
    [InlineData(90, 100, 90, 100, false)] // no progress
    [InlineData(90, 100, 90, 99.9, true)]
    [InlineData(90, 100, 270, 500, true)] // blown along
    [InlineData(90, 100, 225, 120, true)] // crosswind below airspeed, tailwind helps
    [InlineData(90, 0, 270, 50, false)] // no airspeed, no control of the course
    [InlineData(90, double.NaN, 270, 50, false)]
    public void A_course_is_flyable_only_with_control_and_progress(double courseDeg, double airspeedKt, double fromDeg, double windKt, bool isFlyable) =>
        Assert.Equal(isFlyable, WindTriangle.Solve(TrueDegrees.Of(courseDeg), new Knots(airspeedKt), TrueDegrees.Of(fromDeg), new Knots(windKt)).IsFlyable);

    [Fact]
    public void Heading_and_wind_add_up_to_course_and_ground_speed() =>
        Gen.Select(Gen.Double[0, 360], Gen.Double[60, 500], Gen.Double[0, 360], Gen.Double[0, 200]).Sample((course, airspeed, from, wind) =>
        {
            var s = WindTriangle.Solve(TrueDegrees.Of(course), new Knots(airspeed), TrueDegrees.Of(from), new Knots(wind));
            if (!s.IsFlyable) return;
            var east = airspeed * Sin(s.Heading.Value) - wind * Sin(from);
            var north = airspeed * Cos(s.Heading.Value) - wind * Cos(from);
            Assert.Equal(s.GroundSpeed.Value * Sin(course), east, 1e-9);
            Assert.Equal(s.GroundSpeed.Value * Cos(course), north, 1e-9);
            var found = WindTriangle.FindWind(TrueDegrees.Of(course), s.Heading, new Knots(airspeed), s.GroundSpeed);
            Assert.Equal(wind, found.Speed.Value, 1e-9);
            if (wind > 1e-3) AssertSameAngle(from, found.From.Value, 1e-6);
        });

    private static Dictionary<string, (double Value, bool IsAngle)> FoundWind(IReadOnlyDictionary<string, string> given)
    {
        var wind = WindTriangle.FindWind(
            TrueDegrees.Of(Number(given["tc"])), TrueDegrees.Of(Number(given["th"])), new Knots(Number(given["tas"])), new Knots(Number(given["gs"])));
        return new() { ["wind_dir"] = (wind.From.Value, true), ["wind_kt"] = (wind.Speed.Value, false) };
    }

    private static Dictionary<string, (double Value, bool IsAngle)> Components(IReadOnlyDictionary<string, string> given)
    {
        var s = WindTriangle.Solve(
            TrueDegrees.Of(Number(given["runway_dir"])), new Knots(200), TrueDegrees.Of(Number(given["wind_dir"])), new Knots(Number(given["wind_kt"])));
        return new() { ["headwind"] = (s.Headwind.Value, false), ["crosswind"] = (s.Crosswind.Value, false) };
    }

    private static Dictionary<string, (double Value, bool IsAngle)> Solved(IReadOnlyDictionary<string, string> given)
    {
        var s = WindTriangle.Solve(
            TrueDegrees.Of(Number(given["tc"])), new Knots(Number(given["tas"])), TrueDegrees.Of(Number(given["wind_dir"])),
            new Knots(Number(given["wind_kt"])));
        var magnetic = given.TryGetValue("variation", out var text) ? s.Heading.ToMagnetic(Variation(text)).Value : double.NaN;
        var minutes = given.TryGetValue("distance", out var distance) ? Number(distance) / s.GroundSpeed.Value * 60 : double.NaN;
        return new()
        {
            ["th"] = (s.Heading.Value, true),
            ["mh"] = (magnetic, true),
            ["wca"] = (s.CorrectionDeg, true),
            ["gs"] = (s.GroundSpeed.Value, false),
            ["time"] = (minutes, false),
        };
    }

    private static double Variation(string text) => text.EndsWith('W') ? -Number(text[..^1]) : Number(text.TrimEnd('E'));

    private static double Tolerance(string text, string unit) => text.Split(';', StringSplitOptions.TrimEntries)
        .Where(t => t.EndsWith(unit, StringComparison.Ordinal)).Select(Number).DefaultIfEmpty(2).First();

    private static double Number(string text) => double.Parse(text.Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture);

    private static double Sin(double deg) => Math.Sin(deg * Math.PI / 180);

    private static double Cos(double deg) => Math.Cos(deg * Math.PI / 180);

    private static void AssertSameAngle(double expectedDeg, double actualDeg, double toleranceDeg) =>
        Assert.InRange(Math.Abs(Math.IEEERemainder(expectedDeg - actualDeg, 360)), 0, toleranceDeg);
}
