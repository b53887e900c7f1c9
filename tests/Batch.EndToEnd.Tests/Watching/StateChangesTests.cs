using Batch.Checks;
using Batch.Cli.Watching;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.EndToEnd.Tests.Watching;

public sealed class StateChangesTests
{
    [Fact]
    public void Every_kind_of_change_has_words()
    {
        var before = Week(Leg(1), Leg(2, "FUEL-01"), Leg(3, "FUEL-01", "WB-03"), Leg(4, "WB-03"), Leg(5), Leg(6, "PERF-01"));
        Assert.Equal("no leg changed its state", StateChanges.Of(before, before));
        Assert.Equal("T101/1 now fails FUEL-01",
            StateChanges.Of(before, Week(Leg(1, "FUEL-01"), Leg(2, "FUEL-01"), Leg(3, "FUEL-01", "WB-03"), Leg(4, "WB-03"), Leg(5), Leg(6, "PERF-01"))));
        Assert.Equal(
            "T101/3 no longer fails WB-03; T101/4 now fails FUEL-01, no longer WB-03; T101/7 is new and fails FUEL-01; T101/2 now passes; T101/5 is gone; and 1 more",
            StateChanges.Of(before, Week(Leg(1), Leg(2), Leg(3, "FUEL-01"), Leg(4, "FUEL-01"), Leg(7, "FUEL-01"))));
    }

    [Fact]
    public void A_leg_that_can_no_longer_be_planned_comes_first()
    {
        var unplanned = Leg(2) with { Plan = new LegPlan.Unplanned { Leg = SomePlans.AsRead(2), Why = "XADN is not in Airports." } };
        Assert.Equal("T101/2 now cannot be planned", StateChanges.Of(Week(Plannable(1), Plannable(2)), Week(Plannable(1), unplanned)));
    }

    [Fact]
    public void A_book_that_is_gone_is_named_before_the_legs_that_it_takes_along()
    {
        static CheckedWeek From(CheckedWeek week, params string[] books) =>
            week with { Plan = week.Plan with { Input = week.Plan.Input with { Inputs = [.. books.Select(book => new InputBook(book, ""))] } } };
        var before = From(Week(Leg(1)), "operator.xlsx", "week.xlsx");
        Assert.Equal("the book operator.xlsx is gone; T101/1 now fails FUEL-01", StateChanges.Of(before, From(Week(Leg(1, "FUEL-01")), "Week.xlsx")));
        Assert.Equal("no leg changed its state", StateChanges.Of(From(Week(Leg(1)), "week.xlsx"), before));
    }

    private static CheckedLeg Plannable(int number) => new() { Plan = SomePlans.Planned() with { Leg = SomePlans.AsRead(number) }, Findings = [] };

    private static CheckedLeg Leg(int number, params string[] fails) => Plannable(number) with
    {
        Findings =
        [.. fails.Select(check => new Finding { Check = check, Title = check, Verdict = Verdict.Fail, Text = check, Citation = "" })]
    };

    private static CheckedWeek Week(params CheckedLeg[] legs) =>
        new() { RuleSet = "", Plan = SomePlans.Week([.. legs.Select(leg => leg.Plan)]), Legs = [.. legs] };
}
