namespace Batch.Paper.Style;

/// <summary>The properties the printer honours: how each value is read into a style. False means the value is not supported.</summary>
internal static partial class Properties
{
    private delegate bool Setter(ComputedStyle style, string value, StyleContext context);

    private static readonly Dictionary<string, Setter> Setters = Build();

    /// <summary>Properties that change nothing on paper or are the printer's fixed behaviour; accepted without a note.</summary>
    private static readonly HashSet<string> WithoutEffect =
    [
        "print-color-adjust", "-webkit-print-color-adjust", "color-scheme", "cursor", "transition", "outline", "outline-offset", "user-select", "scroll-behavior", "scroll-margin-top", "text-rendering",
        "-webkit-font-smoothing", "text-size-adjust", "-webkit-text-size-adjust", "font-kerning", "font-feature-settings", "tab-size", "accent-color", "size",
    ];

    public static bool Knows(string name) => name.StartsWith("--", StringComparison.Ordinal) || Setters.ContainsKey(name) || Shorthands.Knows(name) || WithoutEffect.Contains(name);

    public static bool Apply(ComputedStyle style, string name, string value, StyleContext context)
    {
        if (WithoutEffect.Contains(name) || !Setters.TryGetValue(name, out var setter)) return true;
        var lower = name is "font-family" or "string-set" ? value : value.ToLowerInvariant();
        if (lower is "initial" or "unset" or "revert") lower = Initial(name);
        if (lower == "inherit") return Inherit(style, name, context.Parent);
        return setter(style, lower, context);
    }

    private static string Initial(string name) => name switch
    {
        "display" => "inline",
        "color" => "#000000",
        "font-size" => "medium",
        "margin-top" or "margin-right" or "margin-bottom" or "margin-left" => "0",
        "background-color" => "transparent",
        "width" or "height" or "max-width" or "max-height" or "flex-basis" => "auto",
        "font-weight" or "font-style" or "line-height" or "letter-spacing" or "white-space" => "normal",
        "text-align" => "start",
        "text-transform" or "text-decoration-line" => "none",
        "break-before" or "break-after" or "break-inside" => "auto",
        _ => "0",
    };

    private static bool Inherit(ComputedStyle style, string name, ComputedStyle parent)
    {
        switch (name)
        {
            case "vertical-align": (style.VerticalAlign, style.VerticalShift) = (parent.VerticalAlign, parent.VerticalShift); break;
            case "background-color": style.Background = parent.Background; break;
            case "width": style.Width = parent.Width; break;
            case "height": style.Height = parent.Height; break;
            case "display": style.Display = parent.Display; break;
            case "box-sizing": style.BorderBox = parent.BorderBox; break;
            case "text-decoration-line": (style.Underline, style.LineThrough) = (parent.Underline, parent.LineThrough); break;
            case "color": style.Color = parent.Color; break;
            case "font-size": style.FontSize = parent.FontSize; break;
            case "font-weight": style.FontWeight = parent.FontWeight; break;
            case "font-style": style.Italic = parent.Italic; break;
            case "line-height": (style.LineHeight, style.LineHeightFactor) = (parent.LineHeight, parent.LineHeightFactor); break;
            case "text-align": style.TextAlign = parent.TextAlign; break;
            case "white-space": style.WhiteSpace = parent.WhiteSpace; break;
            case "font-family": break;
            default: return false;
        }

        return true;
    }

    private static Dictionary<string, Setter> Build()
    {
        var table = new Dictionary<string, Setter>();
        AddText(table);
        AddBox(table);
        AddSvg(table);
        return table;
    }

    private static void Keyword<T>(Dictionary<string, Setter> table, string name, Action<ComputedStyle, T> set, params (string Word, T Value)[] words) =>
        table[name] = (style, value, _) =>
        {
            foreach (var (word, meaning) in words)
            {
                if (word != value) continue;
                set(style, meaning);
                return true;
            }

            return false;
        };

    private static void Measure(Dictionary<string, Setter> table, string name, Action<ComputedStyle, Length> set, bool auto = true, bool negative = false) =>
        table[name] = (style, value, context) =>
        {
            if (context.Length(value) is not { } length || (length.IsAuto && !auto) || (!negative && (length.Px < 0 && length.Percent == 0))) return false;
            set(style, length);
            return true;
        };

    private static void Number(Dictionary<string, Setter> table, string name, double least, double most, Action<ComputedStyle, double> set) =>
        table[name] = (style, value, _) =>
        {
            var percent = value.EndsWith('%');
            if (!Length.TryNumber(value.TrimEnd('%'), out var number) || number < least || (number > most && !percent)) return false;
            set(style, percent ? number / 100 : number);
            return true;
        };
}
