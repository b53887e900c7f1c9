using System.Globalization;
using Batch.Paper.Paint;

namespace Batch.Paper.Fonts;

/// <summary>The faces of a print as CSS rules for browsers.</summary>
internal static class WebFaces
{
    private const string Symbols = "DejaVu";

    /// <summary>One rule a face, in the order of first use.</summary>
    /// <param name="texts">The texts printed.</param>
    public static string Of(IEnumerable<DisplayItem.Text> texts)
    {
        var faces = new Dictionary<TrueTypeFont, SortedDictionary<ushort, string>>();
        foreach (var text in texts)
        {
            if (!faces.TryGetValue(text.Font, out var glyphs)) faces[text.Font] = glyphs = [];
            for (var i = 0; i < text.Glyphs.Length; i++) glyphs.TryAdd(text.Glyphs[i], text.Texts[i]);
        }

        return string.Concat(faces.Select(face => Rule(face.Key, face.Value)));
    }

    private static string Rule(TrueTypeFont font, SortedDictionary<ushort, string> glyphs)
    {
        var isSymbols = font.Name.StartsWith(Symbols, StringComparison.Ordinal);
        for (var letter = ' '; !isSymbols && letter <= '~'; letter++) glyphs.TryAdd(font.Glyph(letter), letter.ToString());
        var weight = font.Name.Contains("SemiBold", StringComparison.Ordinal) || (isSymbols && font.Name.Contains("Bold", StringComparison.Ordinal)) ? 600 : font.Name.Contains("Bold", StringComparison.Ordinal) ? 700 : 400;
        var range = isSymbols ? ";unicode-range:" + string.Join(',', glyphs.Where(glyph => glyph.Key != 0).Select(glyph => "U+" + char.ConvertToUtf32(glyph.Value, 0).ToString("X", CultureInfo.InvariantCulture))) : "";
        return string.Create(CultureInfo.InvariantCulture, $"@font-face{{font-family:\"{WebFont.Family}\";font-weight:{weight};font-style:{(font.ItalicAngle != 0 ? "italic" : "normal")}{range};src:url(data:font/woff;base64,{Convert.ToBase64String(WebFont.Of(font, glyphs))})}}");
    }
}
