using Batch.Flight.Plan;
using Batch.Sheets.Pictures;

namespace Batch.Sheets.Tests;

public class FreezingTests
{
    private static FlightProfile Profile { get; } = ((LegPlan.Planned)SampleWeek.Made.Plan.Legs[0]).Profile;

    [Fact]
    public void The_level_lies_where_the_air_passes_zero_between_the_middles_of_two_steps()
    {
        // 6 °C at 4,000 ft and -2 °C at 8,000 ft: three quarters of the way up.
        var profile = With((0, 0, 3_000, 5_000, 6), (10, 20, 7_000, 9_000, -2), (20, 30, 9_000, 9_000, -3));
        var (nm, ft) = Assert.Single(Freezing.Crossings(profile));
        Assert.Equal((11.25, 7_000.0), (nm, ft));
    }

    [Fact]
    public void Air_that_is_warm_all_the_way_has_no_freezing_level() =>
        Assert.Empty(Freezing.Crossings(With((0, 10, 0, 2_000, 15), (10, 20, 2_000, 2_000, 9))));

    [Fact]
    public void The_picture_says_so_in_words()
    {
        Assert.Contains("above 0 °C all the way", Draw(With((0, 10, 0, 2_000, 15), (10, 20, 2_000, 2_000, 9))), StringComparison.Ordinal);
        Assert.Contains("0 °C or colder all the way", Draw(With((0, 10, 0, 2_000, -1), (10, 20, 2_000, 2_000, -4))), StringComparison.Ordinal);
        Assert.Contains("◇ 0 °C: 7,000 ft", Draw(With((0, 0, 3_000, 5_000, 6), (10, 20, 7_000, 9_000, -2))), StringComparison.Ordinal);
    }

    private static string Draw(FlightProfile profile) => ProfilePicture.Of((LegPlan.Planned)SampleWeek.Made.Plan.Legs[0] with { Profile = profile }).Usual.Html;

    private static FlightProfile With(params (double StartNm, double EndNm, double StartFt, double EndFt, double Celsius)[] steps) => Profile with
    {
        Slices = [.. steps.Select(step => Profile.Slices[0] with { StartNm = step.StartNm, EndNm = step.EndNm, StartFt = step.StartFt, EndFt = step.EndFt,
            Air = Profile.Slices[0].Air with { Temperature = new Celsius(step.Celsius) } })],
    };
}
