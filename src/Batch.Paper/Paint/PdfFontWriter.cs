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
        var name = "/" + Tag(glyphs.Keys) + "+" + font.Name;
        var file = Indirect(document);
        PdfStreams.Fill(file, program);
        file.Elements["/Length1"] = new PdfInteger(program.Length);
        var descriptor = Indirect(document);
        descriptor.Elements["/Type"] = new PdfName("/FontDescriptor");
        descriptor.Elements["/FontName"] = new PdfName(name);
        descriptor.Elements["/Flags"] = new PdfInteger(font.ItalicAngle != 0 ? 4 + 64 : 4);
        descriptor.Elements["/FontBBox"] = Numbers(document, font.Bounds);
        descriptor.Elements["/ItalicAngle"] = new PdfReal(font.ItalicAngle);
        descriptor.Elements["/Ascent"] = new PdfReal(font.Ascent * 1000);
        descriptor.Elements["/Descent"] = new PdfReal(-font.Descent * 1000);
        descriptor.Elements["/CapHeight"] = new PdfReal(font.CapHeight * 1000);
        descriptor.Elements["/StemV"] = new PdfInteger(font.Name.Contains("Bold", StringComparison.Ordinal) ? 140 : 80);
        descriptor.Elements["/FontFile2"] = file.Reference;
        var descendant = Indirect(document);
        descendant.Elements["/Type"] = new PdfName("/Font");
        descendant.Elements["/Subtype"] = new PdfName("/CIDFontType2");
        descendant.Elements["/BaseFont"] = new PdfName(name);
        var system = new PdfDictionary(document);
        system.Elements["/Registry"] = new PdfString("Adobe");
        system.Elements["/Ordering"] = new PdfString("Identity");
        system.Elements["/Supplement"] = new PdfInteger(0);
        descendant.Elements["/CIDSystemInfo"] = system;
        descendant.Elements["/FontDescriptor"] = descriptor.Reference;
        descendant.Elements["/CIDToGIDMap"] = new PdfName("/Identity");
        descendant.Elements["/DW"] = new PdfInteger(0);
        var widths = new PdfArray(document);
        foreach (var glyph in glyphs.Keys)
        {
            widths.Elements.Add(new PdfInteger(glyph));
            widths.Elements.Add(Numbers(document, [font.Advance(glyph) * 1000]));
        }

        descendant.Elements["/W"] = widths;
        var toUnicode = Indirect(document);
        PdfStreams.Fill(toUnicode, Encoding.ASCII.GetBytes(UnicodeMap(glyphs)));
        target.Elements["/Type"] = new PdfName("/Font");
        target.Elements["/Subtype"] = new PdfName("/Type0");
        target.Elements["/BaseFont"] = new PdfName(name);
        target.Elements["/Encoding"] = new PdfName("/Identity-H");
        var descendants = new PdfArray(document);
        descendants.Elements.Add(descendant.Reference ?? throw new InvalidOperationException("A font without a number."));
        target.Elements["/DescendantFonts"] = descendants;
        target.Elements["/ToUnicode"] = toUnicode.Reference;
    }

    /// <summary>Six letters made from the glyphs, so that the same document always gets the same name.</summary>
    private static string Tag(IEnumerable<ushort> glyphs)
    {
        var hash = SHA256.HashData(Encoding.ASCII.GetBytes(string.Join(',', glyphs)));
        return new string([.. hash.Take(6).Select(b => (char)('A' + b % 26))]);
    }

    private static PdfDictionary Indirect(PdfDocument document)
    {
        var dictionary = new PdfDictionary(document);
        document.Internals.AddObject(dictionary);
        return dictionary;
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
