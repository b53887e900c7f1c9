using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Following;

public sealed class FollowingTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static Finding Followed(string leg, string house, FlightRules rules = FlightRules.Ifr, LegPurpose purpose = LegPurpose.Charter) =>
        Ask.Worst("ADM-02", Leg with { Leg = Leg.Leg with { FlightPlan = leg }, Rules = rules, Purpose = purpose },
            week => week.With(op => op with { FlightFollowing = house }));

    // 14 CFR 135.79(a): flights for which no flight plan is filed are located by the operator; 14 CFR 91.173: IFR with a flight plan.
    [Fact]
    public void A_flight_is_followed()
    {
        Assert.Equal(Verdict.Pass, Followed("filed", "").Verdict);
        Assert.Equal(Verdict.Pass, Followed("", "filed").Verdict);
        Assert.Equal(Verdict.Pass, Followed("company", "", FlightRules.Vfr).Verdict);
        Assert.Equal((Verdict.Fail, "14 CFR 135.79; 14 CFR 91.153"),
            (Followed("none", "filed", FlightRules.Vfr).Verdict, Followed("none", "filed", FlightRules.Vfr).Citation));
        Assert.Equal((Verdict.Fail, "14 CFR 91.173"), (Followed("company", "filed").Verdict, Followed("company", "filed").Citation));
        Assert.Equal(Verdict.Caution, Followed("none", "", FlightRules.Vfr, LegPurpose.Ferry).Verdict);
        Assert.Equal(Verdict.NotChecked, Followed("", "").Verdict);
    }

    private static LegPlan.Planned Crossing(int? sentBeforeMin, LegPurpose purpose = LegPurpose.Charter) => Leg with
    {
        To = Leg.To with { Country = "Elsewhere" },
        Purpose = purpose,
        Leg = Leg.Leg with
        {
            ManifestSent = sentBeforeMin is { } minutes ? Leg.Times.OffBlocks - Duration.FromMinutes(minutes) : null,
            CrewManifestSent = Leg.Times.OffBlocks - Duration.FromMinutes(120)
        },
    };

    // 19 CFR 122.49b, 122.75b (from memory): the crew manifest at least 60 minutes before the departure.
    [Fact]
    public void The_manifest_of_the_crew_is_sent_an_hour_before()
    {
        LegPlan.Planned Sent(int? minutes, LegPurpose purpose = LegPurpose.Charter) =>
            Crossing(120, purpose) with
            {
                Leg = Leg.Leg with
                {
                    ManifestSent = Leg.Times.OffBlocks - Duration.FromMinutes(120),
                    CrewManifestSent = minutes is { } before ? Leg.Times.OffBlocks - Duration.FromMinutes(before) : null
                }
            };
        Ask.Boundary("ADM-03", Sent(60), Sent(59), Sent(null), Verdict.Caution);
        var late = Ask.Worst("ADM-03", Sent(59));
        Assert.Equal(("19 CFR 122.49b, 122.75b", true, -1.0), (late.Citation, late.IsBasisUnconfirmed, late.Margin));
        Assert.Equal("19 CFR 122.49b, 122.75b", Ask.Worst("ADM-03", Sent(null)).Citation);
        Assert.Contains("the crew manifest is sent is not given", Ask.Worst("ADM-03", Sent(null)).Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Ask.Worst("ADM-03", Sent(null, LegPurpose.Ferry)).Verdict);
        var after = Ask.Worst("ADM-03", Sent(-30));
        Assert.Equal((Verdict.Caution, -90.0, "The crew manifest for the border is sent 30 min after off blocks; 60 min before off blocks are required."),
            (after.Verdict, after.Margin, after.Text));
    }

    // 19 CFR 122.49a, 122.75a: at least 30 minutes before the doors are secured; 122.22, 122.26: 60 minutes for a private flight.
    [Fact]
    public void The_manifest_for_the_border_is_sent_in_time()
    {
        Assert.Equal(Verdict.Pass, Ask.Worst("ADM-03", Crossing(90)).Verdict);
        Assert.Equal(Verdict.Note, Ask.Worst("ADM-03", Crossing(89)).Verdict);
        Assert.Equal(Verdict.Note, Ask.Worst("ADM-03", Crossing(30)).Verdict);
        Assert.Equal((Verdict.Caution, "19 CFR 122.49a, 122.75a"), (Ask.Worst("ADM-03", Crossing(29)).Verdict, Ask.Worst("ADM-03", Crossing(29)).Citation));
        Assert.Equal(Verdict.Note, Ask.Worst("ADM-03", Crossing(60, LegPurpose.Ferry)).Verdict);
        Assert.Equal(Verdict.Caution, Ask.Worst("ADM-03", Crossing(59, LegPurpose.Ferry)).Verdict);
    }

    [Fact]
    public void Without_a_time_the_manifest_is_not_checked_and_its_time_said()
    {
        var open = Ask.Worst("ADM-03", Crossing(null));
        Assert.Equal(Verdict.NotChecked, open.Verdict);
        Assert.Contains("30 min before off blocks", open.Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ADM-03", Leg).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ADM-03", Leg with { To = Leg.To with { Country = "" } }).Verdict);
    }

    private static readonly ImmutableArray<string> Basic = ["smoking", "belts", "seat backs", "doors", "survival equipment", "extinguishers"];

    private static Finding Briefed(LegPlan.Planned plan, params string[] topics) =>
        Ask.Worst("ADM-01", plan, week => week.With(op => op with { BriefingTopics = [.. topics] }));

    // 14 CFR 135.117(a)(7): operations above 12,000 feet.
    [Fact]
    public void Oxygen_is_briefed_above_twelve_thousand_feet()
    {
        LegPlan.Planned Level(double feet) => Leg with { Profile = SomePlans.Profile(Leg.Route, feet) };
        Assert.Equal(Verdict.Pass, Briefed(Level(12_000), [.. Basic]).Verdict);
        Assert.Equal((Verdict.Caution, "14 CFR 135.117(a)(7)"), (Briefed(Level(12_001), [.. Basic]).Verdict, Briefed(Level(12_001), [.. Basic]).Citation));
        Assert.Equal(Verdict.Pass, Briefed(Level(12_001), [.. Basic, "oxygen"]).Verdict);
    }

    // 14 CFR 135.117(a)(6): extended overwater, more than 50 NM from the shore.
    [Fact]
    public void Ditching_is_briefed_far_from_the_shore()
    {
        ImmutableArray<LandRing> far = [SomePlans.Square("far", 30, 31, -41, -35)];
        Finding Over(params string[] topics) => Ask.Worst("ADM-01", Leg, week => week.With(op =>
            op with { BriefingTopics = [.. topics] }) with
        { Input = week.With(op => op with { BriefingTopics = [.. topics] }).Input with { Land = far } });
        Assert.Equal((Verdict.Caution, "14 CFR 135.117(a)(6)"), (Over([.. Basic, "oxygen"]).Verdict, Over([.. Basic, "oxygen"]).Citation));
        Assert.Equal(Verdict.Pass, Over([.. Basic, "oxygen", "ditching"]).Verdict);
    }

    [Fact]
    public void A_topic_of_every_leg_is_missed_and_none_at_all_is_not_checked()
    {
        Assert.Equal((Verdict.Caution, "14 CFR 135.117(a)(8)"),
            (Briefed(Leg, [.. Basic[..5], "oxygen"]).Verdict, Briefed(Leg, [.. Basic[..5], "oxygen"]).Citation));
        Assert.Equal(Verdict.NotChecked, Briefed(Leg).Verdict);
        Assert.Equal(Verdict.NotApplicable, Briefed(Leg with { Load = Leg.Load with { Passengers = 0 } }, [.. Basic]).Verdict);
    }
}
