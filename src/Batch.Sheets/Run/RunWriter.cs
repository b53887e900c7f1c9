using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Batch.Checks;

namespace Batch.Sheets.Run;

/// <summary>Writes <c>run.json</c>.</summary>
internal static class RunWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    /// <summary>Bytes that a leg takes, to begin with.</summary>
    private const int LegBytes = 20_000;

    /// <summary>Bytes after which the writer lets go of what it holds.</summary>
    private const int MostPending = 1 << 16;

    public static byte[] Write(CheckedWeek week, RunFacts facts)
    {
        var loads = new LoadPrints(week.Plan.Input);
        using var buffer = new MemoryStream(LegBytes * (1 + week.Legs.Length));
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            Head(json, week, facts);
            json.Objects("legs", week.Legs, (to, leg) =>
            {
                LegWriter.Members(to, week, leg, loads);
                if (to.BytesPending > MostPending) to.Flush();
            });
            json.Objects("crew", week.Plan.Crew, (to, person) => ChainWriter.Crew(to, week, person));
            json.Objects("aircraft", week.Plan.Aircraft, (to, aircraft) => ChainWriter.Aircraft(to, week, aircraft));
            json.WriteEndObject();
        }
        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    private static void Head(Utf8JsonWriter json, CheckedWeek week, RunFacts facts)
    {
        json.WriteString("schema", RunRecord.SchemaName);
        Made(json, week, facts);
        json.TextOrNull("operator", week.Plan.Input.Operator.Name);
        json.TextOrNull("operatorContact", week.Plan.Input.Operator.Contact);
        json.TextOrNull("language", week.Plan.Input.Operator.Language);
        json.TextOrNull("operatorMail", week.Plan.Input.Operator.MailFrom);
        json.WriteString("weightUnit", week.Plan.Input.Operator.WeightUnit.Name);
        json.WriteNumber("weightUnitsPerPound", week.Plan.Input.Operator.WeightUnit.PerPound);
        json.WriteBoolean("wholeWeek", week.Legs.Length == week.Plan.Legs.Length);
        json.Objects("inputs", week.Plan.Input.Inputs, (to, book) =>
        {
            to.WriteString("book", book.Name);
            to.WriteString("sha256", book.Sha256);
        });
        Result(json, week);
    }

    /// <summary>When it was made, by which version and by which rules.</summary>
    public static void Made(Utf8JsonWriter json, CheckedWeek week, RunFacts facts)
    {
        json.At("madeAt", facts.MadeAt);
        json.WriteString("toolVersion", facts.ToolVersion);
        json.WriteString("ruleSet", week.RuleSet);
    }

    /// <summary>What the books say wrong, and how many legs are in which state.</summary>
    public static void Result(Utf8JsonWriter json, CheckedWeek week)
    {
        json.Objects("problems", week.Plan.Input.Problems, Problem);
        json.Object("counts", () =>
        {
            json.WriteNumber("legs", week.Legs.Length);
            foreach (var state in Enum.GetValues<LegState>())
                json.WriteNumber(StateWord.Of(state), week.Legs.Count(leg => leg.State == state));
        });
    }

    private static void Problem(Utf8JsonWriter json, Problem problem)
    {
        json.WriteString("state", StateWord.Of(problem.State));
        json.WriteString("text", problem.Text);
        json.WriteString("cell", problem.Cell);
        json.WriteString("read", problem.Read);
        json.WriteString("expected", problem.Expected);
    }
}
