using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Airports;

public sealed class AirportChecksTests
{
    // Takeoff at 12:00, landing at 13:00, both UTC.
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned To(Func<Airport, Airport> change) => Leg with { To = change(Leg.To) };

    private static LegPlan.Planned Hours(LocalTime? opens, LocalTime? closes) => To(airport => airport with { Opens = opens, Closes = closes });

    private static LegPlan.Planned Quiet(LocalTime? from, LocalTime? to) => To(airport => airport with { QuietFrom = from, QuietTo = to });

    [Fact]
    public void A_landing_at_closing_time_is_in_time()
    {
        Ask.Boundary("ADM-04", Hours(new LocalTime(6, 0), new LocalTime(13, 0)), Hours(new LocalTime(6, 0), new LocalTime(12, 59)),
            Hours(new LocalTime(6, 0), null), Verdict.Caution);
        Ask.Boundary("ADM-04", Hours(new LocalTime(13, 0), new LocalTime(20, 0)), Hours(new LocalTime(13, 1), new LocalTime(20, 0)), null, Verdict.Caution);
    }

    [Fact]
    public void Hours_may_reach_past_midnight() =>
        Ask.Boundary("ADM-04", Hours(new LocalTime(13, 0), new LocalTime(2, 0)), Hours(new LocalTime(13, 1), new LocalTime(12, 59)), null, Verdict.Caution);

    [Fact]
    public void Hours_are_local_to_the_airport()
    {
        var finding = Ask.Worst("ADM-04", Hours(new LocalTime(12, 0), new LocalTime(20, 0)) with
        {
            To = Leg.To with
            {
                Opens = new LocalTime(12, 0),
                Closes = new LocalTime(20, 0),
                Zone = DateTimeZone.ForOffset(Offset.FromHours(-2))
            }
        });
        Assert.Equal("The landing at XBEL at 11:00 local is outside its hours 12:00 to 20:00.", finding.Text);
    }

    [Fact]
    public void No_movement_in_quiet_hours()
    {
        Ask.Boundary("ADM-04", Quiet(new LocalTime(22, 0), new LocalTime(13, 0)), Quiet(new LocalTime(22, 0), new LocalTime(13, 1)),
            Quiet(null, new LocalTime(6, 0)));
        Ask.Boundary("ADM-04", Quiet(new LocalTime(13, 1), new LocalTime(6, 0)), Quiet(new LocalTime(13, 0), new LocalTime(6, 0)), null);
    }

    [Fact]
    public void The_operator_may_make_hours_binding() =>
        Assert.Equal(Verdict.Fail, Ask.Worst("ADM-04", Hours(new LocalTime(6, 0), new LocalTime(12, 0)),
            week => week.With(new CheckSetting { Check = "ADM-04", State = State.Fail })).Verdict);

    [Theory]
    [InlineData("XBEL", NoticeEffect.Closed, Verdict.Fail)]
    [InlineData("XBEL 09", NoticeEffect.RunwayClosed, Verdict.Fail)]
    [InlineData("XBEL 09/27", NoticeEffect.RunwayClosed, Verdict.Fail)]
    [InlineData("XBEL 27", NoticeEffect.RunwayClosed, Verdict.Pass)]
    [InlineData("XBEL", NoticeEffect.RunwayClosed, Verdict.NotChecked)]
    [InlineData("XBEL", NoticeEffect.Other, Verdict.Note)]
    [InlineData("XDUN", NoticeEffect.Closed, Verdict.Fail)]
    [InlineData("XCOR", NoticeEffect.Closed, Verdict.Pass)]
    public void Notices_about_places(string subject, NoticeEffect effect, Verdict expected)
    {
        var notice = new Notice { Subject = subject, Effect = effect, Text = "works", Origin = SomePlans.Row("week.xlsx/Notices", 3) };
        var finding = Ask.Worst("ADM-07", Leg, week => week.With(notice));
        Assert.Equal(expected, finding.Verdict);
        if (expected != Verdict.Pass)
        {
            Assert.Equal("week.xlsx/Notices/3", finding.Cells[0]);
        }
    }

    [Fact]
    public void A_notice_holds_up_to_its_end()
    {
        var notice = new Notice { Subject = "XBEL", Effect = NoticeEffect.Closed, To = Leg.Times.Landing };
        Assert.Equal(Verdict.Pass, Ask.Worst("ADM-07", Leg, week => week.With(notice)).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("ADM-07", Leg, week => week.With(notice with { To = Leg.Times.Landing + Duration.FromMinutes(1) })).Verdict);
    }

    [Fact]
    public void A_closed_airway_on_the_route_fails()
    {
        var route = Leg.Route with { Segments = [Leg.Route.Segments[0] with { Via = "V12" }] };
        Assert.Equal(Verdict.Fail,
            Ask.Worst("ADM-07", Leg with { Route = route }, week => week.With(new Notice { Subject = "V12", Effect = NoticeEffect.Closed })).Verdict);
    }
}
