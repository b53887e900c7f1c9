using System.Globalization;

namespace Batch.Paper.Svg;

/// <summary>Reads the number lists of SVG attributes, in which separators may be left out.</summary>
internal sealed class SvgNumbers(string text)
{
    public int Position { get; private set; }

    public bool AtEnd
    {
        get
        {
            Skip();
            return Position >= text.Length;
        }
    }

    /// <summary>The next letter, or null when a number follows.</summary>
    public char? Letter()
    {
        Skip();
        return Position < text.Length && char.IsAsciiLetter(text[Position]) ? text[Position++] : null;
    }

    /// <summary>A flag of an arc: one digit, which may stick to the next.</summary>
    public bool? Flag()
    {
        Skip();
        return Position < text.Length && text[Position] is '0' or '1' ? text[Position++] == '1' : null;
    }

    public double? Number()
    {
        Skip();
        var (start, at, dot) = (Position, Position, false);
        if (at < text.Length && text[at] is '+' or '-') at++;
        for (; at < text.Length && (char.IsAsciiDigit(text[at]) || (text[at] == '.' && !dot)); at++) dot |= text[at] == '.';
        if (at < text.Length && text[at] is 'e' or 'E' && at + 1 < text.Length && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] is '-' or '+'))
        {
            for (at += 2; at < text.Length && char.IsAsciiDigit(text[at]);) at++;
        }

        if (!double.TryParse(text.AsSpan(start, at - start), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value)) return null;
        Position = at;
        return value;
    }

    private void Skip()
    {
        while (Position < text.Length && (char.IsWhiteSpace(text[Position]) || text[Position] == ',')) Position++;
    }
}
