using Batch.Checks;
using Batch.Flight.Plan;

namespace Batch.Sheets.Tests;

/// <summary>A checked week as an operator reads it who thinks in kilograms (1 lb = 0.45359237 kg).</summary>
public sealed class WeekInUnitTests
{
    private static readonly CheckedWeek Kilograms = With(WeightUnit.Kilograms);

    [Fact]
    public void A_week_in_pounds_stays_as_it_is()
    {
        var week = With(WeightUnit.Pounds);
        Assert.Same(week, WeekInUnit.Of(week));
    }

    /// <summary>812.4 lb are 368.5 kg, required and so rounded up; 771 lb are 349.7 kg, there and so rounded down.</summary>
    [Fact]
    public void Limit_figure_and_margin_agree_with_each_other_and_with_the_sentence()
    {
        var finding = Found(SampleFindings.Fail with { Text = "Fuel aboard is 771 lb, 42 lb short of the 813 lb required: taxi 20 lb at 12 in, 180 lb/h." });
        Assert.Equal((369.0, 349.0, -20.0, "kg"), (finding.Numbers.Required, finding.Numbers.Actual, finding.Numbers.Margin, finding.Unit));
        Assert.Equal("Fuel aboard is 349 kg, 20 kg short of the 369 kg required: taxi 9 kg at 12 in, 82 kg/h.", finding.Text);
        Assert.Equal(SampleFindings.Fail.Share ?? 0, finding.Share ?? 0, 1e-12);
    }

    /// <summary>6.7 lb/USG = 6.7 x 0.45359237 / 3.785411784 = 0.80284 kg/L.</summary>
    [Fact]
    public void A_density_is_in_kilograms_a_litre()
    {
        var finding = Found(SampleFindings.Caution with { Text = "The density is 6.7 lb/USG.", Required = 6.7, Actual = 6.7, Margin = 0, Unit = "lb/USG" });
        Assert.Equal(("The density is 0.803 kg/L.", "kg/L", 0.80284), (finding.Text, finding.Unit, Math.Round(finding.Required ?? 0, 5)));
    }

    [Fact]
    public void Figures_of_no_weight_and_what_is_typed_stay()
    {
        var finding = Found(SampleFindings.Caution with { Remedies = SampleFindings.Fail.Remedies });
        Assert.Equal((SampleFindings.Caution.Required, SampleFindings.Caution.Unit), (finding.Required, finding.Unit));
        Assert.StartsWith("Load 19 kg more here", finding.Remedies[0].Text, StringComparison.Ordinal);
        Assert.Equal(SampleFindings.Fail.Remedies[0].Changes, finding.Remedies[0].Changes);
    }

    [Fact]
    public void Reasons_and_complaints_are_in_kilograms_and_what_was_read_is_as_it_was_written()
    {
        var legs = SampleWeek.Made.Legs.Select(leg => leg.Plan is LegPlan.Unplanned none ? leg with { Plan = none with { Why = "It is 200 lb too heavy." } } : leg);
        var problem = new Problem { State = State.Caution, Cell = "week.xlsx/Legs/S3", Text = "1,000 lb is much.", Read = "1000 lb", Expected = "such as 500 lb" };
        var input = Kilograms.Plan.Input with { Problems = [problem] };
        var read = WeekInUnit.Of(Kilograms with { Legs = [.. legs], Plan = Kilograms.Plan with { Input = input } });
        Assert.Contains(read.Legs, leg => leg.Plan is LegPlan.Unplanned { Why: "It is 91 kg too heavy." });
        Assert.Equal(problem with { Text = "454 kg is much.", Expected = "such as 227 kg" }, Assert.Single(read.Plan.Input.Problems));
    }

    [Fact]
    public void The_record_of_the_run_stays_in_pounds_and_adds_the_sentence_of_the_mail()
    {
        var week = Kilograms with { Legs = [.. Kilograms.Legs.Select(leg => leg with { Findings = [SampleFindings.Fail] })] };
        using var run = System.Text.Json.JsonDocument.Parse(RunRecord.Json(week, SampleWeek.Facts));
        Assert.Equal(("kg", 0.45359237), (run.RootElement.GetProperty("weightUnit").GetString(), run.RootElement.GetProperty("weightUnitsPerPound").GetDouble()));
        var finding = run.RootElement.GetProperty("legs")[0].GetProperty("findings")[0];
        Assert.Equal((812.4, "lb", SampleFindings.Fail.Text),
            (finding.GetProperty("required").GetDouble(), finding.GetProperty("unit").GetString(), finding.GetProperty("text").GetString()));
        Assert.Equal("Fuel aboard is 19 kg short of destination, alternate and 45 minutes.", finding.GetProperty("textKg").GetString());
        Assert.Contains(CrewLetters.Of(run.RootElement).SelectMany(letter => letter.Legs).SelectMany(leg => leg.Failures),
            failure => failure.StartsWith("Fuel aboard is 19 kg short", StringComparison.Ordinal));
    }

    private static Finding Found(Finding finding) =>
        WeekInUnit.Of(Kilograms with { Legs = [Kilograms.Legs[0] with { Findings = [finding] }] }).Legs[0].Findings[0];

    private static CheckedWeek With(WeightUnit unit)
    {
        var (week, input) = (SampleWeek.Made, SampleWeek.Made.Plan.Input);
        return week with { Plan = week.Plan with { Input = input with { Operator = input.Operator with { WeightUnit = unit } } } };
    }
}
