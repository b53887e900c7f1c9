using Batch.Testing;

namespace Batch.Checks.Tests.Data;

public sealed class DataChecksTests
{
    private static Problem Doubt(State state) => new() { State = state, Cell = "week.xlsx/Legs/F7", Text = "The weight of a passenger could not be read." };

    [Theory]
    [InlineData(State.Fail, Verdict.Fail)]
    [InlineData(State.Caution, Verdict.Caution)]
    [InlineData(State.Note, Verdict.Note)]
    public void What_could_not_be_read_is_said_with_its_cell(State state, Verdict expected)
    {
        var plan = SomePlans.Planned();
        var finding = Ask.Worst("ADM-05", plan with { Leg = plan.Leg with { Doubts = [Doubt(state)] } });
        Assert.Equal((expected, "week.xlsx/Legs/F7"), (finding.Verdict, Assert.Single(finding.Cells)));
        Assert.Equal(Verdict.Pass, Ask.Worst("ADM-05", plan).Verdict);
    }

    [Fact]
    public void What_is_said_of_several_cells_is_said_once_with_all_of_them()
    {
        var plan = SomePlans.Planned();
        var other = Doubt(State.Caution) with { Cell = "week.xlsx/Legs/F8" };
        var findings = Ask.All("ADM-05", plan with { Leg = plan.Leg with { Doubts = [Doubt(State.Caution), other, Doubt(State.Fail)] } });
        Assert.Equal(["week.xlsx/Legs/F7", "week.xlsx/Legs/F8"], Assert.Single(findings, finding => finding.Verdict == Verdict.Caution).Cells.AsEnumerable());
        Assert.Single(findings, finding => finding.Verdict == Verdict.Fail);
    }

    [Fact]
    public void Figures_that_did_not_come_to_rest_fail()
    {
        var plan = SomePlans.Planned();
        Ask.Boundary("ADM-06", plan, plan with { Fuel = plan.Fuel with { IsConverged = false, Rounds = 30 } }, null);
    }
}
