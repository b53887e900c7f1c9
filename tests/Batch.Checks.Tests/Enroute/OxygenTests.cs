using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Enroute;

/// <summary>
/// Oxygen above 15,000 ft in an unpressurised cabin, and the amounts of Europe and of ICAO. The cruise lasts 40 minutes, climb and descent 10 minutes each,
/// from and to sea level; one pilot and two passengers.
/// </summary>
public sealed class OxygenTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned At(double level, double? minutes, bool pressurised, double? ceiling = null) => Leg with
    {
        Profile = SomePlans.Profile(Leg.Route, level),
        Type = Leg.Type with { Pressurised = pressurised, Ceiling = ceiling is { } feet ? new Feet(feet) : null },
        Aircraft = Leg.Aircraft with { Oxygen = minutes is { } supply ? Duration.FromMinutes(supply) : null, QuickDonningMasks = true },
    };

    // 14 CFR 135.157(a): (1) one of two passengers for what is more than 30 minutes from 10,000 ft through 15,000 ft, and (2) both above. A cruise at 15,000 ft
    // with a hump of 6 minutes at 16,000 ft: in the band 40 + 2 x 10/3 = 46 2/3 minutes, so 16 2/3 for one; above it 6 minutes for both, 12 in all; the pilot
    // above 12,000 ft 40 + 2 x 2 + 6 = 50 minutes, and of 10,000 ft to 12,000 ft, 2 2/3 minutes, none. (50 + 12 + 16 2/3) / 3 = 26.22 minutes shared by all.
    [Fact]
    public void A_short_time_above_fifteen_thousand_feet_leaves_what_the_band_asks_for()
    {
        LegPlan.Planned Hump(double? minutes) => At(15_000, minutes, pressurised: false) is var plan
            && plan.Profile.Slices.First(slice => slice.Phase == FlightPhase.Cruise) is var cruise
            ? plan with { Profile = plan.Profile with { Slices = [.. plan.Profile.Slices, cruise with { StartFt = 16_000, EndFt = 16_000, Hours = 0.1 }] } }
            : throw new InvalidOperationException();
        Ask.Boundary("ENR-05", Hump(26.23), Hump(26.21), Hump(null));
    }

    // From memory: CAT.IDE.A.240, table 1. The pilot all the time above 10,000 ft, all passengers above 13,000 ft, one in ten from 10,000 ft to 13,000 ft
    // beyond 30 minutes. At 12,000 ft: the pilot 40 + 2 x 10/6 = 43 1/3 minutes, one passenger 13 1/3: 56 2/3 / 3 = 18.89 minutes. At 14,000 ft: the pilot 40 +
    // 2 x 10 x 4/14 = 45.71; both passengers 40 + 2 x 10/14 = 41.43 each; in the band 4.29 minutes, none: 128.57 / 3 = 42.86.
    [Theory]
    [InlineData(12_000, 18.89)]
    [InlineData(14_000, 42.86)]
    public void In_europe_without_pressure(double level, double minutes)
    {
        Ask.Boundary("ENR-05", At(level, minutes + 0.01, false), At(level, minutes - 0.01, false), At(level, null, false), Verdict.Caution, "eu-commercial");
        Assert.Equal("CAT.IDE.A.240", Ask.Worst("ENR-05", At(level, 1, false), rules: "eu-commercial").Citation);
    }

    // CAT.IDE.A.235(f), (g): 30 minutes for the pilot, 2 hours in an aeroplane certified above 25,000 ft; (h): ten minutes for every passenger above 15,000 ft.
    // (30 + 2 x 10) / 3 and (120 + 2 x 10) / 3 minutes; an unknown ceiling counts as high.
    [Theory]
    [InlineData(17_000, 25_000.0, 16.67)]
    [InlineData(17_000, 25_001.0, 46.67)]
    [InlineData(17_000, null, 46.67)]
    public void In_europe_should_the_cabin_fail(double level, double? ceiling, double minutes)
    {
        Ask.Boundary("ENR-05", At(level, minutes + 0.01, true, ceiling), At(level, minutes - 0.02, true, ceiling), At(level, null, true, ceiling),
            Verdict.Caution, "eu-commercial");
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", At(10_000, null, true), rules: "eu-commercial").Verdict);
    }

    // CAT.IDE.A.235(b)(1): above 25,000 ft quick-donning masks for the flight crew; a duty.
    [Fact]
    public void In_europe_quick_donning_masks_are_carried_above_25_000_feet()
    {
        LegPlan.Planned With(bool? masks, double level) => At(level, 120, true, 30_000) is var plan
            ? plan with { Aircraft = plan.Aircraft with { QuickDonningMasks = masks } }
            : null!;
        Ask.Boundary("ENR-05", With(true, 25_001), With(false, 25_001), With(null, 25_001), rules: "eu-commercial");
        Assert.Equal("CAT.IDE.A.235(b)(1)", Ask.Worst("ENR-05", With(false, 25_001), rules: "eu-commercial").Citation);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", With(false, 25_000), rules: "eu-commercial").Verdict);
    }

    // From memory: ICAO Annex 6 Part I, 4.4.5.2: above 376 hPa a quick-donning mask for each of the flight crew.
    [Fact]
    public void By_icao_quick_donning_masks_are_carried_above_25_000_feet()
    {
        LegPlan.Planned With(bool? masks, double level) => At(level, 120, true, 30_000) is var plan
            ? plan with { Aircraft = plan.Aircraft with { QuickDonningMasks = masks } }
            : null!;
        Ask.Boundary("ENR-05", With(true, 25_001), With(false, 25_001), With(null, 25_001), Verdict.Caution, "icao-annex-6");
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", With(false, 25_000), rules: "icao-annex-6").Verdict);
    }

    // 14 CFR 91.211(a): (1), (2) "the required minimum flight crew", (3) above 15,000 ft every occupant. Two pilots on a type for one, and two passengers. At
    // 14,500 ft above 14,000 ft 40 + 2 x 10 x 0.5/14.5 = 40.69 minutes for one pilot, below that too short a time: 40.69 / 4 = 10.17. At 16,000 ft 42.5 minutes
    // for one pilot, above 15,000 ft 41.25 for the other and for each passenger: 166.25 / 4 = 41.56.
    [Theory]
    [InlineData("us-general", LegPurpose.Charter, 14_500, 10.17)]
    [InlineData("us-charter", LegPurpose.Ferry, 14_500, 10.17)]
    [InlineData("us-general", LegPurpose.Charter, 16_000, 41.56)]
    public void Part_91_asks_oxygen_for_the_required_pilots(string rules, LegPurpose purpose, double level, double minutes)
    {
        LegPlan.Planned Two(double? supply) => At(level, supply, false) is var plan
            ? plan with { Purpose = purpose, Load = plan.Load with { Pilots = 2 }, Type = plan.Type with { RequiredPilots = 1 } }
            : null!;
        Ask.Boundary("ENR-05", Two(minutes + 0.01), Two(minutes - 0.01), Two(null), rules: rules);
    }

    // The altitude in a pressurised cabin is not in the books: 14 CFR 135.89(b)(1), 91.211(a).
    [Theory]
    [InlineData("us-charter", "14 CFR 135.89(b)(1), 135.157(b)(2)")]
    [InlineData("us-general", "14 CFR 91.211(a)")]
    [InlineData("icao-annex-6", "ICAO Annex 6 Part I, 4.3.9")]
    [InlineData("eu-commercial", "CAT.IDE.A.235, table 1")]
    public void The_altitude_in_the_cabin_is_not_looked_at(string rules, string citation)
    {
        var finding = Ask.Worst("ENR-05", At(20_000, 120, true), rules: rules);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("Not looked at: the altitude in the cabin while it holds its pressure", finding.Text, StringComparison.Ordinal);
        Assert.Contains(citation, finding.Text, StringComparison.Ordinal);
    }

    // From memory: ICAO Annex 6 Part I, 4.3.9: from 10,000 ft to 13,000 ft the crew and one passenger in ten beyond 30 minutes, above it everybody; pressurised
    // above 25,000 ft ten minutes for everybody. At 12,000 ft 13 1/3 minutes for the pilot and for one passenger: 26 2/3 / 3 = 8.89.
    [Fact]
    public void By_icao()
    {
        Ask.Boundary("ENR-05", At(12_000, 8.89, false), At(12_000, 8.88, false), At(12_000, null, false), Verdict.Caution, "icao-annex-6");
        Ask.Boundary("ENR-05", At(25_001, 10, true), At(25_001, 9.9, true), At(25_001, null, true), Verdict.Caution, "icao-annex-6");
    }
}
