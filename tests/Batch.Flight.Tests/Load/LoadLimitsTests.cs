using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Load;

public sealed class LoadLimitsTests
{
    private static readonly AircraftType Type = Some.LoadType;

    // Limits of the type: ramp 8,050, takeoff 8,000, landing 7,600, zero fuel 7,000, tank 1,800 lb; taxi 20, trip 500 lb.
    [Theory]
    [InlineData(5500, 1800, "tank")]
    [InlineData(6500, 1520, "takeoff weight")]
    [InlineData(7000, 1020, "takeoff weight")]
    [InlineData(7001, 0, "zero-fuel weight")]
    public void The_most_fuel_is_the_least_of_the_limits(double zeroFuel, double most, string boundBy)
    {
        var limit = LoadLimits.MostFuel(Type, new Pounds(zeroFuel), new Pounds(20), new Pounds(500), null, null);
        Assert.Equal((most, boundBy), (Assert.NotNull(limit.Most).Value, limit.BoundBy));
    }

    [Theory]
    [InlineData(200, 500, null, null, 1550, "ramp weight")]
    [InlineData(20, 100, null, null, 1220, "landing weight")]
    [InlineData(20, 500, 7900.0, null, 1420, "departure runway")]
    [InlineData(20, 500, 7900.0, 7300.0, 1320, "arrival runway")]
    [InlineData(20, 500, 6000.0, null, 0, "departure runway")]
    public void Each_limit_may_bind_and_none_goes_below_nothing(double taxi, double trip, double? departure, double? arrival, double most, string boundBy)
    {
        var limit = LoadLimits.MostFuel(Type, new Pounds(6500), new Pounds(taxi), new Pounds(trip), Pounds(departure), Pounds(arrival));
        Assert.Equal((most, boundBy), (Assert.NotNull(limit.Most).Value, limit.BoundBy));
    }

    [Fact]
    public void Limits_that_are_not_known_are_skipped()
    {
        var bare = new AircraftType { Name = "T" };
        Assert.Equal(new FuelLimit(null, ""), LoadLimits.MostFuel(bare, new Pounds(6000), new Pounds(20), new Pounds(500), null, null));
        Assert.Equal(new PayloadLimit(null, ""), LoadLimits.PayloadSpare(bare, new Pounds(6000), new Pounds(900), new Pounds(20), new Pounds(500), null, null));
        Assert.Equal(new FuelLimit(new Pounds(900), "tank"),
            LoadLimits.MostFuel(bare with { UsableFuel = new Pounds(900) }, new Pounds(6000), new Pounds(20), new Pounds(500), null, null));
    }

    [Theory]
    [InlineData(6500, 1000, null, null, 500, "zero-fuel weight")]
    [InlineData(6500, 1400, null, null, 120, "takeoff weight")]
    [InlineData(6500, 1400, 7850.0, null, -30, "departure runway")]
    [InlineData(6500, 1400, null, 7390.0, 10, "arrival runway")]
    [InlineData(7100, 500, null, null, -100, "zero-fuel weight")]
    public void The_spare_payload_is_the_least_room_and_may_be_negative(
        double zeroFuel, double block, double? departure, double? arrival, double spare, string boundBy)
    {
        var limit = LoadLimits.PayloadSpare(Type, new Pounds(zeroFuel), new Pounds(block), new Pounds(20), new Pounds(500), Pounds(departure), Pounds(arrival));
        Assert.Equal((spare, boundBy), (Assert.NotNull(limit.Spare).Value, limit.BoundBy));
    }

    [Fact]
    public void With_the_most_fuel_every_limit_holds_and_one_pound_more_breaks_one()
    {
        Gen.Select(Gen.Double[4500, 7000], Gen.Double[0, 100], Gen.Double[0, 1500]).Sample((zeroFuel, taxi, trip) =>
        {
            bool Holds(double block) =>
                block <= 1800 && zeroFuel + block <= 8050 + 1e-6 && zeroFuel + block - taxi <= 8000 + 1e-6 && zeroFuel + block - taxi - trip <= 7600 + 1e-6;
            var most = Assert.NotNull(LoadLimits.MostFuel(Type, new Pounds(zeroFuel), new Pounds(taxi), new Pounds(trip), null, null).Most).Value;
            Assert.True(Holds(most));
            Assert.False(Holds(most + 1));
        }, iter: 500);
    }

    private static Pounds? Pounds(double? value) => value is { } weight ? new Pounds(weight) : null;
}
