using System.Buffers.Binary;

namespace Batch.Paper.Fonts;

/// <summary>Cuts a face down to the glyphs used. Glyph numbers stay, so the page text needs no second mapping; unused outlines become empty.</summary>
internal static class FontSubset
{
    private static readonly string[] Kept = ["cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "prep"];

    public static byte[] Of(TrueTypeFont font, IEnumerable<ushort> used)
    {
        var glyphs = new SortedSet<int> { 0 };
        foreach (var glyph in used) AddWithParts(font, glyph, glyphs);
        var (glyf, loca) = Outlines(font, glyphs);
        var tables = new List<(string Tag, byte[] Bytes)>();
        foreach (var tag in Kept)
        {
            var (offset, length) = font.Table(tag);
            if (length == 0) continue;
            var bytes = tag switch { "glyf" => glyf, "loca" => loca, _ => font.Data.AsSpan(offset, length).ToArray() };
            if (tag == "head")
            {
                BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(8), 0);
                BinaryPrimitives.WriteInt16BigEndian(bytes.AsSpan(50), 1);
            }

            tables.Add((tag, bytes));
        }

        return Assemble(tables);
    }

    private static (int Start, int End) Place(TrueTypeFont font, int glyph)
    {
        int loca = font.Table("loca").Offset, glyf = font.Table("glyf").Offset;
        return font.LongOffsets
            ? (glyf + (int)font.U32(loca + 4 * glyph), glyf + (int)font.U32(loca + 4 * glyph + 4))
            : (glyf + 2 * font.U16(loca + 2 * glyph), glyf + 2 * font.U16(loca + 2 * glyph + 2));
    }

    private static void AddWithParts(TrueTypeFont font, int glyph, SortedSet<int> glyphs)
    {
        if (!glyphs.Add(glyph)) return;
        var (start, end) = Place(font, glyph);
        if (end <= start || font.S16(start) >= 0) return;
        for (var (at, more) = (start + 10, true); more;)
        {
            var flags = font.U16(at);
            AddWithParts(font, font.U16(at + 2), glyphs);
            at += 4 + ((flags & 1) != 0 ? 4 : 2) + ((flags & 8) != 0 ? 2 : (flags & 0x40) != 0 ? 4 : (flags & 0x80) != 0 ? 8 : 0);
            more = (flags & 0x20) != 0;
        }
    }

    private static (byte[] Glyf, byte[] Loca) Outlines(TrueTypeFont font, SortedSet<int> glyphs)
    {
        using var glyf = new MemoryStream();
        var loca = new byte[4 * (font.GlyphCount + 1)];
        for (var glyph = 0; glyph < font.GlyphCount; glyph++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * glyph), (uint)glyf.Length);
            if (!glyphs.Contains(glyph)) continue;
            var (start, end) = Place(font, glyph);
            glyf.Write(font.Data, start, end - start);
            while (glyf.Length % 4 != 0) glyf.WriteByte(0);
        }

        BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * font.GlyphCount), (uint)glyf.Length);
        return (glyf.ToArray(), loca);
    }

    private static byte[] Assemble(List<(string Tag, byte[] Bytes)> tables)
    {
        var log = (int)Math.Floor(Math.Log2(tables.Count));
        var size = 12 + 16 * tables.Count + tables.Sum(t => (t.Bytes.Length + 3) & ~3);
        var font = new byte[size];
        BinaryPrimitives.WriteUInt32BigEndian(font, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(4), (ushort)tables.Count);
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(6), (ushort)(16 << log));
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(8), (ushort)log);
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(10), (ushort)(16 * tables.Count - (16 << log)));
        var offset = 12 + 16 * tables.Count;
        for (var i = 0; i < tables.Count; i++)
        {
            var (tag, bytes) = tables[i];
            var entry = font.AsSpan(12 + 16 * i);
            System.Text.Encoding.ASCII.GetBytes(tag).CopyTo(entry);
            bytes.CopyTo(font.AsSpan(offset));
            BinaryPrimitives.WriteUInt32BigEndian(entry[4..], Checksum(font.AsSpan(offset, (bytes.Length + 3) & ~3)));
            BinaryPrimitives.WriteUInt32BigEndian(entry[8..], (uint)offset);
            BinaryPrimitives.WriteUInt32BigEndian(entry[12..], (uint)bytes.Length);
            offset += (bytes.Length + 3) & ~3;
        }

        return font;
    }

    private static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        var sum = 0u;
        for (var i = 0; i < bytes.Length; i += 4) sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(bytes[i..]));
        return sum;
    }
}
