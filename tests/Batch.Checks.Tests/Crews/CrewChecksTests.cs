using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

public sealed class CrewChecksTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Captain(Func<CrewMember, CrewMember> change) => Leg with { Captain = change(SomePlans.Pilot()) };

    private static LegPlan.Planned WithSecond(LegPlan.Planned plan, Func<CrewMember, CrewMember>? change = null) => plan with
    {
        Leg = plan.Leg with { SecondPilot = "DEF" },
        SecondPilot = change is null ? SomePlans.Pilot("DEF") : change(SomePlans.Pilot("DEF")),
    };

    private static PlannedWeek Logged(PlannedWeek week, params LoggedDuty[] rows) => week with { Input = week.Input with { Logged = [.. rows] } };

    private static LoggedDuty Duty(LocalDate date, int fromHour, int toHour, double hours) => SomePlans.Logged("ABC", date, hours) with
    {
        DutyOn = date.At(new LocalTime(fromHour, 0)).InUtc().ToInstant(),
        DutyOff = date.At(new LocalTime(toHour, 0)).InUtc().ToInstant(),
    };

    // 14 CFR 135.267(b)(1): 8 hours in any 24 consecutive hours. The leg is 75 minutes block to block, 11:50 to 13:05.
    [Fact]
    public void One_pilot_flies_eight_hours_in_any_twenty_four()
    {
        PlannedWeek Flown(double hours) => Logged(SomePlans.Week(Leg), Duty(SomePlans.Date.PlusDays(-1), 14, 22, hours));
        Assert.Equal(Verdict.Pass, Ask.AllIn(Flown(6.75), "CREW-01", Leg)[0].Verdict);
        var finding = Ask.AllIn(Flown(6.76), "CREW-01", Leg)[0];
        Assert.Equal((Verdict.Fail, "14 CFR 135.267(b)"), (finding.Verdict, finding.Citation));
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(Logged(SomePlans.Week(Leg)), "CREW-01", Leg)[0].Verdict);
    }

    // 14 CFR 135.267(b)(2): 10 hours with two qualified pilots.
    [Fact]
    public void Two_pilots_fly_ten_hours_in_any_twenty_four()
    {
        var plan = WithSecond(Leg);
        PlannedWeek Flown(double hours) =>
            Logged(SomePlans.Week(plan), Duty(SomePlans.Date.PlusDays(-1), 14, 23, hours), SomePlans.Logged("DEF", new LocalDate(2026, 1, 1), 1));
        Assert.Equal(Verdict.Pass, Ask.AllIn(Flown(8.75), "CREW-01", plan)[0].Verdict);
        Assert.Equal(Verdict.Fail, Ask.AllIn(Flown(8.76), "CREW-01", plan)[0].Verdict);
    }

    // 14 CFR 135.267(b)(2) means two qualified pilots: with a second pilot who is not on the type, or may not assist, the 8 hours of one hold.
    [Fact]
    public void A_second_pilot_who_is_not_qualified_makes_no_second_pilot()
    {
        Finding Of(Func<CrewMember, CrewMember> second, double hours = 8.75)
        {
            var plan = WithSecond(Leg, second);
            return Ask.AllIn(Logged(SomePlans.Week(plan), Duty(SomePlans.Date.PlusDays(-1), 14, 23, hours),
                SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 1), SomePlans.Logged("DEF", new LocalDate(2026, 1, 1), 1)), "CREW-01", plan)[0];
        }

        Assert.Equal((Verdict.Fail, 8.0), (Of(pilot => pilot with { Types = ["Other"] }).Verdict, Of(pilot => pilot with { Types = ["Other"] }).Required));
        Assert.Equal(Verdict.Fail, Of(pilot => pilot with { MayAssist = false }).Verdict);
        Assert.Equal((Verdict.NotChecked, "Not checked: whether the second pilot DEF is qualified on Skua 9 is not given; ABC flies 10 h in these 24 hours, more than the 8 h for one pilot."),
            (Of(pilot => pilot with { Types = [] }).Verdict, Of(pilot => pilot with { Types = [] }).Text));
        Assert.Equal(Verdict.Pass, Of(pilot => pilot with { Types = [] }, 6.75).Verdict);
        Assert.Equal(Verdict.Fail, Of(pilot => pilot with { Types = [] }, 8.76).Verdict);
    }

    [Fact]
    public void Flying_before_the_twenty_four_hours_does_not_count()
    {
        var week = Logged(SomePlans.Week(Leg), Duty(SomePlans.Date.PlusDays(-1), 5, 13, 8));
        var finding = Ask.AllIn(week, "CREW-01", Leg)[0];
        Assert.Equal((Verdict.Pass, 1.25), (finding.Verdict, finding.Actual));
    }

    [Fact]
    public void An_unplanned_leg_in_the_day_leaves_the_flight_time_open()
    {
        var week = SomePlans.Week(SomePlans.Unplanned(2, Leg.Times.OffBlocks - Duration.FromHours(4)), Leg);
        Assert.Contains("T101/2", Ask.AllIn(week, "CREW-01", Leg)[0].Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(week, "CREW-01", Leg)[0].Verdict);
    }

    [Fact]
    public void A_logged_day_that_is_also_planned_is_counted_once()
    {
        var week = Logged(SomePlans.Week(Leg), Duty(SomePlans.Date, 11, 14, 1.25), SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2));
        Assert.Equal(1.25, Ask.AllIn(week, "CREW-01", Leg)[0].Actual);
    }

    // What was flown counts where it is more than what was planned.
    [Fact]
    public void A_logged_day_that_is_also_planned_counts_as_it_was_flown()
    {
        var week = Logged(SomePlans.Week(Leg), Duty(SomePlans.Date, 11, 14, 2), SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2));
        Assert.Equal(2, Ask.AllIn(week, "CREW-01", Leg)[0].Actual);
        Assert.Equal(4, Ask.AllIn(week, "CREW-03", Leg)[2].Actual);
    }

    [Fact]
    public void Two_logged_rows_of_a_planned_day_count_as_they_were_flown_together()
    {
        var row = SomePlans.Logged("ABC", SomePlans.Date, 2);
        var week = Logged(SomePlans.Week(Leg), row, row, SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2));
        Assert.Equal(4, Ask.AllIn(week, "CREW-01", Leg)[0].Actual);
    }

    // The night before ended ten minutes after this duty's report: it is another duty, not this one that was logged, and leaves no ten hours of rest.
    [Fact]
    public void A_logged_duty_that_runs_into_the_report_counts_in_full()
    {
        var night = Duty(SomePlans.Date.PlusDays(-1), 20, 23, 7) with { DutyOff = SomePlans.Date.At(new LocalTime(11, 0)).InUtc().ToInstant() };
        var week = Logged(SomePlans.Week(Leg), SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2), night);
        Assert.Equal((Verdict.Fail, 8.25), (Ask.AllIn(week, "CREW-01", Leg)[0].Verdict, Ask.AllIn(week, "CREW-01", Leg)[0].Actual));
        Assert.Equal(Verdict.Fail, Ask.AllIn(week, "CREW-02", Leg)[0].Verdict);
        Assert.Equal((Verdict.Caution, 0),
            (Ask.AllIn(week, "CREW-15", Leg, "eu-commercial")[0].Verdict, Ask.AllIn(week, "CREW-15", Leg, "eu-commercial")[0].Actual));
    }

    [Fact]
    public void A_logged_duty_that_runs_into_the_first_leg_is_not_taken_for_it()
    {
        var night = Duty(SomePlans.Date.PlusDays(-1), 20, 23, 7) with { DutyOff = SomePlans.Date.At(new LocalTime(12, 0)).InUtc().ToInstant() };
        var week = Logged(SomePlans.Week(Leg), SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2), night);
        Assert.Equal(8.25, Ask.AllIn(week, "CREW-01", Leg)[0].Actual);
        Assert.Equal(Verdict.Fail, Ask.AllIn(week, "CREW-02", Leg)[0].Verdict);
        // From a place where the day began earlier or later nothing else comes out.
        var west = SomePlans.Planned(2).Later(Duration.FromHours(4)) is var back
            ? back with { From = back.From with { Zone = DateTimeZoneProviders.Tzdb["America/St_Johns"] } }
            : null!;
        Assert.Equal(9.5, Ask.AllIn(Logged(SomePlans.Week(Leg, west), [.. week.Input.Logged]), "CREW-01", west)[0].Actual);
    }

    // 14 CFR 135.267(d): 10 consecutive hours of rest in the 24 before the planned completion, 13:35; duty begins at 10:50.
    [Fact]
    public void Ten_hours_of_rest_before_the_planned_completion()
    {
        var day = SomePlans.Date;
        PlannedWeek On(LoggedDuty row) => Logged(SomePlans.Week(Leg), row, SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2));
        LoggedDuty Until(LocalTime time) => Duty(day.PlusDays(-1), 12, 23, 3) with { DutyOff = day.At(time).InUtc().ToInstant() };
        Assert.Equal(Verdict.Pass, Ask.AllIn(On(Until(new LocalTime(0, 50))), "CREW-02", Leg)[0].Verdict);
        var finding = Ask.AllIn(On(Until(new LocalTime(0, 51))), "CREW-02", Leg)[0];
        Assert.Equal((Verdict.Fail, 10, "h"), (finding.Verdict, finding.Required, finding.Unit));
        Assert.True(finding.Margin < 0);
    }

    [Fact]
    public void Rest_is_not_checked_where_duty_times_are_not_known()
    {
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(Logged(SomePlans.Week(Leg)), "CREW-02", Leg)[0].Verdict);
        var untimed = Duty(SomePlans.Date.PlusDays(-1), 8, 16, 3) with { DutyOn = null, DutyOff = null };
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(Logged(SomePlans.Week(Leg), untimed), "CREW-02",
            Leg with { Times = Leg.Times with { OnBlocks = Leg.Times.OffBlocks - Duration.FromHours(4) } })[0].Verdict);
    }

    // 14 CFR 135.267(c): 14 hours of duty; completion is half an hour after blocks, the report an hour before the first.
    [Fact]
    public void A_duty_beyond_fourteen_hours_is_a_caution()
    {
        LegPlan.Planned Evening(int minutes) => SomePlans.Planned(2).Between("XBEL", "XAND").Later(Duration.FromMinutes(minutes));
        // 1 h + gap + 75 min + 30 min: 14 h at a gap of 11 h 15 min.
        Finding Of(int minutes) => Ask.AllIn(SomePlans.Week(Leg.Later(-Duration.FromHours(8)), Evening(minutes)), "CREW-02", Evening(minutes))
            .First(finding => finding.Text.StartsWith("The duty", StringComparison.Ordinal));
        Assert.Equal(Verdict.Pass, Of((3 * 60) + 15).Verdict);
        Assert.Equal(Verdict.Caution, Of((3 * 60) + 16).Verdict);
    }

    // 14 CFR 135.267(a): 500 hours in a calendar quarter, 800 in two, 1,400 in the year. The quarter began on 1 July.
    [Theory]
    [InlineData("2026-07-01", 498.75, 498.76)]
    [InlineData("2026-06-30", 798.75, 798.76)]
    [InlineData("2026-03-31", 1398.75, 1398.76)]
    public void Totals_of_quarters_and_year(string date, double fits, double beyond)
    {
        var day = NodaTime.Text.LocalDatePattern.Iso.Parse(date).Value;
        PlannedWeek Flown(double hours) =>
            Logged(SomePlans.Week(Leg), SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 0), SomePlans.Logged("ABC", day, hours), SomePlans.DayOff("ABC"));
        Assert.Equal(Verdict.Pass, Ask.AllIn(Flown(fits), "CREW-03", Leg)[0].Verdict);
        Assert.Equal(Verdict.Fail, Ask.AllIn(Flown(beyond), "CREW-03", Leg)[0].Verdict);
    }

    [Fact]
    public void A_log_that_begins_late_leaves_the_totals_open()
    {
        var finding = Ask.AllIn(Logged(SomePlans.Week(Leg), SomePlans.Logged("ABC", new LocalDate(2026, 7, 2), 20)), "CREW-03", Leg)[0];
        Assert.Equal(Verdict.NotChecked, finding.Verdict);
        Assert.Contains("begins on 2 Jul 2026", finding.Text, StringComparison.Ordinal);
    }

    // 14 CFR 135.243(c): 1,200 hours under IFR; (b): 500 hours under VFR.
    [Fact]
    public void Hours_of_the_captain()
    {
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { Hours = 1200 }), Captain(pilot => pilot with { Hours = 1199 }),
            Captain(pilot => pilot with { Hours = null }));
        LegPlan.Planned Visual(double hours) => Captain(pilot => pilot with { Hours = hours }) with { Rules = FlightRules.Vfr };
        Ask.Boundary("CREW-06", Visual(500), Visual(499), Leg with { Captain = null });
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("CREW-06", Captain(pilot => pilot with { Hours = 10 }) with { Purpose = LegPurpose.Ferry }).Verdict);
    }

    // 14 CFR 135.293, 135.297, 135.299 with the month of grace of 135.301(a).
    [Fact]
    public void Checks_of_the_pilot_are_current()
    {
        var day = SomePlans.Date;
        Ask.Boundary("CREW-07", Captain(pilot => pilot with { CompetencyUntil = day.PlusDays(30) }),
            Captain(pilot => pilot with { CompetencyUntil = new LocalDate(2026, 5, 31) }), Captain(pilot => pilot with { CompetencyUntil = null }));
        Assert.Equal(Verdict.Caution, Ask.Worst("CREW-07", Captain(pilot => pilot with { CompetencyUntil = day.PlusDays(29) })).Verdict);
        Assert.Equal(Verdict.Caution, Ask.Worst("CREW-07", Captain(pilot => pilot with { InstrumentUntil = new LocalDate(2026, 6, 30) })).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("CREW-07", Captain(pilot => pilot with { InstrumentUntil = new LocalDate(2026, 5, 30) })).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("CREW-07", Captain(pilot => pilot with { LineCheckUntil = new LocalDate(2026, 5, 30) })).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-07", Captain(pilot => pilot with { InstrumentUntil = null }) with { Rules = FlightRules.Vfr }).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("CREW-07", WithSecond(Leg, pilot => pilot with { CompetencyUntil = new LocalDate(2026, 1, 1) })).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("CREW-07", Leg with { Captain = null }).Verdict);
    }

    // 14 CFR 135.247(a): within the preceding 90 days.
    [Fact]
    public void Three_landings_within_ninety_days()
    {
        var day = SomePlans.Date;
        Ask.Boundary(
            "CREW-08",
            Captain(pilot => pilot with { ThirdLastLanding = day.PlusDays(-90), ThirdLastNightLanding = null }),
            Captain(pilot => pilot with { ThirdLastLanding = day.PlusDays(-91), ThirdLastNightLanding = null }),
            Captain(pilot => pilot with { ThirdLastLanding = null, ThirdLastNightLanding = null }));
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-08", Captain(pilot => pilot with { ThirdLastLanding = null })).Verdict);
    }

    // Three landings at night 91 days ago leave open whether three by day came later; where the date by day is given too, the later one counts.
    [Fact]
    public void Old_landings_at_night_alone_show_nothing()
    {
        var day = SomePlans.Date;
        LegPlan.Planned Night(int ago, int? byDay) => Captain(pilot => pilot with
        {
            ThirdLastNightLanding = day.PlusDays(-ago),
            ThirdLastLanding = byDay is { } days ? day.PlusDays(-days) : null,
        });
        Ask.Boundary("CREW-08", Night(90, null), Night(91, 95), Night(91, null));
    }

    // 14 CFR 61.57(c), (e)(3): off charter under IFR, of every leg that is asked for landings and of one that is not.
    [Fact]
    public void Off_charter_the_instrument_experience_is_not_looked_at()
    {
        var empty = Captain(pilot => pilot) with { Purpose = LegPurpose.Ferry, Load = Leg.Load with { Passengers = 0 } };
        Assert.All([empty, empty with { Load = Leg.Load with { Passengers = 1 } }], leg => Assert.Contains(
            "Not looked at: the instrument experience of a captain who does not keep 135.243 and 135.247 (14 CFR 61.57(c),(e)(3)).",
            Ask.Worst("CREW-08", leg).Text, StringComparison.Ordinal));
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("CREW-08", empty with { Rules = FlightRules.Vfr }).Verdict);
    }

    [Fact]
    public void A_landing_dated_after_the_leg_shows_nothing() =>
        Assert.Equal(Verdict.NotChecked,
            Ask.Worst("CREW-08", Captain(pilot => pilot with { ThirdLastLanding = SomePlans.Date.PlusDays(1), ThirdLastNightLanding = null })).Verdict);

    // 14 CFR 61.57(a), (b): off charter, and under part 91, a pilot with passengers has made three landings within 90 days, at night to a full stop.
    [Theory]
    [InlineData("us-general", LegPurpose.Charter, "14 CFR 61.57(a),(b)")]
    [InlineData("us-charter", LegPurpose.Training, "14 CFR 61.57(a),(b),(e)(3)")]
    public void Off_charter_too_passengers_ask_for_three_landings(string rules, LegPurpose purpose, string citation)
    {
        var day = SomePlans.Date;
        LegPlan.Planned Landed(int? ago) => Captain(
            pilot => pilot with { ThirdLastLanding = ago is { } days ? day.PlusDays(-days) : null, ThirdLastNightLanding = null }) with
        { Purpose = purpose };
        Ask.Boundary("CREW-08", Landed(90), Landed(91), Landed(null), rules: rules);
        Assert.Equal(citation, Ask.Worst("CREW-08", Landed(91), rules: rules).Citation);
        Assert.Equal(Verdict.NotApplicable,
            Ask.Worst("CREW-08", Landed(91) with { Load = Leg.Load with { Passengers = 0 }, Rules = FlightRules.Vfr }, rules: rules).Verdict);
    }

    // 14 CFR 61.57(a)(1): "or of an aircraft certificated for more than one pilot flight crewmember"; (a)(2): not on the flight that makes the landings.
    [Theory]
    [InlineData("us-general", LegPurpose.Charter, Verdict.Fail, "14 CFR 61.57(a)")]
    [InlineData("us-general", LegPurpose.Training, Verdict.Caution, "14 CFR 61.57(a)")]
    [InlineData("us-charter", LegPurpose.Ferry, Verdict.Fail, "14 CFR 61.57(a),(e)(3)")]
    [InlineData("us-charter", LegPurpose.Charter, Verdict.Fail, "14 CFR 61.57(a),(e)(3)")]
    [InlineData("us-charter", LegPurpose.Training, Verdict.Caution, "14 CFR 61.57(a),(e)(3)")]
    public void A_type_for_two_pilots_asks_for_three_landings_without_passengers_too(string rules, LegPurpose purpose, Verdict expected, string citation)
    {
        LegPlan.Planned Empty(int? ago, int? pilots) =>
            Captain(pilot =>
                pilot with { ThirdLastLanding = ago is { } days ? SomePlans.Date.PlusDays(-days) : null, ThirdLastNightLanding = null }) with
            {
                Purpose =
                    purpose,
                Load = Leg.Load with { Passengers = 0 },
                Type = Leg.Type with { RequiredPilots = pilots }
            };
        Ask.Boundary("CREW-08", Empty(90, 2), Empty(91, 2), Empty(null, 2), expected, rules);
        Assert.Equal(citation, Ask.Worst("CREW-08", Empty(91, 2), rules: rules).Citation);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("CREW-08", Empty(91, 1) with { Rules = FlightRules.Vfr }, rules: rules).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("CREW-08", Empty(90, null), rules: rules).Verdict);
    }

    // FCL.060(b)(1), and from memory ICAO Annex 6 Part I, 9.4: captain and second pilot, three landings in 90 days; no landings at night are asked of a leg in
    // the night.
    [Theory]
    [InlineData("eu-commercial", Verdict.Fail)]
    [InlineData("icao-annex-6", Verdict.Caution)]
    public void In_europe_and_by_icao_both_pilots_have_landed_three_times(string rules, Verdict expected)
    {
        var day = SomePlans.Date;
        LegPlan.Planned Landed(int? ago) =>
            WithSecond(Leg, pilot => pilot with { ThirdLastLanding = ago is { } days ? day.PlusDays(-days) : null, ThirdLastNightLanding = null }) is var leg
                ? leg with { Captain = SomePlans.Pilot() with { ThirdLastNightLanding = null } }
                : null!;
        Ask.Boundary("CREW-08", Landed(90), Landed(91), Landed(null), expected, rules);
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-08", Landed(80).Later(Duration.FromHours(15)), rules: rules).Verdict);
    }

    // FCL.060(b): "in commercial air transport or carrying passengers". The flight on which a pilot makes the three landings again carries none and is not for
    // hire.
    [Theory]
    [InlineData(LegPurpose.Training, 0, Verdict.NotApplicable)]
    [InlineData(LegPurpose.Ferry, 0, Verdict.NotApplicable)]
    [InlineData(LegPurpose.Training, 1, Verdict.Fail)]
    [InlineData(LegPurpose.Charter, 0, Verdict.Fail)]
    public void In_europe_a_leg_that_is_neither_for_hire_nor_with_passengers_asks_for_no_recent_landings(LegPurpose purpose, int passengers, Verdict expected)
    {
        var leg = Captain(pilot => pilot with { ThirdLastLanding = SomePlans.Date.PlusDays(-91), ThirdLastNightLanding = null }) with
        {
            Purpose = purpose,
            Load = Leg.Load with { Passengers = passengers }
        };
        Assert.Equal(expected, Ask.Worst("CREW-08", leg, rules: "eu-commercial").Verdict);
    }

    // 14 CFR 61.57(c): six approaches within the six calendar months before that of the leg; (d) a check in their place.
    [Fact]
    public void Under_part_91_a_captain_under_ifr_has_flown_six_approaches()
    {
        LegPlan.Planned Flown(int? approaches) => Captain(pilot => pilot with { RecentApproaches = approaches });
        Ask.Boundary("CREW-06", Flown(6), Flown(5), Flown(null), Verdict.Caution, "us-general");
        Assert.Equal("14 CFR 61.57(c),(d)", Ask.Worst("CREW-06", Flown(5), rules: "us-general").Citation);
        Assert.Equal("approaches", Ask.Worst("CREW-06", Flown(5), rules: "us-general").Unit);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("CREW-06", Flown(5) with { Rules = FlightRules.Vfr }, rules: "us-general").Verdict);
    }

    [Fact]
    public void In_the_night_the_landings_are_at_night()
    {
        var day = SomePlans.Date;
        LegPlan.Planned Night(LocalDate? third) => Captain(pilot => pilot with { ThirdLastNightLanding = third }).Later(Duration.FromHours(15));
        Ask.Boundary("CREW-08", Night(day.PlusDays(-89)), Night(day.PlusDays(-90)), Night(null));
        // Sunset at XBEL is the start of an hour in which landings by day still count.
        var sunset = Leg.Daylight.Destination.Sunset ?? throw new InvalidOperationException("no sunset");
        LegPlan.Planned Landing(int minutesAfterSunset) => Captain(pilot => pilot with { ThirdLastNightLanding = null })
            .Later(sunset + Duration.FromMinutes(minutesAfterSunset) - Leg.Times.Landing);
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-08", Landing(57)).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("CREW-08", Landing(63)).Verdict);
    }

    // 14 CFR 61.23(d).
    [Fact]
    public void A_medical_certificate_holds_to_its_last_day()
    {
        var day = SomePlans.Date;
        Ask.Boundary("CREW-09", Captain(pilot => pilot with { MedicalUntil = day.PlusDays(30) }),
            Captain(pilot => pilot with { MedicalUntil = day.PlusDays(-1) }), Captain(pilot => pilot with { MedicalUntil = null }));
        Assert.Equal(Verdict.Caution, Ask.Worst("CREW-09", Captain(pilot => pilot with { MedicalUntil = day })).Verdict);
        Assert.Equal(Verdict.Fail,
            Ask.Worst("CREW-09", WithSecond(Leg, pilot => pilot with { MedicalUntil = day.PlusDays(-1) }), rules: "eu-commercial").Verdict);
    }

    // 14 CFR 135.101 and 135.105: a second pilot under IFR with passengers, or the autopilot.
    [Fact]
    public void One_pilot_under_instrument_rules_has_an_autopilot()
    {
        LegPlan.Planned Auto(bool? has) => Leg with { Aircraft = Leg.Aircraft with { AutopilotForOnePilot = has } };
        Ask.Boundary("CREW-10", Auto(true), Auto(false), Auto(null));
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-10", WithSecond(Auto(false))).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-10", Auto(false) with { Rules = FlightRules.Vfr }).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-10", Auto(false) with { Load = Leg.Load with { Passengers = 0 } }).Verdict);
    }

    // 14 CFR 135.99(b): ten passenger seats or more; 135.113: more than eight.
    [Fact]
    public void Seats_ask_for_a_second_pilot_and_an_empty_pilot_seat()
    {
        LegPlan.Planned Seats(int? seats) => Leg with { Type = Leg.Type with { Seats = seats } };
        Ask.Boundary("CREW-10", Seats(9), Seats(10), Seats(null));
        var beside = Leg.Load.Items[0] with { Station = "Cockpit" };
        LegPlan.Planned Beside(int seats) => Leg with
        {
            Type = Leg.Type with { Seats = seats, Stations = [new Station { Name = "Cockpit", Kind = StationKind.Crew, Arm = new Inches(150), Seats = 2 }] },
            Load = Leg.Load with { Items = [beside] },
        };
        Ask.Boundary("CREW-10", Beside(8), Beside(9), null);
    }

    [Fact]
    public void The_type_says_how_many_pilots()
    {
        LegPlan.Planned Required(int? pilots) => Leg with { Type = Leg.Type with { RequiredPilots = pilots } };
        Ask.Boundary("CREW-10", Required(1), Required(2), Required(null));
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-10", WithSecond(Required(2))).Verdict);
    }

    [Fact]
    public void A_pilot_is_known_and_qualified()
    {
        Ask.Boundary("CREW-12", Leg, Leg with { Captain = null }, Captain(pilot => pilot with { Types = [] }));
        Ask.Boundary("CREW-12", Captain(pilot => pilot with { Types = ["skua 9"] }), Captain(pilot => pilot with { Types = ["Other"] }),
            Captain(pilot => pilot with { MayCommand = null }));
        Assert.Equal(Verdict.Fail, Ask.Worst("CREW-12", Captain(pilot => pilot with { MayCommand = false })).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-12", WithSecond(Leg, pilot => pilot with { MayCommand = false })).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("CREW-12", WithSecond(Leg, pilot => pilot with { MayAssist = false })).Verdict);
    }
}
