using Batch.Checks;
using Batch.Sheets.Run;

namespace Batch.Sheets;

/// <summary>The file <c>run.json</c>: everything computed, for other programs. Its names are fixed; names may be added.</summary>
public static class RunRecord
{
    /// <summary>Name and version of the format, the value of <c>schema</c>.</summary>
    public const string SchemaName = "tripbatch-run/1";

    /// <summary>Name and version of the short answer, the value of its <c>schema</c>.</summary>
    public const string AnswerSchemaName = "tripbatch-check/1";

    private static readonly Lazy<string> SchemaFile = new(() => EmbeddedText.Read("run.schema.json"));

    /// <summary>The JSON Schema (draft 2020-12) of the file.</summary>
    public static string Schema => SchemaFile.Value;

    /// <summary>The file as UTF-8 without a byte order mark, indented by two, lines ended by a line feed, a line feed at the end.</summary>
    /// <remarks>
    /// Rounded to: weights 0.1 lb, distances 0.1 NM, heights and runway lengths 1 ft, angles and speeds 0.1, times 0.1 min, centre of gravity 0.01 in,
    /// positions 1e-6 deg, instants 1 s.
    /// </remarks>
    /// <param name="week">The checked week.</param>
    /// <param name="facts">When and by which version.</param>
    public static byte[] Json(CheckedWeek week, RunFacts facts) => RunWriter.Write(week, facts);

    /// <summary>
    /// The short answer for scripts as UTF-8: when and by which rules, problems of the books, counts, and of each leg its names, state, block times, fuel,
    /// weights and the findings that are no pass. One line; names, units and rounding as in the file.
    /// </summary>
    /// <param name="week">The checked week.</param>
    /// <param name="facts">When and by which version.</param>
    public static byte[] Answer(CheckedWeek week, RunFacts facts) => AnswerWriter.Write(week, facts);
}
