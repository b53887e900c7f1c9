using System.Text.Json;
using Batch.Checks;
using Batch.Sheets.Run;

namespace Batch.Sheets;

/// <summary>The letters of a week: one for each person who flies in it.</summary>
public static class CrewLetters
{
    /// <summary>The letters of a run, by code, as first issues.</summary>
    /// <param name="run">The root of <c>run.json</c>.</param>
    /// <exception cref="KeyNotFoundException">A fixed name is missing: this is not a record of a run.</exception>
    /// <exception cref="InvalidOperationException">A value is of another kind than the schema says.</exception>
    public static ImmutableArray<CrewLetter> Of(JsonElement run) => LetterReader.Read(run);

    /// <summary>The letters of a checked week, by code, as first issues.</summary>
    /// <param name="week">The week.</param>
    /// <param name="facts">When and by which version.</param>
    public static ImmutableArray<CrewLetter> Of(CheckedWeek week, RunFacts facts)
    {
        using var run = JsonDocument.Parse(RunRecord.Json(week, facts));
        return Of(run.RootElement);
    }

    /// <summary>The templates of the mail: the user's own, over the shipped ones that the operator of a run reads.</summary>
    /// <param name="own">The user's own templates.</param>
    /// <param name="run">The root of <c>run.json</c>.</param>
    public static TemplateFolder Templates(TemplateFolder own, JsonElement run) =>
        own.For(WeightUnit.Named(LetterReader.Text(run, "weightUnit")), LetterReader.Text(run, "language"));
}
