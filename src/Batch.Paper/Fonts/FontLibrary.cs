using System.Globalization;
using System.Reflection;
using System.Text;

namespace Batch.Paper.Fonts;

/// <summary>The built-in faces and the choice among them. Read-only after construction, so one library serves all threads.</summary>
internal sealed class FontLibrary
{
    /// <summary>Texts of the letters most used, so that a glyph needs none of its own.</summary>
    private static readonly string[] Letters = [.. Enumerable.Range(0, 0x500).Select(c => ((char)c).ToString())];

    private readonly TrueTypeFont _regular = Load("IBMPlexSans-Regular");
    private readonly TrueTypeFont _italic = Load("IBMPlexSans-Italic");
    private readonly TrueTypeFont _semiBold = Load("IBMPlexSans-SemiBold");
    private readonly TrueTypeFont _bold = Load("IBMPlexSans-Bold");
    private readonly TrueTypeFont _boldItalic = Load("IBMPlexSans-BoldItalic");
    private readonly TrueTypeFont _symbols = Load("DejaVuSans");
    private readonly TrueTypeFont _symbolsBold = Load("DejaVuSans-Bold");

    /// <summary>Face for a weight (1 to 1000) and slope; nearest weight as CSS Fonts 4, section 5.2, finds it.</summary>
    public TrueTypeFont Face(int weight, bool italic) => italic
        ? weight >= 600 ? _boldItalic : _italic
        : weight > 600 ? _bold : weight > 500 ? _semiBold : _regular;

    /// <summary>Glyphs of a text, split where the face changes. Characters no face has, and right-to-left letters, come out as the empty box.</summary>
    public List<ShapedGlyph> Shape(string text, int weight, bool italic)
    {
        var primary = Face(weight, italic);
        var fallback = weight > 500 ? _symbolsBold : _symbols;
        var shaped = new List<ShapedGlyph>(text.Length);
        var index = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            var (font, glyph) = (primary, primary.Glyph(rune.Value));
            var invisible = rune.Value is 0xAD or 0x200B or 0x200C or 0x200D or 0x2060 or 0xFEFF or (>= 0xFE00 and <= 0xFE0F) || Rune.IsControl(rune);
            var foreign = IsRightToLeft(rune.Value);
            if (glyph == 0 && !foreign && fallback.Glyph(rune.Value) is > 0 and var other) (font, glyph) = (fallback, other);
            if (foreign) glyph = 0;
            var advance = invisible ? 0 : font.Advance(glyph);
            if (shaped.Count > 0 && shaped[^1] is var last && last.Font == font && last.Glyph != 0 && !last.Invisible && !invisible)
                shaped[^1] = last with { AdvanceEm = last.AdvanceEm + font.Kerning.Between(last.Glyph, glyph) };
            shaped.Add(new ShapedGlyph(font, glyph, advance, Text(rune), index, invisible, glyph == 0 && !invisible));
            index += rune.Utf16SequenceLength;
        }

        return shaped;
    }

    private static string Text(Rune rune) => rune.Value < Letters.Length ? Letters[rune.Value] : rune.ToString();

    private static bool IsRightToLeft(int codePoint) => codePoint is (>= 0x590 and <= 0x8FF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFE) or (>= 0x10800 and <= 0x10FFF)
        && CharUnicodeInfo.GetUnicodeCategory(codePoint) != UnicodeCategory.OtherNotAssigned;

    private static TrueTypeFont Load(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name + ".ttf")
            ?? throw new InvalidOperationException("The face " + name + " is not built in.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return new TrueTypeFont(name, copy.ToArray());
    }
}
