using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Batch.Checks;
using Batch.Flight.Plan;

namespace Batch.Sheets.Run;

/// <summary>Writes the short answer for scripts: state, times, fuel, weights and findings of each leg, under the names of <c>run.json</c>.</summary>
internal static class AnswerWriter
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    public static byte[] Write(CheckedWeek week, RunFacts facts)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", RunRecord.AnswerSchemaName);
            RunWriter.Made(json, week, facts);
            RunWriter.Result(json, week);
            json.Objects("legs", week.Legs, Leg);
            json.WriteEndObject();
        }
        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    private static void Leg(Utf8JsonWriter json, CheckedLeg leg)
    {
        LegWriter.Names(json, leg.Plan);
        json.WriteString("state", StateWord.Of(leg.State));
        if (leg.Plan is LegPlan.Planned plan)
        {
            json.At("offBlocksUtc", plan.Times.OffBlocks);
            json.At("onBlocksUtc", plan.Times.OnBlocks);
            FiguresWriter.Fuel(json, plan);
            FiguresWriter.Weights(json, plan);
        }
        else if (leg.Plan is LegPlan.Unplanned unplanned)
        {
            LegWriter.Why(json, unplanned);
        }

        json.Objects("findings", leg.Shown, FindingWriter.Members);
    }
}
