using System.Text.Json;
using Batch.Flight.Plan;

namespace Batch.Cli.Commands;

/// <summary>
/// The working of a leg as JSON: <c>leg</c>, <c>steps</c> (part, name, value, unit, formula, source, inputs with name, value, unit and cell),
/// <c>assumptions</c>, <c>notes</c>.
/// </summary>
internal static class ExplainJson
{
    /// <summary>A planned leg.</summary>
    /// <param name="plan">The leg.</param>
    /// <param name="steps">The steps to write.</param>
    public static string Of(LegPlan.Planned plan, IEnumerable<WorkingStep> steps) => JsonText.Of(json =>
    {
        json.WriteString("leg", plan.Key.ToString());
        json.WriteStartArray("steps");
        foreach (var step in steps) Write(json, step);
        json.WriteEndArray();
        Texts(json, "assumptions", plan.Assumptions);
        Texts(json, "notes", plan.Notes);
    });

    /// <summary>A leg that is not planned.</summary>
    /// <param name="plan">The leg.</param>
    public static string Of(LegPlan.Unplanned plan) => JsonText.Of(json =>
    {
        json.WriteString("leg", plan.Key.ToString());
        json.WriteString("why", plan.Why);
        json.WriteString("where", plan.Where);
        json.WriteString("expected", plan.Expected);
        Texts(json, "cells", plan.Cells);
    });

    private static void Write(Utf8JsonWriter json, WorkingStep step)
    {
        json.WriteStartObject();
        json.WriteString("part", step.Part);
        json.WriteString("name", step.Name);
        json.WriteNumber("value", step.Value);
        json.WriteString("unit", step.Unit);
        json.WriteString("formula", step.Formula);
        json.WriteString("source", step.Source);
        json.WriteStartArray("inputs");
        foreach (var input in step.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("name", input.Name);
            json.WriteNumber("value", input.Value);
            json.WriteString("unit", input.Unit);
            json.WriteString("cell", input.Cell);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
