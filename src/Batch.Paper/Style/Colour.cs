using System.Globalization;
using System.Runtime.InteropServices;

namespace Batch.Paper.Style;

/// <summary>An sRGB colour, each channel 0 to 255, opacity 0 to 1.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Colour(byte Red, byte Green, byte Blue, double Alpha)
{
    public static readonly Colour Black = new(0, 0, 0, 1);
    public static readonly Colour Transparent = new(0, 0, 0, 0);

    public bool IsVisible => Alpha > 0;

    public override string ToString() => "#" + Red.ToString("x2", CultureInfo.InvariantCulture) + Green.ToString("x2", CultureInfo.InvariantCulture)
        + Blue.ToString("x2", CultureInfo.InvariantCulture) + (Alpha < 1 ? "/" + Alpha.ToString("0.##", CultureInfo.InvariantCulture) : "");

    /// <summary>Reads #rgb, #rrggbb(aa), rgb(), rgba(), hsl() or a CSS name; null when the text is none. `currentcolor` is the caller's business.</summary>
    public static Colour? Parse(string text)
    {
        text = text.Trim().ToLowerInvariant();
        if (text == "transparent") return Transparent;
        if (text.StartsWith('#')) return Hex(text[1..]);
        var open = text.IndexOf('(', StringComparison.Ordinal);
        if (open > 0 && text.EndsWith(')')) return Function(text[..open], text[(open + 1)..^1]);
        var named = System.Drawing.Color.FromName(text);
        return named is { IsKnownColor: true, IsSystemColor: false } ? new Colour(named.R, named.G, named.B, 1) : null;
    }

    private static Colour? Hex(string digits)
    {
        if (digits.Length is 3 or 4) digits = string.Concat(digits.Select(d => new string(d, 2)));
        if (digits.Length is not (6 or 8) || !uint.TryParse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var value)) return null;
        if (digits.Length == 6) value = value << 8 | 0xFF;
        return new Colour((byte)(value >> 24), (byte)(value >> 16), (byte)(value >> 8), (value & 0xFF) / 255.0);
    }

    private static Colour? Function(string name, string arguments)
    {
        var parts = arguments.Split([',', ' ', '/'], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is not (3 or 4)) return null;
        var numbers = new double[parts.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            var percent = parts[i].EndsWith('%');
            if (!Length.TryNumber(parts[i].TrimEnd('%').Replace("deg", "", StringComparison.Ordinal), out numbers[i])) return null;
            if (percent) numbers[i] *= i == 3 || name.StartsWith("hsl", StringComparison.Ordinal) ? 0.01 : 2.55;
        }

        var alpha = numbers.Length == 4 ? Math.Clamp(numbers[3], 0, 1) : 1;
        return name switch
        {
            "rgb" or "rgba" => new Colour(Channel(numbers[0]), Channel(numbers[1]), Channel(numbers[2]), alpha),
            "hsl" or "hsla" => new Colour(Hue(numbers, 0), Hue(numbers, 8), Hue(numbers, 4), alpha),
            _ => null,
        };
    }

    private static byte Channel(double value) => (byte)Math.Clamp(Math.Round(value), 0, 255);

    /// <summary>CSS Color 4, section 7.1: hue, saturation, lightness to one channel.</summary>
    private static byte Hue(double[] hsl, int n)
    {
        var k = (n + (hsl[0] / 30 % 12 + 12)) % 12;
        var a = hsl[1] * Math.Min(hsl[2], 1 - hsl[2]);
        return Channel(255 * (hsl[2] - a * Math.Max(-1, Math.Min(Math.Min(k - 3, 9 - k), 1))));
    }
}
