using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

public sealed class PilotQualificationTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Captain(Func<CrewMember, CrewMember> change, LegPlan.Planned? plan = null) =>
        (plan ?? Leg) with { Captain = change(SomePlans.Pilot()) };

    private static LegPlan.Planned Second(Func<CrewMember, CrewMember> change) =>
        Leg with { Leg = Leg.Leg with { SecondPilot = "DEF" }, SecondPilot = change(SomePlans.Pilot("DEF")) };

    // 14 CFR 135.243(c)(2): 500 hours cross-country, 100 at night, 75 of instrument time.
    [Fact]
    public void Hours_under_IFR()
    {
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { CrossCountryHours = 500 }), Captain(pilot => pilot with { CrossCountryHours = 499 }),
            Captain(pilot => pilot with { CrossCountryHours = null }));
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { NightHours = 100 }), Captain(pilot => pilot with { NightHours = 99 }),
            Captain(pilot => pilot with { NightHours = null }));
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { InstrumentHours = 75 }), Captain(pilot => pilot with { InstrumentHours = 74 }),
            Captain(pilot => pilot with { InstrumentHours = null }));
    }

    // 14 CFR 135.243(b)(2): 100 hours cross-country, 25 of them at night.
    [Fact]
    public void Hours_under_VFR()
    {
        var visual = Leg with { Rules = FlightRules.Vfr };
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { CrossCountryHours = 100 }, visual),
            Captain(pilot => pilot with { CrossCountryHours = 99 }, visual), Captain(pilot => pilot with { CrossCountryHours = null }, visual));
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { NightHours = 25, InstrumentHours = null }, visual),
            Captain(pilot => pilot with { NightHours = 24 }, visual), Captain(pilot => pilot with { NightHours = null }, visual));
    }

    // 14 CFR 135.243(b)(1),(c)(1),(3): a commercial certificate and an instrument rating, or an airline transport certificate.
    [Fact]
    public void Certificate_and_rating_of_the_captain()
    {
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { Certificate = "commercial" }), Captain(pilot => pilot with { Certificate = "private" }),
            Captain(pilot => pilot with { Certificate = "" }));
        Ask.Boundary("CREW-06", Captain(pilot => pilot with { InstrumentRating = true }), Captain(pilot => pilot with { InstrumentRating = false }),
            Captain(pilot => pilot with { InstrumentRating = null }));
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-06", Captain(pilot => pilot with { Certificate = "airline transport", InstrumentRating = null })).Verdict);
    }

    // 14 CFR 135.243(a)(1): an airline transport certificate with ten passenger seats or more, with passengers.
    [Fact]
    public void Ten_seats_ask_for_an_airline_transport_certificate()
    {
        LegPlan.Planned Seats(int? seats, string certificate = "commercial") =>
            Captain(pilot => pilot with { Certificate = certificate }) with { Type = Leg.Type with { Seats = seats } };
        Ask.Boundary("CREW-06", Seats(9), Seats(10), Seats(null));
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-06", Seats(10, "airline transport")).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("CREW-06", Seats(10) with { Load = Leg.Load with { Passengers = 0 } }).Verdict);
    }

    // 14 CFR 135.245(a),(c)(1): commercial certificate, instrument rating, six approaches in six calendar months.
    [Fact]
    public void The_second_pilot()
    {
        Ask.Boundary("CREW-06", Second(pilot => pilot with { RecentApproaches = 6 }), Second(pilot => pilot with { RecentApproaches = 5 }),
            Second(pilot => pilot with { RecentApproaches = null }));
        Ask.Boundary("CREW-06", Second(pilot => pilot with { Hours = 300, NightHours = null }), Second(pilot => pilot with { Certificate = "private" }),
            Second(pilot => pilot with { InstrumentRating = null }));
    }
}
