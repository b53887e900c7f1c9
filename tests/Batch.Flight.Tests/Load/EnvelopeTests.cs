using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Load;

public sealed class EnvelopeTests
{
    private static readonly EnvelopePolygon Skua = new(Some.LoadType.Envelopes[0]);

    [Theory]
    [InlineData(6000, 140, true, 10, 130, 152, 2000)]
    [InlineData(7500, 140, true, 6, 134, 152, 500)]
    [InlineData(7500, 133, false, -1, 134, 152, -125)]
    [InlineData(6000, 155, false, -3, 130, 152, 2000)]
    [InlineData(5000, 130, true, 0, 130, 152, 2000)]
    [InlineData(8000, 145, true, 7, 138, 152, 0)]
    public void A_state_is_held_against_the_limits_at_its_weight(
        double weight, double arm, bool isInside, double margin, double forward, double aft, double above)
    {
        var test = Skua.Test(weight, arm, EnvelopeCase.Takeoff, "takeoff");
        Assert.Equal(isInside, test.IsInside);
        Assert.Equal(margin, test.ArmMargin.Value, 9);
        Assert.Equal(forward, Assert.NotNull(test.ForwardLimit).Value, 9);
        Assert.Equal(aft, Assert.NotNull(test.AftLimit).Value, 9);
        Assert.Equal(above, test.WeightMargin.Value, 9);
    }

    [Theory]
    [InlineData(8100, 145, -7, -100)]
    [InlineData(4900, 140, -10, 3100)]
    public void Above_the_top_or_below_the_bottom_there_are_no_limits_in_arm(double weight, double arm, double margin, double above)
    {
        var test = Skua.Test(weight, arm, EnvelopeCase.Takeoff, "takeoff");
        Assert.False(test.IsInside);
        Assert.Null(test.ForwardLimit);
        Assert.Null(test.AftLimit);
        Assert.Equal(margin, test.ArmMargin.Value, 9);
        Assert.Equal(above, test.WeightMargin.Value, 9);
    }

    [Fact]
    public void The_edge_is_inside_up_to_the_rounding_of_sums()
    {
        Assert.True(Skua.Test(7500, 134 - 5e-10, EnvelopeCase.Takeoff, "").IsInside);
        Assert.True(Skua.Test(8000 + 5e-10, 140, EnvelopeCase.Takeoff, "").IsInside);
        Assert.False(Skua.Test(7500, 134 - 1e-8, EnvelopeCase.Takeoff, "").IsInside);
        Assert.False(Skua.Test(8000 + 1e-8, 140, EnvelopeCase.Takeoff, "").IsInside);
    }

    [Fact]
    public void Vertices_may_run_either_way_round_and_start_anywhere()
    {
        var vertices = Some.LoadType.Envelopes[0].Vertices;
        var turned = new EnvelopePolygon(
            new Envelope { Case = EnvelopeCase.Takeoff, Vertices = [.. vertices.Reverse().Skip(2), .. vertices.Reverse().Take(2)] });
        Gen.Select(Gen.Double[4900, 8100], Gen.Double[125, 155]).Sample((weight, arm) =>
        {
            var (one, other) = (Skua.Test(weight, arm, EnvelopeCase.Takeoff, ""), turned.Test(weight, arm, EnvelopeCase.Takeoff, ""));
            Assert.Equal(one.IsInside, other.IsInside);
            Assert.Equal(one.ArmMargin.Value, other.ArmMargin.Value, 9);
            Assert.Equal(one.WeightMargin.Value, other.WeightMargin.Value, 9);
        }, iter: 300);
    }

    [Fact]
    public void A_step_in_the_forward_limit_holds_above_its_weight_only()
    {
        var step = new EnvelopePolygon(Some.Envelope(EnvelopeCase.Takeoff, (5000, 80), (7000, 80), (7000, 84), (8000, 84), (8000, 92), (5000, 92)));
        Assert.True(step.Test(7000, 82, EnvelopeCase.Takeoff, "").IsInside);
        Assert.False(step.Test(7000.001, 82, EnvelopeCase.Takeoff, "").IsInside);
        Assert.Equal(84, Assert.NotNull(step.Test(7000.001, 82, EnvelopeCase.Takeoff, "").ForwardLimit).Value);
    }

    [Fact]
    public void A_notch_in_the_polygon_is_outside()
    {
        var notched = new EnvelopePolygon(
            Some.Envelope(EnvelopeCase.Takeoff, (5000, 80), (8000, 80), (8000, 84), (6000, 86), (8000, 88), (8000, 92), (5000, 92)));
        Assert.True(notched.Test(7000, 82, EnvelopeCase.Takeoff, "").IsInside);
        Assert.False(notched.Test(7000, 86, EnvelopeCase.Takeoff, "").IsInside);
        Assert.True(notched.Test(5900, 86, EnvelopeCase.Takeoff, "").IsInside);
        Assert.Equal((80d, 85d),
            (notched.Test(7000, 82, EnvelopeCase.Takeoff, "").ForwardLimit?.Value, notched.Test(7000, 82, EnvelopeCase.Takeoff, "").AftLimit?.Value));
    }

    [Fact]
    public void A_centre_of_gravity_that_leaves_the_envelope_between_takeoff_and_landing_only_is_found()
    {
        // First the aft tank empties (the curve falls from 1,000 to 600 lb at 240 in), then the forward one: the centre of gravity runs forward and comes back.
        var type = Some.LoadType with
        {
            FuelMoments = [new FuelMoment(new Pounds(600), new PoundInches(30_000)), new FuelMoment(new Pounds(1000), new PoundInches(126_000))],
            Envelopes = [Some.Envelope(EnvelopeCase.Takeoff, (5000, 134), (8000, 134), (8000, 152), (5000, 152))],
        };
        var sheet = Loading.Of(Some.LoadRequest with { Type = type, Taxi = new Pounds(0), Trip = new Pounds(1000) });
        var tests = sheet.Tests.ToDictionary(test => test.When);
        Assert.True(tests["takeoff"].IsInside);
        Assert.True(tests["landing"].IsInside);
        Assert.True(tests["zero fuel"].IsInside);
        Assert.False(tests["during the flight"].IsInside);
        Assert.Equal(5800, tests["during the flight"].Point.Weight.Value, 9);
        Assert.Equal((728_000 + 30_000) / 5800d, tests["during the flight"].Point.Arm.Value, 9);
    }

    [Fact]
    public void The_bulge_of_the_curve_between_two_vertices_is_found()
    {
        // 1,000 lb at 100 in burn off an aircraft whose centre of gravity is 140 in: arm = 100 + 208,000/W is curved, so a limit drawn straight from takeoff to
        // landing cuts it.
        var type = Some.LoadType with
        {
            FuelMoments = [new FuelMoment(new Pounds(1000), new PoundInches(100_000))],
            Envelopes = [Some.Envelope(EnvelopeCase.Takeoff, (5200, 140), (6200, 100 + (208_000 / 6200d)), (6200, 152), (5200, 152))],
        };
        var sheet = Loading.Of(Some.LoadRequest with { Type = type, Taxi = new Pounds(0), Trip = new Pounds(1000) });
        var worst = sheet.Tests.Single(test => test.When == "during the flight");
        Assert.False(worst.IsInside);
        Assert.Equal(Math.Sqrt(5200d * 6200), worst.Point.Weight.Value, 6);
        Assert.True(sheet.Tests.Single(test => test.When == "takeoff").IsInside);
        Assert.True(sheet.Tests.Single(test => test.When == "landing").IsInside);
    }

    [Fact]
    public void Envelopes_of_their_own_hold_at_landing_and_with_no_fuel_else_the_takeoff_one_does_and_that_is_said()
    {
        var shared = Loading.Of(Some.LoadRequest with { Type = Some.LoadType with { Envelopes = [Some.LoadType.Envelopes[0]] } });
        Assert.All(shared.Tests, test => Assert.Equal(EnvelopeCase.Takeoff, test.Case));
        Assert.Equal(["takeoff", "during the flight", "landing", "zero fuel"], shared.Tests.Select(test => test.When));
        Assert.Equal(
            ["The book gives no landing envelope of Skua 9: the takeoff envelope holds.",
                "The book gives no zero fuel envelope of Skua 9: the takeoff envelope holds."],
            shared.Assumptions.AsEnumerable());

        var own = Loading.Of(Some.LoadRequest with
        {
            Type = Some.LoadType with
            {
                Envelopes =
                [
                    Some.LoadType.Envelopes[0],
                    Some.Envelope(EnvelopeCase.Landing, (5000, 141), (7600, 141), (7600, 150), (5000, 150)),
                    Some.Envelope(EnvelopeCase.ZeroFuel, (5300, 130), (7000, 130), (7000, 150)),
                ],
            },
        });
        Assert.Empty(own.Assumptions);
        Assert.Equal([(EnvelopeCase.Landing, false), (EnvelopeCase.ZeroFuel, false)], own.Tests.Skip(2).Select(test => (test.Case, test.IsInside)));
    }

    [Fact]
    public void No_point_of_a_finely_stepped_burn_is_worse_than_the_worst_point()
    {
        var curves = Gen.Select(Gen.Double[60, 250], Gen.Double[60, 250], Gen.Double[100, 1700], Gen.Double[128, 154], Gen.Double[5000, 6600]);
        curves.Sample((arm1, arm2, knot, emptyArm, empty) =>
        {
            var type = Some.LoadType with
            {
                FuelMoments = [new FuelMoment(new Pounds(knot), new PoundInches(knot * arm1)),
                    new FuelMoment(new Pounds(1800), new PoundInches((knot * arm1) + ((1800 - knot) * arm2)))],
            };
            var aircraft = Some.LoadAircraft with { BasicEmptyWeight = new Pounds(empty), BasicEmptyMoment = new PoundInches(empty * emptyArm) };
            var request = Some.LoadRequest with { Type = type, Aircraft = aircraft, Block = new Pounds(1800), Taxi = new Pounds(30), Trip = new Pounds(1500) };
            var worst = Loading.Of(request).Tests.Single(test => test.When == "during the flight");
            for (var burned = 0; burned <= 1500; burned += 25)
            {
                var at = Loading.Of(request with { Trip = new Pounds(burned) }).Landing;
                var test = Skua.Test(at.Weight.Value, at.CentreOfGravity.Value, EnvelopeCase.Takeoff, "");
                Assert.True(worst.IsInside == false || test.IsInside);
                if (worst.IsInside) Assert.True(test.ArmMargin.Value >= worst.ArmMargin.Value - 1e-6);
            }
        }, iter: 60);
    }
}
