using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Rules;

public sealed class OwnSettingTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static CheckSetting Setting(string check, string value = "", State? state = null, bool? on = null, string reason = "") =>
        new() { Check = check, Value = value, State = state, On = on, Reason = reason, Origin = SomePlans.Row("operator.xlsx/Checks", 5) };

    private static ImmutableArray<Finding> Of(string check, LegPlan.Planned leg, CheckSetting setting) => Ask.All(check, leg, week => week.With(setting));

    private static LegPlan.Planned Cross(double knots) =>
        Leg with { Departure = new RunwayResult.Computed(SomePlans.Use() with { Crosswind = new Knots(knots) }) };

    [Fact]
    public void A_stricter_value_holds_without_a_reason_and_is_cited()
    {
        var findings = Of("PERF-07", Cross(13), Setting("PERF-07", "12"));
        Assert.Equal(Verdict.Caution, findings[0].Verdict);
        Assert.EndsWith("; operator's Checks sheet", findings[0].Citation, StringComparison.Ordinal);
        Assert.DoesNotContain(findings, finding => finding.Verdict == Verdict.Note);
        Assert.Equal(Verdict.Pass, Of("PERF-07", Cross(12), Setting("PERF-07", "12 kt"))[0].Verdict);
    }

    [Fact]
    public void The_second_value_of_a_cell_is_for_the_second_amount()
    {
        var tail = Leg with { Departure = new RunwayResult.Computed(SomePlans.Use() with { Headwind = new Knots(-6) }) };
        Assert.Equal(Verdict.Caution, Of("PERF-07", tail, Setting("PERF-07", "15/5"))[0].Verdict);
        Assert.Equal(Verdict.Pass, Of("PERF-07", tail, Setting("PERF-07", "5"))[0].Verdict);
    }

    [Fact]
    public void A_looser_value_is_ignored_without_a_reason_and_said()
    {
        var findings = Of("PERF-07", Cross(16), Setting("PERF-07", "20"));
        Assert.Equal(Verdict.Caution, findings[0].Verdict);
        var note = findings.Single(finding => finding.Verdict == Verdict.Note);
        Assert.Equal("The Checks sheet allows 20 kt for the crosswind without a reason; the rule's 15 kt holds.", note.Text);
        Assert.Equal("operator.xlsx/Checks/5", Assert.Single(note.Cells));
    }

    [Fact]
    public void A_looser_value_with_a_reason_holds_and_the_reason_is_said()
    {
        var findings = Of("PERF-07", Cross(16), Setting("PERF-07", "20", reason: "trained for it"));
        Assert.All(findings, finding => Assert.Equal(Verdict.Pass, finding.Verdict));
        Assert.Contains(findings, finding => finding.Citation.EndsWith("; operator's Checks sheet: trained for it", StringComparison.Ordinal));
    }

    [Fact]
    public void For_a_least_amount_more_is_stricter()
    {
        Assert.Equal(Verdict.Fail, Of("FUEL-03", Leg, Setting("FUEL-03", "46"))[0].Verdict);
        Assert.Contains("without a reason", Of("FUEL-03", Leg, Setting("FUEL-03", "44"))[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lots")]
    [InlineData("-5")]
    [InlineData("15 h")]
    public void A_value_that_cannot_be_read_changes_nothing_and_is_said(string value)
    {
        var findings = Of("PERF-07", Cross(16), Setting("PERF-07", value, reason: "because"));
        Assert.Equal(Verdict.Caution, findings[0].Verdict);
        Assert.Contains(findings, finding => finding.Text.Contains("is not a number of kt", StringComparison.Ordinal));
    }

    [Fact]
    public void A_value_for_a_check_that_has_none_is_said() =>
        Assert.Contains(Of("WB-01", Leg, Setting("WB-01", "7")), finding => finding.Text.Contains("has no value to set", StringComparison.Ordinal));

    [Fact]
    public void A_check_is_switched_off_with_a_reason_only()
    {
        var short1 = Leg with { Fuel = Leg.Fuel with { Aboard = new Pounds(1000) } };
        var off = Assert.Single(Of("FUEL-03", short1, Setting("FUEL-03", on: false, reason: "under trial")));
        Assert.Equal((Verdict.Note, "Switched off in the Checks sheet: under trial"), (off.Verdict, off.Text));
        var on = Of("FUEL-03", short1, Setting("FUEL-03", on: false));
        Assert.Equal([Verdict.Fail, Verdict.Note], on.Select(finding => finding.Verdict));
    }

    [Fact]
    public void A_state_is_raised_freely_and_lowered_with_a_reason_only()
    {
        Assert.Equal(Verdict.Fail, Of("PERF-07", Cross(16), Setting("PERF-07", state: State.Fail))[0].Verdict);
        var over = Leg with { Load = Leg.Load with { Ramp = SomePlans.At(9041) } };
        Assert.Equal([Verdict.Fail, Verdict.Note], Of("WB-02", over, Setting("WB-02", state: State.Note)).Select(finding => finding.Verdict));
        var lowered = Assert.Single(Of("WB-02", over, Setting("WB-02", state: State.Caution, reason: "ferry permit")));
        Assert.Equal(Verdict.Caution, lowered.Verdict);
        Assert.EndsWith(" The Checks sheet makes this a caution: ferry permit.", lowered.Text, StringComparison.Ordinal);
    }
}
