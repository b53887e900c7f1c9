using System.IO.Compression;
using System.Text;
using static Batch.Paper.Fonts.BigEndian;

namespace Batch.Paper.Fonts;

/// <summary>A subset face in the form that browsers load (W3C WOFF 1.0, over ISO/IEC 14496-22): the subset of the PDF, with the tables that say which character a glyph is, how wide pairs stand, and its name.</summary>
/// <remarks>The name is our own: the licence of the family keeps its name for the unmodified files.</remarks>
internal static class WebFont
{
    /// <summary>The face as the CSS of a sheet names it.</summary>
    public const string Family = "Sheet Sans";

    private const int MostPairs = 10_000; // the table counts its bytes in 16 bits: 6 a pair

    public static byte[] Of(TrueTypeFont font, IReadOnlyDictionary<ushort, string> glyphs)
    {
        var characters = new SortedDictionary<int, ushort>();
        foreach (var (glyph, text) in glyphs)
        {
            if (glyph != 0 && text.Length > 0 && font.Glyph(char.ConvertToUtf32(text, 0)) == glyph) characters[char.ConvertToUtf32(text, 0)] = glyph;
        }

        var tables = FontSubset.Tables(font, glyphs.Keys).Concat([("OS/2", Table(font, "OS/2")), ("cmap", Characters(characters)), ("kern", Pairs(font, [.. characters.Values.Distinct().Order()])), ("name", Names()), ("post", Post(font))]);
        return Woff([.. tables.Where(table => table.Item2.Length > 0).OrderBy(table => table.Item1, StringComparer.Ordinal)]);
    }

    private static byte[] Table(TrueTypeFont font, string tag) => font.Data.AsSpan(font.Table(tag).Offset, font.Table(tag).Length).ToArray();

    /// <summary>Format 12: one group a character.</summary>
    private static byte[] Characters(SortedDictionary<int, ushort> characters) =>
        [.. U16(0, 1, 3, 10), .. U32(12), .. U16(12, 0), .. U32((uint)(16 + 12 * characters.Count), 0, (uint)characters.Count), .. characters.SelectMany(pair => U32((uint)pair.Key, (uint)pair.Key, pair.Value))];

    private static byte[] Pairs(TrueTypeFont font, ushort[] glyphs)
    {
        var pairs = glyphs.SelectMany(left => glyphs.Select(right => (left, right, By: (short)Math.Round(font.Kerning.Between(left, right) * font.UnitsPerEm)))).Where(pair => pair.By != 0).Take(MostPairs).ToArray();
        if (pairs.Length == 0) return [];
        var log = (int)Math.Log2(pairs.Length);
        return [.. U16(0, 1, 0, 14 + 6 * pairs.Length, 1, pairs.Length, 6 << log, log, 6 * pairs.Length - (6 << log)), .. pairs.SelectMany(pair => U16(pair.left, pair.right, pair.By))];
    }

    private static byte[] Names()
    {
        (int Id, byte[] Text)[] names = [(1, Encoding.BigEndianUnicode.GetBytes(Family)), (2, Encoding.BigEndianUnicode.GetBytes("Regular")), (4, Encoding.BigEndianUnicode.GetBytes(Family)), (6, Encoding.BigEndianUnicode.GetBytes(Family.Replace(" ", "", StringComparison.Ordinal)))];
        var at = 0;
        var records = new List<byte>();
        foreach (var (id, text) in names)
        {
            records.AddRange(U16(3, 1, 0x409, id, text.Length, at));
            at += text.Length;
        }

        return [.. U16(0, names.Length, 6 + 12 * names.Length), .. records, .. names.SelectMany(name => name.Text)];
    }

    /// <summary>Format 3: no names of glyphs.</summary>
    private static byte[] Post(TrueTypeFont font) => [.. U32(0x00030000), .. font.Data.AsSpan(font.Table("post").Offset + 4, 28)];

    private static byte[] Woff(ImmutableArray<(string Tag, byte[] Bytes)> tables)
    {
        var packed = tables.Select(table => Packed(table.Bytes)).ToArray();
        var offset = 44 + 20 * tables.Length;
        var directory = new List<byte>();
        var body = new List<byte>();
        for (var i = 0; i < tables.Length; i++)
        {
            directory.AddRange([.. Encoding.ASCII.GetBytes(tables[i].Tag), .. U32((uint)(offset + body.Count), (uint)packed[i].Length, (uint)tables[i].Bytes.Length, FontSubset.Checksum(Padded(tables[i].Bytes)))]);
            body.AddRange(Padded(packed[i]));
        }

        var plain = 12 + 16 * tables.Length + tables.Sum(table => (table.Bytes.Length + 3) & ~3);
        return [.. "wOFF"u8, .. U32(0x00010000, (uint)(offset + body.Count)), .. U16(tables.Length, 0), .. U32((uint)plain), .. U16(1, 0), .. U32(0, 0, 0, 0, 0), .. directory, .. body];
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) zlib.Write(bytes);
        return packed.Length < bytes.Length ? packed.ToArray() : bytes;
    }
}
