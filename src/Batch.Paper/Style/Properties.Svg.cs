namespace Batch.Paper.Style;

internal static partial class Properties
{
    private static readonly HashSet<string> Presentation =
    [
        "fill", "stroke", "stroke-width", "stroke-dasharray", "stroke-dashoffset", "stroke-linecap", "stroke-linejoin", "fill-opacity", "stroke-opacity", "opacity", "fill-rule", "text-anchor",
        "dominant-baseline", "font-size", "font-weight", "font-style", "font-family", "letter-spacing", "color", "display", "visibility", "vector-effect",
    ];

    /// <summary>SVG attributes that stand for a property, weaker than any rule.</summary>
    public static bool IsPresentationAttribute(string name) => Presentation.Contains(name);

    /// <summary>Attributes give lengths in user units without a name, which properties ask for.</summary>
    public static string WithUnit(string name, string value) => name is "font-size" or "letter-spacing" && Length.TryNumber(value, out _) ? value.Trim() + "px" : value;

    private static void AddSvg(Dictionary<string, Setter> table)
    {
        table["fill"] = (s, v, _) => v == "none" ? Set(() => s.Fill = null) : Paint(v, s.Color) is { } colour && Set(() => s.Fill = colour);
        table["stroke"] = (s, v, _) => v == "none" ? Set(() => s.Stroke = null) : Paint(v, s.Color) is { } colour && Set(() => s.Stroke = colour);
        table["stroke-width"] = (s, v, c) => UserLength(v, c) is >= 0 and var width && Set(() => s.StrokeWidth = width);
        table["stroke-dashoffset"] = (s, v, c) => UserLength(v, c) is { } offset && Set(() => s.DashOffset = offset);
        table["stroke-dasharray"] = (s, v, c) =>
        {
            if (v == "none") return Set(() => s.Dashes = []);
            var lengths = v.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(p => UserLength(p, c) ?? -1).ToImmutableArray();
            return lengths.Length > 0 && lengths.All(l => l >= 0) && Set(() => s.Dashes = lengths.Sum() > 0 ? lengths : []);
        };
        Keyword(table, "stroke-linecap", (s, v) => s.LineCap = v, ("butt", 0), ("round", 1), ("square", 2));
        Keyword(table, "stroke-linejoin", (s, v) => s.LineJoin = v, ("miter", 0), ("round", 1), ("bevel", 2));
        Number(table, "fill-opacity", 0, 1, (s, v) => s.FillOpacity = Math.Clamp(v, 0, 1));
        Number(table, "stroke-opacity", 0, 1, (s, v) => s.StrokeOpacity = Math.Clamp(v, 0, 1));
        Keyword(table, "fill-rule", (s, v) => s.EvenOdd = v, ("nonzero", false), ("evenodd", true));
        Keyword(table, "text-anchor", (s, v) => s.TextAnchor = v, ("start", "start"), ("middle", "middle"), ("end", "end"));
        Keyword(table, "dominant-baseline", (s, v) => s.MiddleBaseline = v, ("auto", false), ("alphabetic", false), ("middle", true), ("central", true));
        Keyword(table, "vector-effect", (_, _) => { }, ("none", 0));
    }

    private static double? UserLength(string value, StyleContext context) =>
        Length.TryNumber(value, out var number) ? number : context.Length(value) is { IsAuto: false, Percent: 0 } length ? length.Px : null;
}
