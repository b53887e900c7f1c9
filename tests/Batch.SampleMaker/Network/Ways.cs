namespace Batch.SampleMaker.Network;

/// <summary>The usual routes between airports.</summary>
public static class Ways
{
    private static readonly ImmutableDictionary<(string From, string To), string> Known = new Dictionary<(string From, string To), string>
    {
        [("XAND", "XBEL")] = "AND V12 BEL",
        [("XBEL", "XAND")] = "BEL V12 AND",
        [("XAND", "XCOR")] = "AND V12 COR",
        [("XCOR", "XAND")] = "COR V12 AND",
        [("XAND", "XDUN")] = "AND V34 DUN",
        [("XDUN", "XAND")] = "DUN V34 AND",
        [("XDUN", "XCOR")] = "DUN V21 COR",
        [("XCOR", "XDUN")] = "COR V21 DUN",
        [("XDUN", "XFEN")] = "DUN V31 FEN",
        [("XFEN", "XDUN")] = "FEN V31 DUN",
        [("XAND", "XFEN")] = "AND V15 FEN",
        [("XFEN", "XAND")] = "FEN V15 AND",
        [("XFEN", "XBEL")] = "FEN V15 BEL",
        [("XBEL", "XFEN")] = "BEL V15 FEN",
        [("XCOR", "XELM")] = "COR V21 ELMIA",
        [("XELM", "XAND")] = "ELMIA V30 AND",
        [("XAND", "XKEL")] = "AND V30 KEL",
        [("XKEL", "XAND")] = "KEL V30 AND",
        [("XAND", "XMAR")] = "AND V12 COR W5 MAR",
        [("XMAR", "XAND")] = "MAR W5 COR V12 AND",
        [("XCOR", "XMAR")] = "COR W5 MAR",
        [("XMAR", "XCOR")] = "MAR W5 COR",
        [("XAND", "XOST")] = "AND W9 OST",
        [("XOST", "XAND")] = "OST W9 AND",
        [("XFEN", "XOST")] = "FEN W8 OST",
        [("XOST", "XFEN")] = "OST W8 FEN",
        [("XROA", "XMAR")] = "ROA W6 MAR",
        [("XMAR", "XROA")] = "MAR W6 ROA",
        [("XAND", "XROA")] = "AND V30 KEL W7 ROA",
    }.ToImmutableDictionary();

    /// <summary>The usual route, empty for direct.</summary>
    public static string Between(string from, string to) => Known.GetValueOrDefault((from, to), "");
}
