using Batch.Flight.Fleet;

namespace Batch.Sheets;

/// <summary>The languages in which sheets are shipped: English in pounds and in kilograms, German in kilograms.</summary>
public static class SheetLanguage
{
    private const string Expected =
        "en, or de with the weight unit kg; for another language templates of your own: tripbatch new writes some to begin with, --templates names their folder";

    /// <summary>The folder of examples that holds the shipped sheets of an operator, with its <c>/</c>; empty for those in English and pounds.</summary>
    /// <param name="unit">The operator's unit of weight.</param>
    /// <param name="language">The language that the operator asks for; empty for none.</param>
    internal static string Set(WeightUnit unit, string language) =>
        unit == WeightUnit.Pounds ? "" : IsOne(language, "de", "German", "Deutsch") ? "examples/german/" : "examples/metric/";

    /// <summary>The note that the sheets are in English all the same; null where they are as the operator asks.</summary>
    /// <param name="known">The operator.</param>
    public static Problem? Note(Operator known)
    {
        var (language, isGerman) = (known.Language, IsOne(known.Language, "de", "German", "Deutsch"));
        if (language.Length == 0 || IsOne(language, "en", "English") || (isGerman && known.WeightUnit == WeightUnit.Kilograms)) return null;
        return new Problem
        {
            State = State.Note,
            Cell = known.Cells.FirstOrDefault(cell => cell.Key.Contains("language", StringComparison.OrdinalIgnoreCase)).Value ?? "",
            Text = isGerman
                ? "The German sheets that are shipped are in kilograms and the weight unit is lb, so the sheets are in English."
                : $"No sheets in the language {language} are shipped, so the sheets are in English.",
            Read = language,
            Expected = Expected,
        };
    }

    private static bool IsOne(string language, string code, params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            if (language.Equals(name, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return language.Equals(code, StringComparison.OrdinalIgnoreCase) || language.StartsWith(code + "-", StringComparison.OrdinalIgnoreCase);
    }
}
