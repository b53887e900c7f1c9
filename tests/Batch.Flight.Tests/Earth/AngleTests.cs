using Batch.Flight.Earth;

namespace Batch.Flight.Tests.Earth;

public sealed class AngleTests
{
    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(90, 1, 0)]
    [InlineData(180, 0, -1)]
    [InlineData(-90, -1, 0)]
    [InlineData(450, 1, 0)]
    [InlineData(-270, 1, 0)]
    public void Quarter_turns_are_exact(double deg, double sin, double cos) => Assert.Equal((sin, cos), Angle.SinCosDeg(deg));

    [Fact]
    public void The_difference_of_longitudes_keeps_what_rounding_takes()
    {
        var (deg, error) = Angle.DifferenceDeg(-1e-20, 179);
        Assert.Equal((179, 1e-20), (deg, error));
        Assert.Equal((180, 0), Angle.DifferenceDeg(0, 180));
        Assert.Equal((180, 0), Angle.DifferenceDeg(0, -180));
        Assert.Equal(-180, Angle.DifferenceDeg(-1e-30, -180).Deg);
        Assert.Equal(2, Angle.DifferenceDeg(179, -179).Deg);
    }

    [Fact]
    public void An_angle_is_found_again_from_sine_and_cosine_in_every_quadrant()
    {
        for (var deg = -179; deg <= 180; deg++)
        {
            var (sin, cos) = Angle.SinCosDeg(deg);
            Assert.Equal(deg, Angle.Atan2Deg(sin, cos), 1e-12);
        }
    }
}
