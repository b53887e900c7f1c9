using System.Text.Json;
using Batch.Checks;
using Batch.Flight.Plan;

namespace Batch.Cli.Commands;

/// <summary>
/// A week under scenarios as JSON: <c>schema</c>, <c>ruleSet</c>, <c>asPlanned</c> (how many legs are in which state), <c>scenarios</c> (<c>name</c>,
/// <c>text</c>, <c>legs</c> by state, <c>breaks</c>, <c>cautions</c>, <c>thinnest</c>), each finding with trip, leg, check, text, required, actual, margin,
/// unit and its margin's share of the limit.
/// </summary>
internal static class StressJson
{
    /// <summary>Name and version of the format.</summary>
    public const string SchemaName = "tripbatch-stress/1";

    /// <summary>The text.</summary>
    /// <param name="before">The week as planned.</param>
    /// <param name="answers">What every scenario does to it.</param>
    public static string Of(CheckedWeek before, ImmutableArray<StressAnswer> answers) => JsonText.Of(json =>
    {
        json.WriteString("schema", SchemaName);
        json.WriteString("ruleSet", before.RuleSet);
        States(json, "asPlanned", before);
        json.WriteStartArray("scenarios");
        foreach (var answer in answers) Write(json, answer);
        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, StressAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("name", answer.Scenario.Name);
        json.WriteString("text", answer.Scenario.Text);
        States(json, "legs", answer.Week);
        Findings(json, "breaks", answer.Breaks.SelectMany(leg => leg.Findings.Select(finding => (leg.Plan, finding))));
        Findings(json, "cautions", answer.Cautions.SelectMany(leg => leg.Findings.Select(finding => (leg.Plan, finding))));
        Findings(json, "thinnest", answer.Thinnest.Select(margin => (margin.Plan, margin.Finding)));
        json.WriteEndObject();
    }

    private static void States(Utf8JsonWriter json, string name, CheckedWeek week)
    {
        json.WriteStartObject(name);
        foreach (var state in Enum.GetValues<LegState>()) json.WriteNumber(state.ToString().ToLowerInvariant(), week.Legs.Count(leg => leg.State == state));
        json.WriteEndObject();
    }

    private static void Findings(Utf8JsonWriter json, string name, IEnumerable<(LegPlan Plan, Finding Finding)> findings)
    {
        json.WriteStartArray(name);
        foreach (var (plan, finding) in findings)
        {
            json.WriteStartObject();
            json.WriteString("trip", plan.Key.Trip);
            json.WriteNumber("leg", plan.Key.Number);
            json.WriteString("check", finding.Check);
            json.WriteString("text", finding.Text);
            Number(json, "required", finding.Printed(100)?.Limit ?? finding.Required, 2);
            Number(json, "actual", finding.Printed(100)?.Actual ?? finding.Actual, 2);
            Number(json, "margin", finding.Printed(100)?.Margin ?? finding.Margin, 2);
            json.WriteString("unit", finding.Unit);
            Number(json, "share", finding.Share, 4);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double? value, int decimals)
    {
        if (value is { } number) json.WriteNumber(name, Math.Round(number, decimals) + 0.0);
        else json.WriteNull(name);
    }
}
