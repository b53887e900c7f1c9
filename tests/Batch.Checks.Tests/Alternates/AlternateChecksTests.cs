using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Alternates;

public sealed class AlternateChecksTests
{
    private const double ThreeMiles = 4828.032;

    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Alone { get; } = Leg with { Alternates = [] };

    private static Finding Required(double? ceiling, double visibility, double minimumFt = 200, double minimumM = 800, string rules = "us-charter",
        LegPurpose purpose = LegPurpose.Charter) => Ask.Worst(
        "ALT-02",
        Alone with { Purpose = purpose, To = Alone.To with { ApproachMinimum = new Feet(minimumFt), ApproachVisibilityM = minimumM } },
        rules: rules,
        forecasts: Ask.Forecast("XBEL", ceiling, visibility));

    [Fact]
    public void A_filed_alternate_is_enough() => Assert.Equal("XDUN is filed.", Ask.Worst("ALT-02", Leg).Text);

    [Fact]
    public void A_visual_leg_needs_none() => Assert.Equal(Verdict.NotApplicable, Ask.Worst("ALT-02", Alone with { Rules = FlightRules.Vfr }).Verdict);

    [Fact]
    public void Without_a_forecast_one_is_required_and_the_reason_said()
    {
        var finding = Ask.Worst("ALT-02", Alone);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("no forecast for XBEL", finding.Text, StringComparison.Ordinal);
        Assert.Equal("week.xlsx/Legs/H2", Assert.Single(finding.Cells));
        Assert.Equal("14 CFR 91.169(b); 14 CFR 135.223(b)", finding.Citation);
    }

    // 14 CFR 91.169(b): ceiling at least 2,000 ft, visibility at least 3 statute miles.
    [Fact]
    public void Two_thousand_feet_and_three_miles()
    {
        Assert.Equal(Verdict.Pass, Required(2000, ThreeMiles, purpose: LegPurpose.Ferry).Verdict);
        Assert.Equal((Verdict.Fail, -1, "ft"), (Required(1999, ThreeMiles, purpose: LegPurpose.Ferry).Verdict,
            Required(1999, ThreeMiles, purpose: LegPurpose.Ferry).Margin, Required(1999, 5000).Unit));
        Assert.Equal((Verdict.Fail, "m"), (Required(null, 4828, purpose: LegPurpose.Ferry).Verdict, Required(null, 4828, purpose: LegPurpose.Ferry).Unit));
    }

    // 14 CFR 135.223(b): 1,500 ft above the lowest minimum, visibility 2 miles beyond the lowest minimum.
    [Fact]
    public void For_hire_the_minima_of_the_approach_count_too()
    {
        Assert.Equal(Verdict.Pass, Required(2100, 6000, 600).Verdict);
        var finding = Required(2099, 6000, 600);
        Assert.Equal((Verdict.Fail, 2100, "14 CFR 135.223(b)"), (finding.Verdict, finding.Required, finding.Citation));
        Assert.Equal(Verdict.Pass, Required(2099, 6000, 600, purpose: LegPurpose.Ferry).Verdict);
        var metres = 2400 + (2 * 1609.344);
        Assert.Equal(Verdict.Pass, Required(null, metres, 200, 2400).Verdict);
        Assert.Equal(Verdict.Fail, Required(null, metres - 1, 200, 2400).Verdict);
    }

    // The register takes the number that fails, the ceiling before the visibility: 200 ft and 800 m are the minima.
    [Theory]
    [InlineData(150, 10_000, 200, 150, "ft")]
    [InlineData(150, 500, 200, 150, "ft")]
    [InlineData(300, 500, 800, 500, "m")]
    public void A_forecast_below_the_minima_has_its_numbers(int ceiling, double visibility, double required, double actual, string unit)
    {
        var leg = Alone with { To = Alone.To with { ApproachMinimum = new Feet(200), ApproachVisibilityM = 800 } };
        var finding = Ask.Worst("ALT-01", leg, forecasts: Ask.Forecast("XBEL", ceiling, visibility));
        Assert.Equal((Verdict.Fail, required, actual, actual - required, unit),
            (finding.Verdict, finding.Required, finding.Actual, finding.Margin, finding.Unit));
    }

    // 14 CFR 135.223(b)(1): where circling is authorized the ceiling counts above the lowest circling minimum, which the book does not hold.
    [Fact]
    public void What_waives_the_alternate_for_hire_says_that_circling_is_not_looked_at()
    {
        Assert.EndsWith("Not looked at: a circling minimum higher than the minimum of the Airports sheet (14 CFR 135.223(b)).", Required(2100, 6000, 600).Text,
            StringComparison.Ordinal);
        Assert.EndsWith("of visibility.", Required(2100, 6000, 600, purpose: LegPurpose.Ferry).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_destination_without_an_approach_or_minima_waives_nothing()
    {
        var fair = Ask.Forecast("XBEL", null, 10_000);
        Assert.Equal(Verdict.Fail, Ask.Worst("ALT-02", Alone with { To = Alone.To with { ApproachKind = "none" } }, forecasts: fair).Verdict);
        Assert.Contains("minima are not given", Ask.Worst("ALT-02", Alone with { To = Alone.To with { ApproachMinimum = null } }, forecasts: fair).Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_worst_of_an_hour_before_to_an_hour_after_counts()
    {
        var landing = Alone.Times.Landing;
        Finding Of(params ForecastPeriod[] periods) =>
            Ask.Worst("ALT-02", Alone, forecasts: Forecasts.None with { ByAirport = Forecasts.None.ByAirport.Add("xbel", [.. periods]) });
        var hour = Duration.FromHours(1);
        var minute = Duration.FromMinutes(1);
        var fair = Ask.Period(landing - hour, landing + hour, null, 10_000);
        Assert.Equal(Verdict.Pass, Of(fair).Verdict);
        Assert.Equal(Verdict.Fail, Of(fair with { To = landing + hour - minute }).Verdict);
        Assert.Equal(Verdict.Fail, Of(fair with { From = landing - hour + minute }).Verdict);
        Assert.Equal(Verdict.Fail, Of(fair, Ask.Period(landing + hour - minute, landing + hour + hour, 1900, 10_000)).Verdict);
        Assert.Equal(Verdict.Pass, Of(fair, Ask.Period(landing + hour + minute, landing + hour + hour, 1900, 10_000)).Verdict);
        Assert.Equal(Verdict.Fail, Of(fair with { To = landing - minute }, fair with { From = landing + minute }).Verdict);
    }

    // CAT.OP.MPA.180(b): six hours, two separate runways.
    [Fact]
    public void Europe_asks_for_two_runways_and_at_most_six_hours()
    {
        var second = SomePlans.Runway with { Ident = "36", TrueBearing = TrueDegrees.Of(360) };
        var reverse = SomePlans.Runway with { Ident = "27", TrueBearing = TrueDegrees.Of(270) };
        LegPlan.Planned Runways(params Runway[] runways) => Alone with { To = Alone.To with { Runways = [.. runways] } };
        var fair = Ask.Forecast("XBEL", null, 10_000);
        Assert.Equal(Verdict.Pass, Ask.Worst("ALT-02", Runways(SomePlans.Runway, second), rules: "eu-commercial", forecasts: fair).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("ALT-02", Runways(SomePlans.Runway, reverse), rules: "eu-commercial", forecasts: fair).Verdict);
        LegPlan.Planned Hours(Duration air) => Runways(SomePlans.Runway, second) with { Times = Alone.Times with { Landing = Alone.Times.Takeoff + air } };
        Assert.Equal(Verdict.Pass, Ask.Worst("ALT-02", Hours(Duration.FromHours(6)), rules: "eu-commercial", forecasts: fair).Verdict);
        Assert.Equal(Verdict.Fail,
            Ask.Worst("ALT-02", Hours(Duration.FromHours(6) + Duration.FromMinutes(1)), rules: "eu-commercial", forecasts: fair).Verdict);
        var weather = Ask.Worst("ALT-02", Runways(SomePlans.Runway, second), rules: "eu-commercial", forecasts: Ask.Forecast("XBEL", 1999, 10_000));
        Assert.Equal((Verdict.Caution, true), (weather.Verdict, weather.IsBasisUnconfirmed));
    }

    // 14 CFR 135.219.
    [Fact]
    public void The_destination_is_forecast_at_or_above_the_landing_minima()
    {
        Finding Of(double? ceiling, double visibility) => Ask.Worst("ALT-01", Leg, forecasts: Ask.Forecast("XBEL", ceiling, visibility));
        Assert.Equal(Verdict.Pass, Of(200, 800).Verdict);
        Assert.Equal(Verdict.Fail, Of(199, 800).Verdict);
        Assert.Equal(Verdict.Fail, Of(null, 799).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ALT-01", Leg).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ALT-01", Leg with { To = Leg.To with { ApproachMinimum = null } }).Verdict);
    }

    // 14 CFR 91.169(c): 600 ft and 2 miles for a precision approach, 800 ft and 2 miles for another.
    [Fact]
    public void The_alternate_is_forecast_at_or_above_its_minima()
    {
        const double twoMiles = 3218.688;
        Finding Of(string kind, double ceiling, double visibility) => Ask.Worst(
            "ALT-03", Leg, week => week with
            {
                Input = week.Input with
                {
                    Airports = week.Input.Airports.SetItem("XDUN",
                SomePlans.Airport(Some.Xdun) with { ApproachKind = kind })
                }
            }, forecasts: Ask.Forecast("XDUN", ceiling, visibility));
        Assert.Equal(Verdict.Pass, Of("ILS", 600, twoMiles).Verdict);
        Assert.Equal(Verdict.Fail, Of("ILS", 599, twoMiles).Verdict);
        Assert.Equal(Verdict.Fail, Of("ILS", 600, 3218).Verdict);
        Assert.Equal(Verdict.Pass, Of("RNP", 800, twoMiles).Verdict);
        Assert.Equal(Verdict.Fail, Of("RNP", 799, twoMiles).Verdict);
        Assert.Equal(Verdict.NotChecked, Of("", 799, twoMiles).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ALT-03", Leg).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ALT-03", Alone).Verdict);
    }

    // 14 CFR 135.221(a): no airport is designated as an alternate, that of the takeoff no less, unless it is forecast at or above its alternate minima when it
    // would be reached.
    [Fact]
    public void For_hire_the_takeoff_alternate_is_forecast_at_or_above_them_too()
    {
        Finding Of(double? ceiling, LegPurpose purpose = LegPurpose.Charter, Forecasts? forecasts = null) => Ask.All(
            "ALT-03",
            Alone with { Purpose = purpose, Leg = Alone.Leg with { TakeoffAlternate = "XDUN" } },
            week => week with
            {
                Input =
                week.Input with { Airports = week.Input.Airports.SetItem("XDUN", SomePlans.Airport(Some.Xdun) with { ApproachKind = "RNP" }) }
            },
            forecasts: forecasts ?? Ask.Forecast("XDUN", ceiling, 5000)).Single();
        Assert.Equal(Verdict.Pass, Of(800).Verdict);
        Assert.Equal((Verdict.Fail, "14 CFR 135.221(a)"), (Of(799).Verdict, Of(799).Citation));
        Assert.Equal(Verdict.NotChecked, Of(null, forecasts: Forecasts.None).Verdict);
        Assert.Equal(Verdict.NotApplicable, Of(799, LegPurpose.Ferry).Verdict);
    }

    // 14 CFR 135.215.
    [Fact]
    public void An_instrument_leg_ends_at_an_approach() => Ask.Boundary(
        "ALT-05", Leg, Leg with { To = Leg.To with { ApproachKind = "None" } }, Leg with { To = Leg.To with { ApproachKind = "" } });

    // 14 CFR 135.215(a), (d): at an airport without an approach a leg departs under IFR only by the operations specifications, which the books do not hold.
    [Fact]
    public void A_departure_under_ifr_from_an_airport_without_an_approach_wants_an_approval()
    {
        LegPlan.Planned From(string kind) => Leg with { From = Leg.From with { ApproachKind = kind } };
        Ask.Boundary("ALT-05", From("RNP"), From("none"), From(""), Verdict.Caution);
        Assert.Equal("14 CFR 135.215(a),(d)", Ask.Worst("ALT-05", From("none")).Citation);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ALT-05", From("none") with { Rules = FlightRules.Vfr }).Verdict);
    }

    // CAT.OP.MPA.185(b) of the text before 2022: from one hour before to one hour after the landing; with a glide path of its own the visibility alone counts;
    // or two alternates are filed.
    [Fact]
    public void In_europe_the_destination_is_at_its_minima_for_two_hours_or_two_alternates_are_filed()
    {
        LegPlan.Planned To(string kind) => Leg with { To = Leg.To with { ApproachKind = kind } };
        Finding Of(string kind, double? ceiling, double visibility) =>
            Ask.Worst("ALT-01", To(kind), rules: "eu-commercial", forecasts: Ask.Forecast("XBEL", ceiling, visibility));
        Assert.Equal(Verdict.Pass, Of("RNP", 200, 800).Verdict);
        Assert.Equal((Verdict.Fail, "CAT.OP.MPA.185(b) (before 2022)"), (Of("RNP", 199, 800).Verdict, Of("RNP", 199, 800).Citation));
        Assert.Equal(Verdict.Pass, Of("ILS", 100, 800).Verdict);
        Assert.Equal(Verdict.Fail, Of("ILS", 100, 799).Verdict);
        var later = Ask.Fair("XBEL") with
        {
            ByAirport = Forecasts.None.ByAirport.Add("XBEL",
            [Ask.Period(Leg.Times.Landing - Duration.FromHours(2), Leg.Times.Landing + Duration.FromMinutes(30), null, 10_000),
                Ask.Period(Leg.Times.Landing + Duration.FromMinutes(30), Leg.Times.Landing + Duration.FromHours(2), null, 700)])
        };
        Assert.Equal(Verdict.Fail, Ask.Worst("ALT-01", To("RNP"), rules: "eu-commercial", forecasts: later).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ALT-01", To("RNP"), rules: "us-charter", forecasts: later).Verdict);
        var two = To("RNP") with { Alternates = [SomePlans.Alternate, SomePlans.Alternate] };
        Assert.Equal(Verdict.Pass, Ask.Worst("ALT-01", two, rules: "eu-commercial", forecasts: Ask.Forecast("XBEL", 100, 400)).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ALT-01", To("RNP"), rules: "eu-commercial").Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ALT-01", To(""), rules: "eu-commercial", forecasts: Ask.Forecast("XBEL", 100, 4000)).Verdict);
    }

    // From memory: 200 ft and 800 m above the minima with a glide path, 400 ft and 1,500 m without; ICAO: at the minima. XDUN has 300 ft and 1,000 m. A caution
    // only.
    [Theory]
    [InlineData("eu-commercial", "ILS", 500, 1800)]
    [InlineData("eu-commercial", "RNP", 700, 2500)]
    [InlineData("icao-annex-6", "RNP", 300, 1000)]
    public void Elsewhere_the_alternate_is_above_its_own_minima(string rules, string kind, double ceiling, double visibility)
    {
        Finding Of(double feet, double metres, double? minimum = 300) => Ask.Worst(
            "ALT-03",
            Leg,
            week => week with
            {
                Input = week.Input with
                {
                    Airports = week.Input.Airports.SetItem("XDUN", SomePlans.Airport(
                Some.Xdun) with
                    { ApproachKind = kind, ApproachMinimum = minimum is { } least ? new Feet(least) : null, ApproachVisibilityM = 1000 })
                }
            },
            rules,
            Ask.Forecast("XDUN", feet, metres));
        Assert.Equal(Verdict.Pass, Of(ceiling, visibility).Verdict);
        Assert.Equal((Verdict.Caution, true), (Of(ceiling - 1, visibility).Verdict, Of(ceiling - 1, visibility).IsBasisUnconfirmed));
        Assert.Equal(Verdict.Caution, Of(ceiling, visibility - 1).Verdict);
        Assert.Equal(Verdict.NotChecked, Of(ceiling, visibility, null).Verdict);
    }

    // 14 CFR 135.225(e): has not served at least 100 hours.
    [Fact]
    public void A_captain_new_to_the_type_has_higher_minima()
    {
        LegPlan.Planned Hours(double? hours) => Leg with { Captain = SomePlans.Pilot() with { HoursInType = hours } };
        Ask.Boundary("ALT-06", Hours(100), Hours(99), Hours(null), Verdict.Caution);
    }

    // 14 CFR 135.225(e): 100 ft and 1/2 mile (804.672 m) above 200 ft and 800 m, but no higher than the minima as an alternate: a minimum of 750 ft without a
    // glide path goes to 800 ft, 550 ft with one to 600 ft.
    [Theory]
    [InlineData("ILS", 200, 800, 300, 1604.672)]
    [InlineData("RNP", 750, 800, 800, 1604.672)]
    [InlineData("ILS", 550, 800, 600, 1604.672)]
    [InlineData("RNP", 900, 3000, 900, 3218.688)]
    public void The_forecast_is_at_or_above_the_higher_minima_of_a_captain_new_to_the_type(
        string kind, double minimumFt, double minimumM, double ceiling, double visibility)
    {
        var fresh = Leg with
        {
            Captain = SomePlans.Pilot() with { HoursInType = 99 },
            To = Leg.To with { ApproachKind = kind, ApproachMinimum = new Feet(minimumFt), ApproachVisibilityM = minimumM }
        };
        ImmutableArray<Finding> Of(double? ceilingFt, double metres, LegPlan.Planned? leg = null) =>
            Ask.All("ALT-06", leg ?? fresh, forecasts: Ask.Forecast("XBEL", ceilingFt, metres));
        Assert.Equal([Verdict.Caution, Verdict.Pass], Of(ceiling, visibility).Select(finding => finding.Verdict));
        var low = Of(ceiling - 1, visibility)[0];
        Assert.Equal((Verdict.Fail, "14 CFR 135.225(e)"), (low.Verdict, low.Citation));
        Assert.Equal(Verdict.Fail, Of(null, visibility - 1)[0].Verdict);
        Assert.Equal([Verdict.Caution, Verdict.NotChecked], Ask.All("ALT-06", fresh).Select(finding => finding.Verdict));
        Assert.Equal([Verdict.Pass],
            Of(ceiling - 1, visibility, fresh with { Captain = SomePlans.Pilot() with { HoursInType = 100 } }).Select(finding => finding.Verdict));
    }

    // 14 CFR 91.169(c)(2): without an approach the descent from the minimum altitude is made under VFR; 800 ft and 2 miles say nothing of it.
    [Fact]
    public void An_alternate_without_an_approach_is_not_held_against_minima_of_one()
    {
        var finding = Ask.Worst(
            "ALT-03", Leg, week => week with
            {
                Input = week.Input with
                {
                    Airports = week.Input.Airports.SetItem("XDUN",
                SomePlans.Airport(Some.Xdun) with { ApproachKind = "none" })
                }
            }, forecasts: Ask.Fair("XDUN"));
        Assert.Equal(Verdict.NotChecked, finding.Verdict);
        Assert.Contains("XDUN has no instrument approach", finding.Text, StringComparison.Ordinal);
    }
}
