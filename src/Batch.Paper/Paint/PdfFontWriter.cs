using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Batch.Paper.Fonts;
using PdfSharp.Pdf;

namespace Batch.Paper.Paint;

/// <summary>Embeds a subset face as a composite font with glyph numbers as codes (ISO 32000-2, section 9.7) and a map back to Unicode.</summary>
internal static class PdfFontWriter
{
    public static void Write(PdfDocument document, PdfDictionary target, TrueTypeFont font, SortedDictionary<ushort, string> glyphs)
    {
        var program = FontSubset.Of(font, glyphs.Keys);
        var name = new PdfName("/" + Tag(glyphs.Keys) + "+" + font.Name);
        var file = PdfParts.Indirect(document, ("/Length1", new PdfInteger(program.Length)));
        PdfParts.Fill(file, program);
        var descriptor = PdfParts.Indirect(document, ("/Type", new PdfName("/FontDescriptor")), ("/FontName", name), ("/Flags", new PdfInteger(font.ItalicAngle != 0 ? 4 + 64 : 4)),
            ("/FontBBox", Numbers(document, font.Bounds)), ("/ItalicAngle", new PdfReal(font.ItalicAngle)), ("/Ascent", new PdfReal(font.Ascent * 1000)), ("/Descent", new PdfReal(-font.Descent * 1000)),
            ("/CapHeight", new PdfReal(font.CapHeight * 1000)), ("/StemV", new PdfInteger(font.Name.Contains("Bold", StringComparison.Ordinal) ? 140 : 80)), ("/FontFile2", file.Reference));
        var system = new PdfDictionary(document);
        PdfParts.Set(system, ("/Registry", new PdfString("Adobe")), ("/Ordering", new PdfString("Identity")), ("/Supplement", new PdfInteger(0)));
        var widths = new PdfArray(document);
        foreach (var glyph in glyphs.Keys)
        {
            widths.Elements.Add(new PdfInteger(glyph));
            widths.Elements.Add(Numbers(document, [font.Advance(glyph) * 1000]));
        }

        var descendant = PdfParts.Indirect(document, ("/Type", new PdfName("/Font")), ("/Subtype", new PdfName("/CIDFontType2")), ("/BaseFont", name), ("/CIDSystemInfo", system),
            ("/FontDescriptor", descriptor.Reference), ("/CIDToGIDMap", new PdfName("/Identity")), ("/DW", new PdfInteger(0)), ("/W", widths));
        var toUnicode = PdfParts.Indirect(document);
        PdfParts.Fill(toUnicode, Encoding.ASCII.GetBytes(UnicodeMap(glyphs)));
        var descendants = new PdfArray(document, descendant.Reference ?? throw new InvalidOperationException("A font without a number."));
        PdfParts.Set(target, ("/Type", new PdfName("/Font")), ("/Subtype", new PdfName("/Type0")), ("/BaseFont", name), ("/Encoding", new PdfName("/Identity-H")), ("/DescendantFonts", descendants), ("/ToUnicode", toUnicode.Reference));
    }

    /// <summary>Six letters made from the glyphs, so that the same document always gets the same name.</summary>
    private static string Tag(IEnumerable<ushort> glyphs)
    {
        var hash = SHA256.HashData(Encoding.ASCII.GetBytes(string.Join(',', glyphs)));
        return new string([.. hash.Take(6).Select(b => (char)('A' + b % 26))]);
    }

    private static PdfArray Numbers(PdfDocument document, IEnumerable<double> values)
    {
        var array = new PdfArray(document);
        foreach (var value in values) array.Elements.Add(new PdfReal(Math.Round(value, 3)));
        return array;
    }

    private static string UnicodeMap(SortedDictionary<ushort, string> glyphs)
    {
        var map = new StringBuilder("/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def ")
            .Append("/CMapName /Adobe-Identity-UCS def /CMapType 2 def 1 begincodespacerange <0000> <FFFF> endcodespacerange\n");
        foreach (var block in glyphs.Chunk(100))
        {
            map.Append(block.Length.ToString(CultureInfo.InvariantCulture)).Append(" beginbfchar\n");
            foreach (var (glyph, text) in block)
                map.Append('<').Append(glyph.ToString("X4", CultureInfo.InvariantCulture)).Append("> <").Append(Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))).Append(">\n");
            map.Append("endbfchar\n");
        }

        return map.Append("endcmap CMapName currentdict /CMap defineresource pop end end").ToString();
    }
}
