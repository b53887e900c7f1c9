using System.Globalization;
using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Figures;

/// <summary>What the program says in pounds, in kilograms for whoever thinks in them; figures in other units stay.</summary>
internal static class InKilograms
{
    /// <summary>A sentence.</summary>
    /// <param name="text">The sentence in pounds.</param>
    /// <param name="figures">The limit and figure that it holds; null for none.</param>
    public static string Of(string text, HeldFigure? figures = null) =>
        text.Contains(" lb", StringComparison.Ordinal) ? AmountsInText.Rewritten(text, CultureInfo.InvariantCulture, figures) : text;

    /// <summary>A finding with its numbers, sentence and remedies; limit, figure and margin agree as they are printed.</summary>
    /// <param name="finding">The finding in pounds.</param>
    public static Finding Of(Finding finding)
    {
        var (factor, unit) = finding.Unit switch
        {
            "lb" => (WeightUnit.Kilograms.PerPound, "kg"),
            "lb/h" => (WeightUnit.Kilograms.PerPound, "kg/h"),
            "lb/USG" => (UnitFunctions.KilogramsPerLitre, "kg/L"),
            var other => (1, other),
        };
        return finding with
        {
            Text = Sentence(finding),
            Required = finding.Required * factor,
            Actual = finding.Actual * factor,
            Margin = finding.Margin * factor,
            Span = finding.Span * factor,
            Unit = unit,
            Remedies = [.. finding.Remedies.Select(remedy => remedy with { Text = Of(remedy.Text) })],
        };
    }

    /// <summary>The sentence of a finding.</summary>
    /// <param name="finding">The finding in pounds.</param>
    public static string Sentence(Finding finding) => Of(finding.Text, finding is { Unit: "lb", Required: { } limit, Actual: { } actual, IsLeast: { } isLeast }
        ? new HeldFigure(limit, actual, isLeast, HeldPart.Limit)
        : null);

    /// <summary>A plan; of one that could not be made, why. Assumptions and notes stay for the templates, which choose their unit.</summary>
    /// <param name="plan">The plan.</param>
    public static LegPlan Of(LegPlan plan) => plan is LegPlan.Unplanned unplanned
        ? unplanned with { Why = Of(unplanned.Why), Where = Of(unplanned.Where), Expected = Of(unplanned.Expected) }
        : plan;

    /// <summary>A complaint about the books.</summary>
    /// <param name="problem">The complaint in pounds; what was read stays as it was written.</param>
    public static Problem Of(Problem problem) => problem with { Text = Of(problem.Text), Expected = Of(problem.Expected) };
}
