using Batch.Checks.Crews;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

/// <summary>
/// Flight duty period, duty in days, flight time and rest as ORO.FTL.205, .210 and .235 have them, from a secondary copy: a caution until confirmed.
/// </summary>
public sealed class EuropeanDutyTests
{
    private const string Rules = "eu-commercial";

    // Off blocks 11:50, report 10:50, on blocks 13:05, release 13:35; all UTC.
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static CheckFile Table { get; } = CheckFile.Read("flight-duty-period.csv");

    public static IEnumerable<object[]> Ids => Table.Ids();

    private static PlannedWeek Logged(PlannedWeek week, params LoggedDuty[] rows) => week with
    {
        Input = week.Input with
        {
            Logged =
        [SomePlans.Logged("ABC", new LocalDate(2025, 1, 1), 0) with { DutyOn = null, DutyOff = null }, .. rows, SomePlans.DayOff("ABC")]
        }
    };

    private static string Words(IEnumerable<Finding> findings) =>
        string.Join(' ', findings.Select(finding => finding.Verdict == Verdict.NotChecked ? "not checked" : finding.Verdict.ToString().ToLowerInvariant()));

    private static LoggedDuty Duty(LocalDate date, Duration from, Duration length, double flight = 1) => SomePlans.Logged("ABC", date, flight) with
    {
        DutyOn = date.AtMidnight().InUtc().ToInstant() + from,
        DutyOff = date.AtMidnight().InUtc().ToInstant() + from + length,
    };

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_limit_is_that_of_the_table(string id)
    {
        var row = Table[id];
        var report = NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(row["report"]).Value;
        var ruling = RuleSet.Load(Rules).RulingFor(new FlightDutyPeriod(), new LegUnderCheck(Leg, new WeekUnderCheck(SomePlans.Week(Leg)), Forecasts.None))
            ?? throw new InvalidOperationException("no ruling");
        foreach (var (column, sectors) in new[] { ("sectors 1-2", 1), ("sectors 1-2", 2), ("3", 3), ("4", 4), ("5", 5), ("6", 6), ("7", 7), ("8", 8), ("9", 9),
            ("10", 10) })
        {
            var parts = row[column].Split(':');
            var hours = int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture)
                + (int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture) / 60d);
            Assert.Equal(hours, FlightDutyPeriod.Limit(ruling, report, sectors).Value, 9);
        }
    }

    // Report 10:50: 13 hours for two sectors, 12:30 for three. Three legs, the last on blocks 13 h or 12 h 30 min after the report.
    [Fact]
    public void The_flight_duty_period_ends_on_blocks_of_the_last_sector()
    {
        Finding Last(int number, int minutesAfterReport)
        {
            var last = SomePlans.Planned(number).Between(number % 2 == 0 ? "XBEL" : "XAND", number % 2 == 0 ? "XAND" : "XBEL");
            last = last.Later(Duration.FromMinutes(minutesAfterReport - 135));
            LegPlan.Planned[] between = number == 3 ? [SomePlans.Planned(2).Between("XBEL", "XAND").Later(Duration.FromHours(4))] : [];
            return Ask.AllIn(SomePlans.Week([Leg, .. between, last]), "CREW-13", last, Rules)[0];
        }

        Assert.Equal(Verdict.Pass, Last(2, 13 * 60).Verdict);
        var long2 = Last(2, (13 * 60) + 1);
        Assert.Equal((Verdict.Caution, true, "ORO.FTL.205(b)(1), table 2"), (long2.Verdict, long2.IsBasisUnconfirmed, long2.Citation));
        Assert.Equal("The flight duty period of ABC to the end of this leg is 13 h 01 min, 1 min over the limit for 2 sectors from a report at 10:50 local (13 h). Not looked at: extensions of the period, the commander's discretion, split duty and standby (ORO.FTL.205(c) to (f), .220, .225).", long2.Text);
        Assert.Equal(Verdict.Pass, Last(3, (12 * 60) + 30).Verdict);
        Assert.Equal(Verdict.Caution, Last(3, (12 * 60) + 31).Verdict);
    }

    [Fact]
    public void Far_from_the_base_the_table_is_not_used()
    {
        // The base three hours west of the place of the report.
        var week = SomePlans.Week(Leg);
        week = week with
        {
            Input = week.Input with
            {
                Airports = week.Input.Airports.SetItem("XDUN",
            week.Input.Airports["XDUN"] with { Zone = DateTimeZone.ForOffset(Offset.FromHours(-3)) })
            }
        };
        Finding From(string home) => Ask.AllIn(week, "CREW-13", Leg with { Captain = SomePlans.Pilot() with { Base = home } }, Rules)[0];
        Assert.Equal(Verdict.Pass, From("XAND").Verdict);
        Assert.Equal(Verdict.NotChecked, From("XDUN").Verdict);
        Assert.Contains("acclimatised", From("XDUN").Text, StringComparison.Ordinal);
    }

    // ORO.FTL.210(a): 60, 110 and 190 hours of duty in 7, 14 and 28 consecutive days. The leg's own duty is 2 h 45 min.
    [Theory]
    [InlineData(7, 60)]
    [InlineData(14, 110)]
    [InlineData(28, 190)]
    public void Duty_in_days(int days, int limit)
    {
        var own = Duration.FromMinutes(165);
        // Full days of 20 hours from the first day of the span on; the rest in one day of its own. What lies a day earlier does not count.
        Finding After(Duration extra)
        {
            var left = Duration.FromHours(limit) - own + extra;
            var rows = new List<LoggedDuty> { Duty(SomePlans.Date.PlusDays(-days), Duration.FromHours(2), Duration.FromHours(20)) };
            for (var day = 1 - days; left > Duration.Zero; day++)
            {
                var length = Duration.Min(left, Duration.FromHours(20));
                rows.Add(Duty(SomePlans.Date.PlusDays(day), Duration.FromHours(2), length));
                left -= length;
            }

            return Ask.AllIn(Logged(SomePlans.Week(Leg), [.. rows]), "CREW-14", Leg, Rules).Single(finding => finding.Required == limit);
        }

        Assert.Equal(Verdict.Pass, After(Duration.Zero).Verdict);
        Assert.Equal(Verdict.Caution, After(Duration.FromMinutes(1)).Verdict);
    }

    // ORO.FTL.210(b): 100 hours in 28 days (from 17 June), 900 in the calendar year, 1,000 in 12 calendar months (from 1 August 2025). The leg is 1 h 15 min.
    [Theory]
    [InlineData("2026-06-17", 100)]
    [InlineData("2026-01-01", 900)]
    [InlineData("2025-08-01", 1000)]
    public void Flight_time_over_longer_periods(string first, double limit)
    {
        var day = NodaTime.Text.LocalDatePattern.Iso.Parse(first).Value;
        Finding After(LocalDate on, double hours) => Ask.AllIn(Logged(SomePlans.Week(Leg), SomePlans.Logged("ABC", on, hours)), "CREW-03", Leg, Rules)
            .Single(finding => finding.Required == limit);
        Assert.Equal(Verdict.Pass, After(day, limit - 1.25).Verdict);
        Assert.Equal(Verdict.Caution, After(day, limit - 1.24).Verdict);
        Assert.Equal(Verdict.Pass, After(day.PlusDays(-1), limit).Verdict);
    }

    // ORO.FTL.235(a), (b): as long as the duty before, at least 12 hours at the base and 10 away; the report is at 10:50.
    [Theory]
    [InlineData("XAND", 8, 12)]
    [InlineData("XDUN", 8, 10)]
    [InlineData("XAND", 13, 13)]
    [InlineData("XDUN", 11, 11)]
    public void Rest_before_a_duty(string home, int dutyHours, int restHours)
    {
        var report = Leg.Times.OffBlocks - Duration.FromHours(1);
        Finding After(Duration rest)
        {
            var off = report - rest;
            var row = SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-1), 1) with { DutyOn = off - Duration.FromHours(dutyHours), DutyOff = off };
            return Ask.AllIn(Logged(SomePlans.Week(Leg), row), "CREW-15", Leg with { Captain = SomePlans.Pilot() with { Base = home } }, Rules)[0];
        }

        Assert.Equal(Verdict.Pass, After(Duration.FromHours(restHours)).Verdict);
        var less = After(Duration.FromHours(restHours) - Duration.FromMinutes(1));
        Assert.Equal((Verdict.Caution, (double)restHours), (less.Verdict, Math.Round(less.Required ?? 0, 6)));
    }

    [Fact]
    public void The_rest_is_looked_at_once_a_duty()
    {
        var back = SomePlans.Planned(2).Between("XBEL", "XAND").Later(Duration.FromHours(4));
        Assert.Equal(Verdict.NotApplicable, Ask.AllIn(Logged(SomePlans.Week(Leg, back)), "CREW-15", back, Rules)[0].Verdict);
    }

    // ICAO Annex 6 names no number: said for each check, until the Checks sheet gives one.
    [Theory]
    [InlineData("CREW-01", "1/10", "2/10")]
    [InlineData("CREW-02", "22/14", "10/14")]
    [InlineData("CREW-03", "1", "500")]
    [InlineData("CREW-14", "2", "60")]
    public void Where_the_State_sets_the_number_the_operator_gives_it(string check, string tooStrict, string fits)
    {
        Finding With(string value) =>
            Ask.AllIn(Logged(SomePlans.Week(Leg)).With(new CheckSetting { Check = check, Value = value }), check, Leg, "icao-annex-6")[0];
        var open = Ask.AllIn(Logged(SomePlans.Week(Leg)), check, Leg, "icao-annex-6");
        var said = Assert.Single(open);
        Assert.Equal(Verdict.NotChecked, said.Verdict);
        Assert.Contains("State of the operator", said.Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, With(fits).Verdict);
        Assert.Equal(Verdict.Fail, With(tooStrict).Verdict);
        Assert.Contains("operator's Checks sheet", With(tooStrict).Citation, StringComparison.Ordinal);
        Assert.Equal("note not checked",
            Words(Ask.AllIn(Logged(SomePlans.Week(Leg)).With(new CheckSetting { Check = check, Value = "many" }), check, Leg, "icao-annex-6")));
    }
}
