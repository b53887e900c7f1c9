namespace Batch.Paper.Style;

internal static partial class Properties
{
    private static void AddText(Dictionary<string, Setter> table)
    {
        table["color"] = (s, v, c) => Paint(v, c.Parent.Color) is { } colour && Set(() => s.Color = colour);
        table["font-size"] = (s, v, c) =>
        {
            double? fixedSize = v switch { "medium" => 16, "small" => 13, "x-small" => 10, "large" => 18, "x-large" => 24, "smaller" => c.Parent.FontSize / 1.2, "larger" => c.Parent.FontSize * 1.2, _ => null };
            if (fixedSize is null && Length.Parse(v, c.Parent.FontSize, c.RootFontSize) is { IsAuto: false } length) fixedSize = length.Exact(c.Parent.FontSize);
            return fixedSize is >= 0 and var size && Set(() => s.FontSize = size);
        };
        table["font-weight"] = (s, v, c) =>
        {
            var weight = v switch { "normal" => 400, "bold" => 700, "bolder" => c.Parent.FontWeight < 600 ? 700 : 900, "lighter" => 400, _ => Length.TryNumber(v, out var n) ? n : -1 };
            return weight is >= 1 and <= 1000 && Set(() => s.FontWeight = (int)weight);
        };
        Keyword(table, "font-style", (s, v) => s.Italic = v, ("normal", false), ("italic", true), ("oblique", true));
        table["font-family"] = (_, v, _) => v.Split(',').Select(f => f.Trim(' ', '"', '\'').ToLowerInvariant())
            .Any(f => f is "ibm plex sans" or "sans-serif" or "system-ui" or "ui-sans-serif" or "dejavu sans");
        table["line-height"] = (s, v, c) =>
        {
            if (v == "normal") return Set(() => (s.LineHeight, s.LineHeightFactor) = (null, null));
            if (Length.TryNumber(v, out var factor)) return factor >= 0 && Set(() => (s.LineHeight, s.LineHeightFactor) = (null, factor));
            return c.Length(v) is { IsAuto: false } length && Set(() => (s.LineHeight, s.LineHeightFactor) = (length.Exact(s.FontSize), null));
        };
        table["letter-spacing"] = (s, v, c) => v == "normal" ? Set(() => s.LetterSpacing = 0) : c.Length(v) is { IsAuto: false, Percent: 0 } length && Set(() => s.LetterSpacing = length.Px);
        Keyword(table, "text-align", (s, v) => s.TextAlign = v, ("start", TextAlign.Start), ("left", TextAlign.Left), ("right", TextAlign.Right), ("end", TextAlign.End), ("center", TextAlign.Center),
            ("justify", TextAlign.Justify));
        Keyword(table, "text-transform", (s, v) => s.TextTransform = v, ("none", TextTransform.None), ("uppercase", TextTransform.Uppercase), ("lowercase", TextTransform.Lowercase),
            ("capitalize", TextTransform.Capitalize));
        Keyword(table, "white-space", (s, v) => s.WhiteSpace = v, ("normal", WhiteSpace.Normal), ("nowrap", WhiteSpace.Nowrap), ("pre", WhiteSpace.Pre), ("pre-wrap", WhiteSpace.PreWrap),
            ("pre-line", WhiteSpace.PreLine));
        Measure(table, "text-indent", (s, v) => s.TextIndent = v, auto: false, negative: true);
        Keyword(table, "-break-words", (s, v) => s.BreakWords = v, ("normal", false), ("anywhere", true));
        table["text-decoration-line"] = (s, v, _) => v switch
        {
            "none" => Set(() => (s.Underline, s.LineThrough) = (false, false)),
            "underline" => Set(() => s.Underline = true),
            "line-through" => Set(() => s.LineThrough = true),
            _ => false,
        };
        table["text-decoration-color"] = (_, v, _) => v == "currentcolor";
        table["vertical-align"] = (s, v, c) =>
        {
            VerticalAlign? word = v switch
            {
                "baseline" or "0" => VerticalAlign.Baseline,
                "sub" => VerticalAlign.Sub,
                "super" => VerticalAlign.Super,
                "top" => VerticalAlign.Top,
                "middle" => VerticalAlign.Middle,
                "bottom" => VerticalAlign.Bottom,
                "text-top" => VerticalAlign.TextTop,
                "text-bottom" => VerticalAlign.TextBottom,
                _ => null,
            };
            if (word is { } known) return Set(() => s.VerticalAlign = known);
            return c.Length(v) is { IsAuto: false } length && Set(() => (s.VerticalAlign, s.VerticalShift) = (VerticalAlign.Shift, length));
        };
        // The built-in face has figures of one width only, lining and with an open zero as drawn.
        table["font-variant-numeric"] = (_, v, _) => v is "normal" or "0" or "tabular-nums" or "lining-nums" or "tabular-nums lining-nums" or "lining-nums tabular-nums";
        table["list-style-type"] = (s, v, _) => v is "none" or "disc" or "circle" or "square" or "decimal" or "lower-alpha" or "upper-alpha" or "lower-roman" or "upper-roman" && Set(() => s.ListStyle = v);
        table["list-style-position"] = (_, v, _) => v is "outside" or "0";
        Keyword(table, "visibility", (s, v) => s.Visible = v, ("visible", true), ("hidden", false));
    }

    private static bool Set(Action assign)
    {
        assign();
        return true;
    }

    private static Colour? Paint(string value, Colour current) => value == "currentcolor" ? current : Colour.Parse(value);
}
