using System.Globalization;
using Batch.Flight.Fleet;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

/// <summary>Duty and rest against worked cases that were published.</summary>
public sealed class PublishedDutyTests
{
    private static CheckFile Cases { get; } = CheckFile.Read("duty-published.csv");

    public static IEnumerable<object[]> Ids => Cases.Ids();

    // The leg's release is at 13:35; its duty begins so many hours before, and other work for the company lies in the middle of what is left of the 24 hours.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Rest_in_the_day_is_that_of_the_published_case(string id)
    {
        var row = Cases[id];
        Duration Hours(string column) => Duration.FromHours(double.Parse(row[column], CultureInfo.InvariantCulture));
        var leg = SomePlans.Planned();
        var release = leg.Times.OnBlocks + Duration.FromMinutes(30);
        var report = release - Hours("duty");
        var begin = release - Duration.FromHours(24);
        var work = Hours("duty in the rest before");
        var middle = begin + ((report - begin) / 2);
        ImmutableArray<LoggedDuty> other = work > Duration.Zero
            ? [SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-1), 1) with { DutyOn = middle - (work / 2), DutyOff = middle + (work / 2) }]
            : [];
        var week = SomePlans.Week(leg);
        week = week with
        {
            Input = week.Input with { Logged = [.. week.Input.Logged, .. other] },
            Crew = [.. week.Crew.Select(one => one with { Duties = [.. one.Duties.Select(duty => duty with { Report = report })] })],
        };
        var finding = Ask.AllIn(week, "CREW-02", leg).Single(answer => answer.Citation == "14 CFR 135.267(d)");
        Assert.Equal(row["verdict"], finding.Verdict.ToString(), ignoreCase: true);
        Assert.Equal(Hours("rest in 24 h").TotalHours, finding.Actual ?? double.NaN, 0.01);
    }

    // GM1 ORO.FTL.105(2), as reproduced at understandingeasa2016ftl.wordpress.com, read in November 2026: acclimatised to Helsinki, reporting in London, the
    // reference time is that of London. A report at 16:50 in London (18:50 in Helsinki) stands in the row 16:30 to 16:59 of table 2: 11:15 for two sectors; by
    // Helsinki's clocks it would be 11:00.
    [Fact]
    public void The_reference_time_is_that_of_the_place_of_the_report()
    {
        var zones = DateTimeZoneProviders.Tzdb;
        var leg = SomePlans.Planned().Later(Duration.FromHours(5));
        leg = leg with { From = leg.From with { Zone = zones["Europe/London"] }, Captain = SomePlans.Pilot() with { Base = "XDUN" } };
        var week = SomePlans.Week(leg);
        week = week with
        {
            Input =
            week.Input with { Airports = week.Input.Airports.SetItem("XDUN", week.Input.Airports["XDUN"] with { Zone = zones["Europe/Helsinki"] }) }
        };
        var finding = Ask.AllIn(week, "CREW-13", leg, "eu-commercial")[0];
        Assert.Equal((Verdict.Pass, 11.25), (finding.Verdict, finding.Required));
        Assert.Contains("report at 16:50 local", finding.Text, StringComparison.Ordinal);
    }
}
