using Batch.Checks;
using Batch.Sheets.Figures;

namespace Batch.Sheets;

/// <summary>
/// A checked week as its operator reads it: the sentences and figures of findings, remedies, complaints and reasons in the operator's unit of weight. It is for
/// reading: on the terminal, on the board, in tables and in the marked workbook. <c>run.json</c> and the templates of sheets take the week in pounds.
/// </summary>
public static class WeekInUnit
{
    /// <summary>The week in the unit of its operator; the week itself where that is pounds.</summary>
    /// <param name="week">The checked week, in pounds.</param>
    public static CheckedWeek Of(CheckedWeek week)
    {
        var input = week.Plan.Input;
        return input.Operator.WeightUnit == WeightUnit.Pounds
            ? week
            : week with
            {
                Legs = [.. week.Legs.Select(leg => leg with { Plan = InKilograms.Of(leg.Plan), Findings = [.. leg.Findings.Select(InKilograms.Of)] })],
                Plan = week.Plan with { Input = input with { Problems = [.. input.Problems.Select(InKilograms.Of)] } },
            };
    }

    /// <summary>An English sentence in a unit of weight.</summary>
    /// <param name="text">The sentence, in pounds.</param>
    /// <param name="unit">The unit.</param>
    public static string Sentence(string text, WeightUnit unit) => unit == WeightUnit.Pounds ? text : InKilograms.Of(text);
}
