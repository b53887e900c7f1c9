using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Airframe;

public sealed class AirframeChecksTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Of(Func<Aircraft, Aircraft> change) => Leg with { Aircraft = change(SomePlans.Aircraft()) };

    // The leg flies one hour; 1,200 h before it.
    [Fact]
    public void An_inspection_is_due_by_hours()
    {
        Ask.Boundary("ACFT-01", Of(aircraft => aircraft with { NextInspectionAt = 1206 }), Of(aircraft => aircraft with { NextInspectionAt = 1200.9 }),
            Of(aircraft => aircraft with { Hours = null }));
        Assert.Equal(Verdict.Caution, Ask.Worst("ACFT-01", Of(aircraft => aircraft with { NextInspectionAt = 1205.9 })).Verdict);
        Assert.Equal(Verdict.Caution, Ask.Worst("ACFT-01", Of(aircraft => aircraft with { NextInspectionAt = 1201 })).Verdict);
    }

    // The sentence and the columns of the register say the same hours, rounded against the aircraft.
    [Theory]
    [InlineData(1206, "X-ABCD has 1,201.1 h at the end of this leg, and the next inspection is due at 1,206 h.")]
    [InlineData(1201, "X-ABCD has 1,201.1 h at the end of this leg, and the next inspection is due at 1,201 h.")]
    public void The_hours_are_said_as_the_register_prints_them(double due, string text)
    {
        var finding = Ask.AllIn(SomePlans.Week(Leg), "ACFT-01", Of(aircraft => aircraft with { Hours = 1200.02, NextInspectionAt = due }))[0];
        Assert.Equal((text, due, 1201.02), (finding.Text, finding.Required, Math.Round(finding.Actual ?? 0, 6)));
    }

    [Fact]
    public void The_hours_of_the_legs_before_count()
    {
        var second = SomePlans.Planned(2).Between("XBEL", "XAND")
            .Later(Duration.FromHours(3)) with
        { Aircraft = SomePlans.Aircraft() with { NextInspectionAt = 1201.9 } };
        Assert.Equal(Verdict.Fail, Ask.AllIn(SomePlans.Week(Leg, second), "ACFT-01", second)[0].Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(SomePlans.Week(SomePlans.Unplanned(1, Leg.Times.OffBlocks), second), "ACFT-01", second)[0].Verdict);
    }

    [Fact]
    public void Dates_hold_to_their_last_day()
    {
        var day = SomePlans.Date;
        Ask.Boundary("ACFT-01", Of(aircraft => aircraft with { AnnualDue = day.PlusDays(30) }), Of(aircraft => aircraft with { AnnualDue = day.PlusDays(-1) }),
            Of(aircraft => aircraft with { AnnualDue = null }));
        Ask.Boundary("ACFT-02", Of(aircraft => aircraft with { TransponderDue = day.PlusDays(30) }),
            Of(aircraft => aircraft with { TransponderDue = day.PlusDays(-1) }), Of(aircraft => aircraft with { TransponderDue = null }));
        Ask.Boundary("ACFT-02", Leg, Of(aircraft => aircraft with { ElectronicLocatorDue = day.PlusDays(-1) }),
            Of(aircraft => aircraft with { ElectronicLocatorDue = null }));
        Ask.Boundary("ACFT-02", Leg, Of(aircraft => aircraft with { AltimeterStaticDue = day.PlusDays(-1) }),
            Of(aircraft => aircraft with { AltimeterStaticDue = null }));
        Assert.Equal(Verdict.Caution, Ask.Worst("ACFT-02", Of(aircraft => aircraft with { TransponderDue = day })).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ACFT-02", Of(aircraft => aircraft with { AltimeterStaticDue = null }) with { Rules = FlightRules.Vfr }).Verdict);
    }

    // 14 CFR 91.171(a)(2): checked within the preceding 30 days. The equipment S, G has satellite navigation too; S alone has none.
    [Fact]
    public void The_vor_receivers_were_checked_within_thirty_days()
    {
        LegPlan.Planned Checked(int? daysAgo, string equipment = "SD/LB1") => Of(aircraft => aircraft with
        {
            VorCheckedOn = daysAgo is { } days
            ? SomePlans.Date.PlusDays(-days)
            : null
        }) with
        { Type = Leg.Type with { Equipment = equipment } };
        Ask.Boundary("ACFT-05", Checked(30), Checked(31), Checked(null));
        Ask.Boundary("ACFT-05", Checked(30, "SDG/LB1"), Checked(31, "SDG/LB1"), Checked(null, "SDG/LB1"), Verdict.Caution);
        Ask.Boundary("ACFT-05", Checked(30, ""), Checked(31, ""), Checked(null, ""));
        Assert.Equal("14 CFR 91.171(a)(2)", Ask.Worst("ACFT-05", Checked(31)).Citation);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ACFT-05", Checked(null, "VG/LB1")).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ACFT-05", Checked(null) with { Rules = FlightRules.Vfr }).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ACFT-05", Checked(-1)).Verdict);
    }

    // 14 CFR 91.171(a)(1): maintained, checked and inspected under an approved procedure; the 30 days of (a)(2) are the other way.
    [Fact]
    public void Receivers_kept_by_an_approved_procedure_need_no_check_of_thirty_days()
    {
        var old = Of(aircraft => aircraft with { VorCheckedOn = null }) with { Type = Leg.Type with { Equipment = "SD/LB1" } };
        var finding = Ask.Worst("ACFT-05", old, week => week.With(op => op with { VorCheck = "approved procedure" }));
        Assert.Equal((Verdict.Pass, "14 CFR 91.171(a)(1)"), (finding.Verdict, finding.Citation));
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ACFT-05", old, week => week.With(op => op with { VorCheck = "30 days" })).Verdict);
    }

    // Off blocks at 12:00 and on blocks the next day: a check dated on the day of the landing was made after the departure.
    [Fact]
    public void A_vor_check_on_the_day_of_the_landing_is_no_check_before_a_leg_over_midnight()
    {
        var night = Of(aircraft => aircraft with { VorCheckedOn = SomePlans.Date.PlusDays(1) }) is var leg
            ? leg with { Times = leg.Times with { OnBlocks = leg.Times.OffBlocks + Duration.FromHours(22) } }
            : null!;
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ACFT-05", night).Verdict);
    }

    [Fact]
    public void An_aircraft_is_in_service()
    {
        Ask.Boundary("ACFT-03", Leg, Of(aircraft => aircraft with { Status = "Unserviceable" }), Of(aircraft => aircraft with { Status = "" }));
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ACFT-03", Of(aircraft => aircraft with { Status = "on lease" })).Verdict);
        Assert.Equal(Verdict.Caution, Ask.Worst("ACFT-03", Of(aircraft => aircraft with { DeferredItems = "Reading light" })).Verdict);
        var notice = new Notice { Subject = "X-ABCD", Effect = NoticeEffect.Closed, From = Leg.Times.OnBlocks };
        Assert.Equal(Verdict.Fail, Ask.Worst("ACFT-03", Leg, week => week.With(notice)).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ACFT-03", Leg, week => week.With(notice with { From = notice.From + Duration.FromMinutes(1) })).Verdict);
    }
}
