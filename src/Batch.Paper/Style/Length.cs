using System.Globalization;

namespace Batch.Paper.Style;

/// <summary>A length as CSS pixels (1/96 inch) plus a share of some basis; or `auto`, which also stands for `none`.</summary>
internal readonly record struct Length(double Px, double Percent, bool IsAuto)
{
    public static readonly Length Auto = new(0, 0, IsAuto: true);
    public static readonly Length Zero;

    public static Length Of(double px) => new(px, 0, IsAuto: false);

    /// <summary>The length in px for a basis, cut to 1/64 px as browsers do, so that sums of many agree with theirs.</summary>
    public double Against(double basis) => Cut(Exact(basis));

    /// <summary>The length in px, not cut; for sizes of type.</summary>
    public double Exact(double basis) => Percent == 0 ? Px : Px + Percent / 100 * basis;

    /// <summary>Cut towards zero to 1/64 px.</summary>
    public static double Cut(double px) => double.IsFinite(px) ? Math.Truncate(px * 64 + Math.Sign(px) * 0.001) / 64 : px;

    public double? OrNull(double basis) => IsAuto || (Percent != 0 && !double.IsFinite(basis)) ? null : Against(basis);

    /// <summary>Reads a length, percentage or calc of them; null when the text is none.</summary>
    /// <param name="text">Such as `4mm` or `calc(100% - 2em)`.</param>
    /// <param name="em">Font size the unit em stands for, px.</param>
    /// <param name="rem">Font size of the root element, px.</param>
    public static Length? Parse(string text, double em, double rem)
    {
        text = text.Trim().ToLowerInvariant();
        if (text is "auto" or "none") return Auto;
        if (text.StartsWith("calc(", StringComparison.Ordinal) && text.EndsWith(')')) return Sum(text[5..^1], em, rem);
        if (text.StartsWith('(') && text.EndsWith(')')) return Sum(text[1..^1], em, rem);
        var unitAt = text.Length;
        while (unitAt > 0 && (char.IsAsciiLetter(text[unitAt - 1]) || text[unitAt - 1] == '%')) unitAt--;
        if (!TryNumber(text[..unitAt], out var value)) return null;
        var unit = text[unitAt..];
        double? px = unit switch
        {
            "px" => 1,
            "pt" => 96.0 / 72,
            "mm" => 96 / 25.4,
            "cm" => 96 / 2.54,
            "in" => 96,
            "em" => em,
            "rem" => rem,
            "" when value == 0 => 1,
            _ => null,
        };
        if (unit == "%") return new Length(0, value, IsAuto: false);
        return px is { } factor ? Of(value * factor) : null;
    }

    public static bool TryNumber(string text, out double value) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value) && Math.Abs(value) < 1e7;

    private static Length? Sum(string text, double em, double rem)
    {
        var tokens = CssScanner.Split(text, ' ');
        if (tokens.Count % 2 == 0) return null;
        if (Term(tokens[0], em, rem) is not { } total) return null;
        for (var i = 1; i < tokens.Count; i += 2)
        {
            if (tokens[i] is not ("+" or "-") || Term(tokens[i + 1], em, rem) is not { } next) return null;
            var sign = tokens[i] == "+" ? 1 : -1;
            total = new Length(total.Px + sign * next.Px, total.Percent + sign * next.Percent, IsAuto: false);
        }

        return total;
    }

    private static Length? Term(string text, double em, double rem) => Parse(text, em, rem) is { IsAuto: false } length ? length : null;
}
