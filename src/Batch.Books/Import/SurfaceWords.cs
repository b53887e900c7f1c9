namespace Batch.Books.Import;

/// <summary>
/// The words open-data lists use for surfaces, and ours. From memory: the codes of the Aeronautical Information Publication (ASPH, CONC, GRS, ...) and the
/// plain words that volunteers write beside them; whatever is not listed is left for the user to fill.
/// </summary>
internal static class SurfaceWords
{
    private static readonly Dictionary<string, string> Ours = new(StringComparer.OrdinalIgnoreCase);

    static SurfaceWords()
    {
        foreach (var word in new[] { "asp", "asph", "asphalt", "bit", "bitum", "bituminous", "bitumen", "con", "conc", "concrete", "cement", "pem", "tar",
            "tarmac", "mac", "macadam", "paved", "hard", "brick" })
            Ours.Add(word, "paved");
        foreach (var word in new[] { "grs", "grass", "gras", "turf", "sod", "grassed" }) Ours.Add(word, "grass");
        foreach (var word in new[] { "gvl", "grvl", "gravel", "grv", "dirt", "earth", "sand", "clay", "soil", "laterite", "lat", "ltrt", "coral", "cor",
            "unpaved", "graded", "gre", "rock", "stone", "shale", "cinders", "unsealed" })
            Ours.Add(word, "gravel");
    }

    /// <summary>Our word for a surface; empty where the words are not known or mean different things.</summary>
    /// <param name="text">As the list has it, such as <c>ASPH-G</c> or <c>Turf/Gravel</c>.</param>
    public static string Of(string text)
    {
        var words = text.Split(['-', '/', ' ', ',', '(', ')', '+', '&', '.', ';', '_'], StringSplitOptions.RemoveEmptyEntries);
        var meant = words.Select(word => Ours.GetValueOrDefault(word, "")).Where(word => word.Length > 0).Distinct(StringComparer.Ordinal).ToArray();
        return meant.Length == 1 ? meant[0] : "";
    }
}
