namespace Batch.Paper.Style;

/// <summary>Shorthand properties to longhands. A part that is not given is reset to its initial value.</summary>
internal static class Shorthands
{
    private static readonly string[] SideNames = ["top", "right", "bottom", "left"];

    public static bool Knows(string name) => name is "margin" or "padding" or "border" or "border-width" or "border-style" or "border-color" or "border-top" or "border-right"
        or "border-bottom" or "border-left" or "border-radius" or "background" or "font" or "flex" or "flex-flow" or "gap" or "grid-gap" or "list-style" or "text-decoration" or "page-break-before"
        or "page-break-after" or "page-break-inside" or "grid-column" or "overflow-wrap" or "word-wrap" or "word-break" or "place-items";

    /// <summary>Longhands of a shorthand; null when its value cannot be read.</summary>
    public static IEnumerable<(string Name, string Value)>? Expand(string name, string value)
    {
        var parts = CssScanner.Split(value, ' ');
        if (parts.Count == 0) return null;
        if (parts.Count == 1 && value is "inherit" or "initial" or "unset" && name is not ("flex" or "font" or "background")) parts = [value];
        switch (name)
        {
            case "margin" or "padding":
                return FourSides(parts, side => name + "-" + side);
            case "border-width" or "border-style" or "border-color":
                return FourSides(parts, side => "border-" + side + name[6..]);
            case "border-radius":
                return parts.Contains("/") ? null : FourSides(parts, side => side switch
                {
                    "top" => "border-top-left-radius",
                    "right" => "border-top-right-radius",
                    "bottom" => "border-bottom-right-radius",
                    _ => "border-bottom-left-radius",
                });
            case "border":
                return Border(parts) is { } all ? SideNames.SelectMany(side => BorderSide(side, all)) : null;
            case "border-top" or "border-right" or "border-bottom" or "border-left":
                return Border(parts) is { } one ? BorderSide(name[7..], one) : null;
            case "background":
                return parts.Count == 1 ? [("background-color", value is "none" or "initial" ? "transparent" : value)] : null;
            case "gap" or "grid-gap":
                return parts.Count <= 2 ? [("row-gap", parts[0]), ("column-gap", parts[^1])] : null;
            case "flex-flow":
                return parts.Select(p => (p.Contains("wrap", StringComparison.Ordinal) ? "flex-wrap" : "flex-direction", p));
            case "flex":
                return Flex(value, parts);
            case "font":
                return Font(parts);
            case "list-style":
                return [("list-style-type", parts.FirstOrDefault(p => p is not ("inside" or "outside")) ?? "disc")];
            case "text-decoration":
                return [("text-decoration-line", parts[0])];
            case "page-break-before" or "page-break-after":
                return [("break-" + name[11..], value == "always" ? "page" : value)];
            case "page-break-inside":
                return [("break-inside", value)];
            case "grid-column":
                return GridColumn(parts);
            case "place-items":
                return parts.Count == 1 ? [("align-items", value)] : null;
            default:
                return value is "normal" or "anywhere" or "break-word" or "break-all" or "keep-all" ? [("-break-words", value is "normal" or "keep-all" ? "normal" : "anywhere")] : null;
        }
    }

    private static IEnumerable<(string, string)>? FourSides(List<string> parts, Func<string, string> named) => parts.Count > 4 ? null
        : SideNames.Select((side, i) => (named(side), parts[parts.Count switch { 1 => 0, 2 => i % 2, 3 => i == 3 ? 1 : i, _ => i }]));

    private static (string Width, string Style, string Color)? Border(List<string> parts)
    {
        (string Width, string Style, string Color) border = ("medium", "none", "currentcolor");
        foreach (var part in parts)
        {
            if (part is "none" or "hidden" or "solid" or "dashed" or "dotted" or "double" or "groove" or "ridge" or "inset" or "outset") border.Style = part;
            else if (part is "thin" or "medium" or "thick" || char.IsAsciiDigit(part[0]) || part[0] == '.' || part.StartsWith("calc", StringComparison.Ordinal)) border.Width = part;
            else border.Color = part;
        }

        return parts.Count > 3 ? null : border;
    }

    private static IEnumerable<(string, string)> BorderSide(string side, (string Width, string Style, string Color) border) =>
        [("border-" + side + "-width", border.Width), ("border-" + side + "-style", border.Style), ("border-" + side + "-color", border.Color)];

    private static IEnumerable<(string, string)>? Flex(string value, List<string> parts)
    {
        if (value is "none") parts = ["0", "0", "auto"];
        else if (value is "auto") parts = ["1", "1", "auto"];
        else if (value is "initial") parts = ["0", "1", "auto"];
        var numbers = parts.TakeWhile(p => Length.TryNumber(p, out _)).Take(2).ToList();
        if (parts.Count > numbers.Count + 1) return null;
        var basis = parts.Count > numbers.Count ? parts[^1] : "0%";
        return [("flex-grow", numbers.ElementAtOrDefault(0) ?? "1"), ("flex-shrink", numbers.ElementAtOrDefault(1) ?? "1"), ("flex-basis", basis)];
    }

    private static IEnumerable<(string, string)>? Font(List<string> parts)
    {
        if (parts is ["inherit"]) return new[] { "font-style", "font-weight", "font-size", "line-height", "font-family" }.Select(n => (n, "inherit"));
        var size = parts.FindIndex(p => char.IsAsciiDigit(p[0]) && !p.EndsWith("00", StringComparison.Ordinal) || p is "small" or "medium" or "large" || p.StartsWith("calc", StringComparison.Ordinal));
        if (size < 0 || size + 1 >= parts.Count) return null;
        var before = parts.Take(size).ToList();
        var sizes = parts[size].Split('/');
        return
        [
            ("font-style", before.Contains("italic") || before.Contains("oblique") ? "italic" : "normal"),
            ("font-weight", before.Find(p => p.StartsWith("bold", StringComparison.Ordinal) || char.IsAsciiDigit(p[0])) ?? "normal"),
            ("font-size", sizes[0]), ("line-height", sizes.Length > 1 ? sizes[1] : "normal"), ("font-family", string.Join(' ', parts.Skip(size + 1))),
        ];
    }

    private static IEnumerable<(string, string)>? GridColumn(List<string> parts) => parts switch
    {
        ["span", var n] => [("-column-start", "0"), ("-column-span", n)],
        [var start, "/", "span", var n] => [("-column-start", start), ("-column-span", n)],
        [var start, "/", "-1"] => [("-column-start", start), ("-column-span", "1000")],
        [var start, "/", var end] when Length.TryNumber(start, out var from) && Length.TryNumber(end, out var to) && to > from =>
            [("-column-start", start), ("-column-span", (to - from).ToString(System.Globalization.CultureInfo.InvariantCulture))],
        [var start] => [("-column-start", start), ("-column-span", "1")],
        _ => null,
    };
}
