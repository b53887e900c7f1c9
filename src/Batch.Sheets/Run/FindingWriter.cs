using System.Text.Json;
using Batch.Checks;

namespace Batch.Sheets.Run;

/// <summary>One finding in <c>run.json</c>.</summary>
internal static class FindingWriter
{
    public static void Members(Utf8JsonWriter json, Finding finding)
    {
        var printed = finding.Printed(100);
        json.WriteString("check", finding.Check);
        json.WriteString("title", finding.Title);
        json.WriteString("state", StateWord.Of(finding.Verdict));
        json.WriteString("text", finding.Text);
        json.Rounded("required", printed?.Limit ?? finding.Required, 2);
        json.Rounded("actual", printed?.Actual ?? finding.Actual, 2);
        json.Rounded("margin", printed?.Margin ?? finding.Margin, 2);
        json.WriteString("unit", finding.Unit);
        json.WriteString("citation", finding.Citation);
        json.WriteBoolean("basisUnconfirmed", finding.IsBasisUnconfirmed);
        json.Texts("cells", finding.Cells);
        json.WriteString("actor", finding.Actor);
        json.Objects("remedies", finding.Remedies, Remedy);
        if (finding.Replans is { } replans) json.WriteNumber("plansTried", replans);
    }

    private static void Remedy(Utf8JsonWriter json, Remedy remedy)
    {
        json.WriteString("text", remedy.Text);
        json.WriteNumber("disruption", remedy.Disruption);
        json.Object("changes", () =>
        {
            foreach (var (cell, value) in remedy.Changes.OrderBy(change => change.Key, StringComparer.Ordinal))
                json.WriteString(cell, value);
        });
    }
}
