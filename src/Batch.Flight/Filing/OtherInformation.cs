namespace Batch.Flight.Filing;

/// <summary>Item 18 of a flight plan: its fields in their order, and what item 10 asks of it (ICAO Doc 4444, appendix 2, from memory).</summary>
internal static class OtherInformation
{
    private static readonly ImmutableArray<string> Order =
    [
        "STS", "PBN", "NAV", "COM", "DAT", "SUR", "DEP", "DEST", "DOF", "REG", "EET", "SEL", "TYP", "CODE", "DLE", "OPR", "ORGN", "PER", "ALTN", "RALT", "TALT",
        "RIF", "RMK",
    ];

    /// <summary>The fields in their order; a field that the Types sheet gives stands as given there.</summary>
    /// <param name="fields">Fields of the leg, such as <c>DOF/260701</c>.</param>
    /// <param name="words">Further words of the equipment in the Types sheet, in capitals;
    /// a word without slash goes on with the field before it, else it is a remark.</param>
    public static string InOrder(IEnumerable<string> fields, IEnumerable<string> words)
    {
        var given = new List<string>();
        foreach (var word in words)
        {
            if (word.Split('/', 2) is [var name, var text]) given.Add(name + "/" + FlightPlanField.Plain(text));
            else if (given.Count == 0) given.Add("RMK/" + FlightPlanField.Plain(word));
            else given[^1] += " " + FlightPlanField.Plain(word);
        }

        var names = given.Select(Name).ToHashSet(StringComparer.Ordinal);
        return string.Join(' ', given.Concat(fields.Where(field => !names.Contains(Name(field)))).OrderBy(field => Order.IndexOf(Name(field))));
    }

    /// <summary>What item 10 asks of item 18 and the Types sheet does not give, as sentences.</summary>
    /// <param name="equipment">Item 10, then the words for item 18, in capitals.</param>
    public static IEnumerable<string> Lacking(string[] equipment)
    {
        if (equipment is not [var first, ..] || !FlightPlanField.IsEquipment(first)) yield break;
        var carried = first.Split('/')[0];
        var names = equipment.Skip(1).Select(Name).ToHashSet(StringComparer.Ordinal);
        if (carried.Contains('R', StringComparison.Ordinal) && !names.Contains("PBN"))
            yield return "R in the equipment asks for PBN/ in item 18: write it behind the equipment in the Types sheet, such as SDFGRY/LB1 PBN/B2D2.";
        if (names.Contains("PBN") && !carried.Contains('R', StringComparison.Ordinal))
            yield return "PBN/ in item 18 asks for R in the equipment of the Types sheet.";
        if (carried.Contains('Z', StringComparison.Ordinal) && !names.Overlaps(["COM", "NAV", "DAT"]))
            yield return "Z in the equipment asks for COM/, NAV/ or DAT/ in item 18: write it behind the equipment in the Types sheet.";
    }

    private static string Name(string field) => field.Split('/')[0];
}
