using Batch.Flight.Air.Bulletins;
using Batch.Flight.Week;
using Batch.Testing;
using NodaTime.Text;

namespace Batch.Checks.Tests.Alternates;

/// <summary>Whether an alternate is required, against published questions with their answers.</summary>
public sealed class PublishedAlternateTests
{
    private static CheckFile Cases { get; } = CheckFile.Read("alternate-published.csv");

    public static IEnumerable<object[]> Ids => Cases.Ids();

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_alternate_is_required_where_the_printed_answer_says_so(string id)
    {
        var row = Cases[id];
        var finding = Look(row, Moment(row["eta"]));
        Assert.Equal(row["required"] == "yes" ? Verdict.Fail : Verdict.Pass, finding.Verdict);
        Assert.Equal("14 CFR 91.169(b)", finding.Citation);
    }

    // The thunderstorm's ceiling of 1,500 ft begins at 22:00: the hour after an arrival at 21:00 meets it, that of 20:59 does not.
    [Fact]
    public void The_hour_after_the_arrival_decides()
    {
        Assert.Equal(Verdict.Pass, Look(Cases["AQ1"], Instant.FromUtc(2026, 7, 12, 20, 59)).Verdict);
        Assert.Equal(Verdict.Fail, Look(Cases["AQ1"], Instant.FromUtc(2026, 7, 12, 21, 0)).Verdict);
    }

    private static Finding Look(CheckRow row, Instant eta)
    {
        var leg = SomePlans.Planned().Later(eta - SomePlans.Planned().Times.Landing);
        leg = leg with
        {
            Purpose = LegPurpose.Ferry,
            Alternates = [],
            Leg = leg.Leg with { Alternate = "" },
            To = leg.To with { Ident = "KATL", ApproachKind = row["approach"] },
        };
        return Ask.Worst("ALT-02", leg, forecasts: ForecastReading.Of([TafReport.Parse(row["forecast"], Moment(row["received"]))]));
    }

    private static Instant Moment(string text) => LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm").Parse(text).Value.InUtc().ToInstant();
}
