using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Loading;

public sealed class LoadingChecksTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned With(Func<LoadSheet, LoadSheet> change) => Leg with { Load = change(Leg.Load) };

    private static LegPlan.Planned Of(Func<AircraftType, AircraftType> change) => Leg with { Type = change(Leg.Type) };

    [Fact]
    public void Zero_fuel_weight() => Ask.Boundary("WB-01", With(load => load with { ZeroFuel = SomePlans.At(8000) }),
        With(load => load with { ZeroFuel = SomePlans.At(8001) }), Of(type => type with { MaximumZeroFuel = null }));

    [Fact]
    public void Ramp_weight() => Ask.Boundary("WB-02", With(load => load with { Ramp = SomePlans.At(9040) }),
        With(load => load with { Ramp = SomePlans.At(9041) }), Of(type => type with { MaximumRamp = null }));

    [Fact]
    public void Takeoff_weight()
    {
        Ask.Boundary("WB-03", With(load => load with { Takeoff = SomePlans.At(9000) }), With(load => load with { Takeoff = SomePlans.At(9001) }),
            Of(type => type with { MaximumTakeoff = null }));
        var finding = Ask.Worst("WB-03", With(load => load with { Takeoff = SomePlans.At(9120) }));
        Assert.Equal("Takeoff weight is 9,120 lb, 120 lb over the maximum takeoff weight (9,000 lb).", finding.Text);
        Assert.Equal("14 CFR 91.9(a); 14 CFR 91.103(b)", finding.Citation);
    }

    [Fact]
    public void Centre_of_gravity_at_takeoff()
    {
        LegPlan.Planned At(double arm) => With(load => load with { Tests = [SomePlans.Test("takeoff", EnvelopeCase.Takeoff, 6500, arm)] });
        Ask.Boundary("WB-04", At(205), At(205.01), With(load => load with { Tests = [] }));
        Assert.Equal("Centre of gravity at takeoff (6,500 lb): 205.40 in, 0.40 in behind the aft limit (205.00 in).", Ask.Worst("WB-04", At(205.4)).Text);
        Assert.Equal("Centre of gravity at takeoff (6,500 lb): 194.50 in, 0.50 in ahead of the forward limit (195.00 in).", Ask.Worst("WB-04", At(194.5)).Text);
    }

    /// <summary>Weights held against a greatest weight are rounded up wherever they stand: the sheet says 6,501 lb too.</summary>
    [Fact]
    public void The_weight_of_a_centre_of_gravity_is_written_as_beside_its_limit()
    {
        LegPlan.Planned At(double weightLb, Func<AircraftType, AircraftType> change) =>
            With(load => load with { Tests = [SomePlans.Test("takeoff", EnvelopeCase.Takeoff, weightLb, 205.4)] }) with { Type = change(Leg.Type) };
        Assert.StartsWith("Centre of gravity at takeoff (6,501 lb)", Ask.Worst("WB-04", At(6500.3, type => type)).Text, StringComparison.Ordinal);
        Assert.StartsWith("Centre of gravity at takeoff (6,500 lb)", Ask.Worst("WB-04", At(6500.3, type => type with { MaximumTakeoff = null })).Text,
            StringComparison.Ordinal);
    }

    // A limit between two corners of the envelope: 195.003 in is printed as 195.01 in, 194.501 in as 194.50 in, and 0.51 in lie between. At 195.004 in the
    // limit is kept, and nothing shows it as broken.
    [Fact]
    public void A_limit_of_the_centre_of_gravity_agrees_with_its_difference_as_printed()
    {
        Finding At(double arm, bool inside) => Ask.Worst("WB-04", With(load =>
            load with
            {
                Tests = [SomePlans.Test("takeoff", EnvelopeCase.Takeoff, 6500, arm) with { IsInside = inside, ForwardLimit = new Inches(195.003),
                ArmMargin = new Inches(arm - 195.003) }]
            }));
        var ahead = At(194.501, inside: false);
        Assert.Equal("Centre of gravity at takeoff (6,500 lb): 194.50 in, 0.51 in ahead of the forward limit (195.01 in).", ahead.Text);
        Assert.Equal((195.01, 194.5), (ahead.Numbers.Required, ahead.Numbers.Actual));
        Assert.Equal("Centre of gravity at takeoff (6,500 lb): 195.01 in, between 195.01 in and 205.00 in.", At(195.004, inside: true).Text);
    }

    [Fact]
    public void A_missing_arm_of_the_empty_weight_is_named()
    {
        var plan = With(load => load with { Tests = [], HasMoments = false }) with { Aircraft = Leg.Aircraft with { BasicEmptyMoment = null } };
        Assert.Contains("the empty-weight arm of X-ABCD", Ask.Worst("WB-04", plan).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(9100, Verdict.NotChecked)] // over the maximum takeoff weight of 9,000 lb, which fails by itself
    [InlineData(8900, Verdict.Fail)]
    public void A_weight_above_the_envelope_fails_unless_the_weight_itself_does(double weightLb, Verdict expected)
    {
        var test = SomePlans.Test("takeoff", EnvelopeCase.Takeoff, weightLb) with
        {
            IsInside = false,
            ForwardLimit = null,
            AftLimit = null,
            ArmMargin = new Inches(-5),
            WeightMargin = new Pounds(-100)
        };
        var finding = Ask.Worst("WB-04", With(load => load with { Tests = [test] }));
        Assert.Equal(expected, finding.Verdict);
    }

    [Fact]
    public void Several_states_outside_are_one_failure_with_the_worst_first()
    {
        var finding = Ask.All("WB-05", With(load => load with
        {
            Tests = [SomePlans.Test("landing", EnvelopeCase.Landing, 5860, 205.5), SomePlans.Test("zero fuel", EnvelopeCase.ZeroFuel, 5400, 206),
                SomePlans.Test("during the flight", EnvelopeCase.Takeoff, 6000, 201)],
        })).Single(answer => answer.Verdict == Verdict.Fail);
        Assert.Equal("Centre of gravity at zero fuel (5,400 lb): 206.00 in, 1.00 in behind the aft limit (205.00 in). Outside as well: landing 205.50 in.",
            finding.Text);
    }

    [Fact]
    public void Landing_weight() => Ask.Boundary("WB-05", With(load => load with { Landing = SomePlans.At(8600) }),
        With(load => load with { Landing = SomePlans.At(8601) }), Of(type => type with { MaximumLanding = null }));

    [Theory]
    [InlineData("landing", EnvelopeCase.Landing)]
    [InlineData("zero fuel", EnvelopeCase.ZeroFuel)]
    [InlineData("during the flight", EnvelopeCase.Takeoff)]
    public void Centre_of_gravity_through_the_burn(string when, EnvelopeCase @case)
    {
        LegPlan.Planned At(double arm) =>
            With(load => load with { Tests = [.. load.Tests.Where(test => test.When != when), SomePlans.Test(when, @case, 5500, arm)] });
        Ask.Boundary("WB-05", At(195), At(194.99), With(load => load with { Tests = [SomePlans.Test("takeoff", EnvelopeCase.Takeoff, 6500)] }));
        Assert.Equal(Verdict.Pass, Ask.Worst("WB-04", At(194.99)).Verdict);
    }

    [Fact]
    public void Everybody_of_two_years_or_more_has_a_seat()
    {
        Ask.Boundary("WB-06", Leg, With(load => load with { WithoutSeat = 1 }), Of(type => type with { Seats = null, Stations = [] }));
        Ask.Boundary("WB-06", Of(type => type with { Seats = 2 }), Of(type => type with { Seats = 1 }), null);
        Assert.Contains("1 infant on a lap", Ask.Worst("WB-06", With(load => load with { Passengers = 3 })).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_weighing_dated_after_the_leg_shows_nothing() =>
        Assert.Equal(Verdict.NotChecked,
            Ask.Worst("WB-09", Leg with { Aircraft = Leg.Aircraft with { WeighedOn = SomePlans.Date.PlusDays(1), WeighingDue = null } }).Verdict);

    [Fact]
    public void A_station_holds_its_maximum()
    {
        LegPlan.Planned Hold(double pounds, double? maximum = 100) =>
            With(load => load with
            {
                Stations =
                [new StationLoad(SomePlans.Hold with { Maximum = maximum is { } most ? new Pounds(most) : null }, new Pounds(pounds), 0)]
            });
        Ask.Boundary("WB-07", Hold(100), Hold(101), Hold(50, null));
        Assert.Equal(Verdict.Pass, Ask.Worst("WB-07", Hold(0, null)).Verdict);
        Assert.Equal("ramp", Ask.Worst("WB-07", Hold(101)).Actor);
        Assert.Equal(Verdict.Fail, Ask.Worst("WB-07", With(load => load with { Stations = [new StationLoad(SomePlans.Front, new Pounds(400), 3)] })).Verdict);
    }

    [Fact]
    public void Bags_without_a_place_fail() =>
        Ask.Boundary("WB-07", With(load => load with { WithoutStation = Pounds.Zero }), With(load => load with { WithoutStation = new Pounds(1) }), null);

    [Fact]
    public void A_person_without_a_seat_leaves_the_loads_of_the_stations_open()
    {
        var finding = Ask.Worst("WB-07", With(load => load with { WithoutSeat = 1 }));
        Assert.Equal((Verdict.NotChecked, "Not checked: 1 person has no seat (WB-06) and stands at no station, so the loads of the rows are not whole."),
            (finding.Verdict, finding.Text));
    }

    [Fact]
    public void A_standard_weight_is_a_caution_in_the_united_states_and_a_note_in_europe()
    {
        var assumed = With(load => load with { Items = [load.Items[0] with { IsAssumed = true }, .. load.Items[1..]] });
        Ask.Boundary("WB-08", Leg, assumed, null, Verdict.Caution);
        var finding = Ask.Worst("WB-08", assumed);
        Assert.True(finding.IsBasisUnconfirmed);
        Assert.Equal("1 passenger at a standard weight (made by hand); state the actual weight.", finding.Text);
        Assert.Equal("week.xlsx/Manifest/E2", Assert.Single(finding.Cells));
        Assert.Equal(Verdict.Note, Ask.Worst("WB-08", assumed, rules: "eu-commercial").Verdict);
    }

    // AMC1 CAT.POL.MAB.100(e): fewer than ten seats, a stated mass with at least 4 kg of clothing and 6 kg of hand baggage.
    [Fact]
    public void A_stated_mass_has_allowances_in_europe()
    {
        Finding Asked(string basis, int seats = 9, string own = "", string rules = "eu-commercial") => Ask.Worst(
            "WB-08",
            With(load => load with
            {
                Items = [.. load.Items.Select(
                item => item with { Basis = item.Kind == LoadItemKind.Passenger ? basis : "" })]
            }) with
            { Type = Leg.Type with { Seats = seats } },
            week => week.With(op => op with { PassengerWeights = own }),
            rules);
        Assert.Equal(Verdict.Pass, Asked("with allowances").Verdict);
        Assert.Equal(Verdict.Pass, Asked("weighed").Verdict);
        Assert.Equal(Verdict.Pass, Asked("", own: "weighed").Verdict);
        var bare = Asked("stated", own: "weighed");
        Assert.Equal((Verdict.Caution, "AMC1 CAT.POL.MAB.100(e)", false), (bare.Verdict, bare.Citation, bare.IsBasisUnconfirmed));
        Assert.Equal("2 passengers at the mass as stated: at least 4 kg of clothing and 6 kg of hand baggage are added to each, 20 kg in all.", bare.Text);
        Assert.Contains("week.xlsx/Manifest/E2", bare.Cells);
        Assert.Equal(Verdict.NotChecked, Asked("").Verdict);
        Assert.Equal((Verdict.Caution, true), (Asked("with allowances", seats: 10).Verdict, Asked("with allowances", seats: 10).IsBasisUnconfirmed));
        Assert.Equal(Verdict.Pass, Asked("weighed", seats: 10).Verdict);
        Assert.Equal(Verdict.Pass, Asked("stated", rules: "us-charter").Verdict);
    }

    // 14 CFR 135.185: weighed within the preceding 36 calendar months, multiengine aircraft.
    [Fact]
    public void A_weighing_holds_thirty_six_calendar_months()
    {
        LegPlan.Planned Weighed(LocalDate? on, int engines = 2) =>
            Leg with { Aircraft = Leg.Aircraft with { WeighedOn = on }, Type = Leg.Type with { Engines = engines } };
        Ask.Boundary("WB-09", Weighed(new LocalDate(2023, 7, 1)), Weighed(new LocalDate(2023, 6, 30)), Weighed(null));
        Ask.Boundary("WB-09", Weighed(new LocalDate(2023, 7, 1), 1), Weighed(new LocalDate(2023, 6, 30), 1), Weighed(null, 1), Verdict.Caution);
        Assert.Equal(Verdict.Fail,
            Ask.Worst("WB-09", Weighed(new LocalDate(2026, 1, 1)) with { Aircraft = Leg.Aircraft with { WeighingDue = new LocalDate(2026, 7, 13) } }).Verdict);
    }
}
