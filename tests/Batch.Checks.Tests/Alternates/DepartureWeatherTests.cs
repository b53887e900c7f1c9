using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Alternates;

public sealed class DepartureWeatherTests
{
    private const double OneMile = 1609.344;

    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static ImmutableArray<Finding> Look(LegPlan.Planned plan, double? ceiling, double visibility, string rules = "us-charter") =>
        Ask.All("ALT-04", plan, rules: rules, forecasts: Ask.Forecast("XAND", ceiling, visibility));

    /// <summary>The leg with a cruise so fast that XBEL is this many minutes away.</summary>
    private static LegPlan.Planned Away(double minutes, LegPlan.Planned? plan = null)
    {
        var leg = plan ?? Leg;
        var knots = new GeodesicPath(Some.Xand.Position, Some.Xbel.Position).Length.Value * 60 / minutes;
        return leg with
        {
            Leg = leg.Leg with { TakeoffAlternate = "XBEL" },
            Profile = leg.Profile with { Slices = [.. leg.Profile.Slices.Select(slice => slice with { TrueAirspeedKt = knots })] }
        };
    }

    // 14 CFR 91.175(f)(2)(i): 1 statute mile with two engines or fewer; (ii): one half with more.
    [Fact]
    public void The_visibility_is_at_least_one_mile_where_none_is_published()
    {
        var bare = Leg with { From = Leg.From with { TakeoffVisibilityM = null } };
        Assert.Equal(Verdict.Pass, Look(bare, null, OneMile)[0].Verdict);
        var finding = Look(bare, null, OneMile - 1)[0];
        Assert.Equal((Verdict.Fail, "14 CFR 91.175(f)", -1), (finding.Verdict, finding.Citation, Math.Round(finding.Margin ?? 0, 3)));
        var four = bare with { Type = bare.Type with { Engines = 4 } };
        Assert.Equal(Verdict.Pass, Look(four, null, OneMile / 2)[0].Verdict);
        Assert.Equal(Verdict.Fail, Look(four, null, (OneMile / 2) - 1)[0].Verdict);
    }

    // 14 CFR 135.225(g): the takeoff minima of the airport.
    [Fact]
    public void The_takeoff_minimum_of_the_airport_counts_where_the_book_gives_it()
    {
        Assert.Equal(Verdict.Pass, Look(Leg, null, 800)[0].Verdict);
        var below = Look(Leg, null, 799)[0];
        Assert.Equal((Verdict.Fail, "14 CFR 135.225(g),(h)"), (below.Verdict, below.Citation));
    }

    // 14 CFR 135.217: below the landing minima (200 ft and 800 m) an alternate within one hour at normal cruising speed in still air.
    [Fact]
    public void Below_the_landing_minima_an_alternate_lies_within_one_hour()
    {
        Assert.All(Look(Away(60), 199, 5000), finding => Assert.Equal(Verdict.Pass, finding.Verdict));
        var far = Look(Away(60.01), 199, 5000)[0];
        Assert.Equal((Verdict.Fail, "14 CFR 135.217", "min", 60.0), (far.Verdict, far.Citation, far.Unit, far.Required));
        Assert.Contains("XBEL, the takeoff alternate,", far.Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Look(Away(600), 200, 800)[0].Verdict);
    }

    // AMC1 CAT.OP.MPA.182: 30 minutes with one engine, one hour with two, two hours with more.
    [Theory]
    [InlineData(1, 30)]
    [InlineData(2, 60)]
    [InlineData(3, 120)]
    public void In_Europe_the_time_follows_the_engines(int engines, double minutes)
    {
        var leg = Leg with { Type = Leg.Type with { Engines = engines } };
        Assert.Equal(Verdict.Pass, Look(Away(minutes, leg), 199, 5000, "eu-commercial")[0].Verdict);
        Assert.Equal(Verdict.Fail, Look(Away(minutes + 0.01, leg), 199, 5000, "eu-commercial")[0].Verdict);
    }

    [Fact]
    public void Without_a_named_one_the_nearest_filed_airport_is_taken_and_said()
    {
        var plan = Away(30) with { Leg = Leg.Leg };
        Assert.Contains("the nearest airport filed (no takeoff alternate is named)", Look(plan, 199, 5000).First(finding => finding.Unit == "min").Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_known_is_not_checked()
    {
        Assert.Equal((Verdict.NotChecked, true),
            (Ask.Worst("ALT-04", Leg).Verdict, Ask.Worst("ALT-04", Leg).Text.Contains("no forecast for XAND", StringComparison.Ordinal)));
        Assert.Equal(Verdict.NotChecked, Look(Leg with { From = Leg.From with { ApproachMinimum = null } }, 100, 5000)[0].Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ALT-04", Leg with { Rules = FlightRules.Vfr }).Verdict);
    }
}
