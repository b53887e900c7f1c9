using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>Which level a leg is flown at, and what is said about it.</summary>
public sealed class LevelChoiceTests
{
    private static LegPlan.Planned Planned(Leg leg) => Assert.IsType<LegPlan.Planned>(Assert.Single(Some.Planned(Some.Week([leg])).Legs));

    private static bool Says(LegPlan.Planned plan, string words) => plan.Notes.Any(note => note.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void An_empty_level_cell_takes_the_level_with_which_the_route_text_begins()
    {
        var plan = Planned(Some.Leg(1, "XAND", "XBEL", Some.Noon) with { Level = null, Route = "N0250F150 4130N03800W" });
        Assert.Equal(15_000, plan.Profile.Level.Value);
        Assert.True(Says(plan, "The Level cell is empty: FL150 of the route text taken."));
        Assert.False(Says(plan, "was not flown"));
    }

    [Fact]
    public void Auto_stays_auto_and_the_level_of_the_route_text_is_said_not_to_be_flown()
    {
        var plan = Planned(Some.Leg(1, "XAND", "XBEL", Some.Noon) with { Level = null, IsLevelAuto = true, Route = "N0250F150 4130N03800W" });
        Assert.NotEqual(15_000, plan.Profile.Level.Value);
        Assert.True(Says(plan, "Level auto: "));
        Assert.True(Says(plan, "FL150 from XAND was not flown"));
    }

    [Fact]
    public void An_automatic_level_stays_where_no_oxygen_is_needed_unless_some_is_aboard()
    {
        var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN") with { Level = null, IsLevelAuto = true }]);
        var rules = SomePlans.Rules with { OxygenFrom = new Feet(10_000) };
        LegPlan.Planned With(Duration? oxygen) => Assert.IsType<LegPlan.Planned>(Some.Planned(
            week with { Fleet = week.Fleet.SetItem("ABCDE", week.Fleet["ABCDE"] with { Oxygen = oxygen }) }, rules).Legs[0]);
        foreach (var none in new Duration?[] { null, Duration.Zero })
        {
            var plan = With(none);
            Assert.InRange(plan.Profile.Level.Value, 5000, 10_000);
            Assert.InRange(Assert.Single(plan.Alternates).Level.Value, 3000, 10_000);
            Assert.True(Says(plan, "those above FL100 left out since no oxygen is aboard"));
        }

        Assert.True(With(Duration.FromMinutes(60)).Profile.Level.Value > 10_000);
        var over = Some.Airport("XHIG", 41, -36, 9500);
        var high = Assert.IsType<LegPlan.Planned>(
            Some.Planned(week with { Legs = [week.Legs[0] with { To = "XHIG", Alternate = "" }], Airports = week.Airports.Add("XHIG", over) }, rules).Legs[0]);
        Assert.True(high.Profile.Level.Value > 10_000, "No level below would clear the field.");
    }

    [Fact]
    public void A_level_in_the_cell_wins_over_the_route_text()
    {
        var plan = Planned(Some.Leg(1, "XAND", "XBEL", Some.Noon) with { Level = new Feet(17_000), Route = "N0250F150 4130N03800W" });
        Assert.Equal(17_000, plan.Profile.Level.Value);
        Assert.False(Says(plan, "Level cell is empty"));
    }

    [Fact]
    public void An_automatic_level_on_a_route_too_short_for_every_usable_level_is_said()
    {
        // Some 11 NM to a field at 600 ft: the lowest usable level is 3,000 ft, and 1,000 ft the highest that leaves two minutes of cruise or more.
        var week = Some.Week([Some.Leg(1, "XAND", "XEST", Some.Noon) with { Level = null, IsLevelAuto = true }]);
        var near = Some.Airport("XEST", 41, -39.76, 600);
        var plan = Assert.IsType<LegPlan.Planned>(Assert.Single(Some.Planned(week with { Airports = week.Airports.Add("XEST", near) }).Legs));
        Assert.True(Says(plan, "Level auto: the route is too short for every usable level"));
    }

    [Fact]
    public void The_options_of_a_lowered_leg_hold_the_plan_with_its_own_figures()
    {
        var plan = Planned(Some.Leg(1, "XAND", "XCOR", Some.Noon));
        Assert.True(plan.Profile.Level.Value < 20_000);
        Assert.True(Says(plan, "too short for FL200"));
        var own = Assert.Single(plan.Options, option => option.IsPlan);
        Assert.Equal((plan.Profile.Level, plan.Fuel.Trip, plan.Profile.Time, plan.Fuel.Landing), (own.Level, own.Trip, own.Time, own.Landing));
    }

    [Fact]
    public void Every_option_is_flown_by_itself_and_not_reckoned_from_the_plan()
    {
        var plan = Planned(Some.Leg(1, "XAND", "XBEL", Some.Noon));
        var book = Some.Week([]);
        foreach (var option in plan.Options.Where(option => !option.IsPlan && !option.IsBackupRoute))
        {
            var flown = ProfileFlyer.Fly(new ProfileRequest
            {
                Route = plan.Route,
                Type = plan.Type,
                Level = option.Level,
                Setting = plan.Profile.Setting,
                TakeoffWeight = plan.Profile.TakeoffWeight,
                Takeoff = plan.Times.Takeoff,
                StartElevation = plan.From.Elevation,
                EndElevation = plan.To.Elevation,
                Air = WeekWeather.Of(book).Air,
                BurnBias = plan.Aircraft.BurnBias,
            });
            Assert.Equal(Assert.IsType<ProfileResult.Flown>(flown).Profile.TripFuel, option.Trip);
        }

        Assert.True(plan.Options.Length >= 4);
    }

    [Fact]
    public void One_option_lies_far_below_the_plan_for_a_low_clearance()
    {
        var plan = Planned(Some.Leg(1, "XAND", "XBEL", Some.Noon));
        var below = plan.Options.Where(option => !option.IsBackupRoute && option.Level < plan.Profile.Level).Select(option => option.Level.Value).Order()
            .ToArray();
        Assert.Equal(3, below.Length);
        Assert.True(below[1] - below[0] > below[2] - below[1]);
    }
}
