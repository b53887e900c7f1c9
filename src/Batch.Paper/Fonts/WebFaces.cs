using System.Globalization;
using System.Net;
using Batch.Paper.Paint;

namespace Batch.Paper.Fonts;

/// <summary>The faces of a print as CSS rules for browsers.</summary>
internal static class WebFaces
{
    private const string Symbols = "DejaVu";
    private const int Regular = 400;
    private const int SemiBold = 600;

    /// <summary>One rule a face, in the order of first use.</summary>
    /// <param name="texts">The texts printed.</param>
    public static string Of(IEnumerable<DisplayItem.Text> texts) => Rules(texts.SelectMany(text => text.Glyphs.Select((glyph, i) => (text.Font, glyph, text.Texts[i]))));

    /// <summary>The regular and the semibold face, with every letter that stands in a document.</summary>
    /// <param name="html">The document.</param>
    /// <param name="fonts">The faces.</param>
    public static string Of(string html, FontLibrary fonts)
    {
        var letters = string.Concat(WebUtility.HtmlDecode(html).EnumerateRunes().Distinct());
        return Rules(new[] { Regular, SemiBold }.SelectMany(weight => fonts.Shape(letters, weight, italic: false)).Where(glyph => !glyph.Missing && !glyph.Invisible).Select(glyph => (glyph.Font, glyph.Glyph, glyph.Text)));
    }

    /// <summary>A document with rules in its head; as it is where it has no head or there are none.</summary>
    /// <param name="html">The document.</param>
    /// <param name="rules">The rules.</param>
    public static string In(string html, string rules)
    {
        var head = html.IndexOf("</head>", StringComparison.OrdinalIgnoreCase);
        return head < 0 || rules.Length == 0 ? html : html.Insert(head, "<style>" + rules + "</style>\n");
    }

    private static string Rules(IEnumerable<(TrueTypeFont Font, ushort Glyph, string Text)> letters)
    {
        var faces = new Dictionary<TrueTypeFont, SortedDictionary<ushort, string>>();
        foreach (var (font, glyph, text) in letters)
        {
            if (!faces.TryGetValue(font, out var glyphs)) faces[font] = glyphs = [];
            glyphs.TryAdd(glyph, text);
        }

        return string.Concat(faces.Select(face => Rule(face.Key, face.Value)));
    }

    private static string Rule(TrueTypeFont font, SortedDictionary<ushort, string> glyphs)
    {
        var isSymbols = font.Name.StartsWith(Symbols, StringComparison.Ordinal);
        for (var letter = ' '; !isSymbols && letter <= '~'; letter++) glyphs.TryAdd(font.Glyph(letter), letter.ToString());
        var weight = font.Name.Contains("SemiBold", StringComparison.Ordinal) || (isSymbols && font.Name.Contains("Bold", StringComparison.Ordinal)) ? SemiBold : font.Name.Contains("Bold", StringComparison.Ordinal) ? 700 : Regular;
        var range = isSymbols ? ";unicode-range:" + string.Join(',', glyphs.Where(glyph => glyph.Key != 0).Select(glyph => "U+" + char.ConvertToUtf32(glyph.Value, 0).ToString("X", CultureInfo.InvariantCulture))) : "";
        return string.Create(CultureInfo.InvariantCulture, $"@font-face{{font-family:\"{WebFont.Family}\";font-weight:{weight};font-style:{(font.ItalicAngle != 0 ? "italic" : "normal")}{range};src:url(data:font/woff;base64,{Convert.ToBase64String(WebFont.Of(font, glyphs))})}}");
    }
}
