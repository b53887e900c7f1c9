using System.Buffers.Binary;
using System.Text;
using static Batch.Paper.Fonts.BigEndian;

namespace Batch.Paper.Fonts;

/// <summary>Cuts a face down to the glyphs used. Glyph numbers stay, so the page text needs no second mapping; unused outlines become empty, glyphs after the last one used and the hinting programs go.</summary>
internal static class FontSubset
{
    private const int InstructionsFlag = 0x100;
    private static readonly string[] Kept = ["glyf", "head", "hhea", "hmtx", "loca", "maxp"];

    public static byte[] Of(TrueTypeFont font, IEnumerable<ushort> used) => Assemble(Tables(font, used));

    /// <summary>The tables of the subset, by name.</summary>
    public static List<(string Tag, byte[] Bytes)> Tables(TrueTypeFont font, IEnumerable<ushort> used)
    {
        var glyphs = new SortedSet<int> { 0 };
        foreach (var glyph in used) AddWithParts(font, glyph, glyphs);
        var count = glyphs.Max + 1;
        var (glyf, loca) = Outlines(font, glyphs, count);
        var tables = new List<(string Tag, byte[] Bytes)>();
        foreach (var tag in Kept)
        {
            var (offset, length) = font.Table(tag);
            var bytes = tag switch { "glyf" => glyf, "loca" => loca, "hmtx" => Metrics(font, glyphs, count), _ => font.Data.AsSpan(offset, length).ToArray() };
            switch (tag)
            {
                case "head":
                    BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(8), 0);
                    BinaryPrimitives.WriteInt16BigEndian(bytes.AsSpan(50), 1);
                    break;
                case "hhea":
                    BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(34), (ushort)count);
                    break;
                case "maxp":
                    BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(4), (ushort)count);
                    break;
            }

            tables.Add((tag, bytes));
        }

        return tables;
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
        foreach (var (at, _) in Parts(font, start)) AddWithParts(font, font.U16(at + 2), glyphs);
    }

    /// <summary>The components of a compound glyph: where the flags of each stand and where it ends.</summary>
    private static IEnumerable<(int At, int End)> Parts(TrueTypeFont font, int start)
    {
        for (var (at, more) = (start + 10, true); more;)
        {
            var flags = font.U16(at);
            var end = at + 4 + ((flags & 1) != 0 ? 4 : 2) + ((flags & 8) != 0 ? 2 : (flags & 0x40) != 0 ? 4 : (flags & 0x80) != 0 ? 8 : 0);
            yield return (at, end);
            (at, more) = (end, (flags & 0x20) != 0);
        }
    }

    private static (byte[] Glyf, byte[] Loca) Outlines(TrueTypeFont font, SortedSet<int> glyphs, int count)
    {
        using var glyf = new MemoryStream();
        var loca = new byte[4 * (count + 1)];
        for (var glyph = 0; glyph < count; glyph++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * glyph), (uint)glyf.Length);
            if (!glyphs.Contains(glyph)) continue;
            var (start, end) = Place(font, glyph);
            if (end > start) glyf.Write(WithoutInstructions(font, start, end));
            while (glyf.Length % 4 != 0) glyf.WriteByte(0);
        }

        BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * count), (uint)glyf.Length);
        return (glyf.ToArray(), loca);
    }

    private static byte[] WithoutInstructions(TrueTypeFont font, int start, int end)
    {
        var contours = font.S16(start);
        if (contours >= 0)
        {
            var at = start + 10 + 2 * contours;
            return [.. font.Data.AsSpan(start, at - start), 0, 0, .. font.Data.AsSpan(at + 2 + font.U16(at), end - at - 2 - font.U16(at))];
        }

        var parts = Parts(font, start).ToList();
        var bytes = font.Data.AsSpan(start, parts[^1].End - start).ToArray();
        foreach (var (at, _) in parts) BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(at - start), (ushort)(font.U16(at) & ~InstructionsFlag));
        return bytes;
    }

    /// <summary>Advance and left bearing of every glyph kept, zero for the others.</summary>
    private static byte[] Metrics(TrueTypeFont font, SortedSet<int> glyphs, int count)
    {
        var (offset, full) = (font.Table("hmtx").Offset, font.U16(font.Table("hhea").Offset + 34));
        var metrics = new byte[4 * count];
        foreach (var glyph in glyphs)
        {
            BinaryPrimitives.WriteUInt16BigEndian(metrics.AsSpan(4 * glyph), (ushort)font.U16(offset + 4 * Math.Min(glyph, full - 1)));
            BinaryPrimitives.WriteUInt16BigEndian(metrics.AsSpan(4 * glyph + 2), (ushort)font.U16(glyph < full ? offset + 4 * glyph + 2 : offset + 4 * full + 2 * (glyph - full)));
        }

        return metrics;
    }

    private static byte[] Assemble(List<(string Tag, byte[] Bytes)> tables)
    {
        var log = (int)Math.Log2(tables.Count);
        var (directory, body) = (new List<byte>(), new List<byte>());
        foreach (var (tag, bytes) in tables)
        {
            var padded = Padded(bytes);
            directory.AddRange([.. Encoding.ASCII.GetBytes(tag), .. U32(Checksum(padded), (uint)(12 + 16 * tables.Count + body.Count), (uint)bytes.Length)]);
            body.AddRange(padded);
        }

        return [.. U32(0x00010000), .. U16(tables.Count, 16 << log, log, 16 * tables.Count - (16 << log)), .. directory, .. body];
    }

    /// <summary>Sum of the 32-bit numbers of a table whose length is a multiple of four.</summary>
    public static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        var sum = 0u;
        for (var i = 0; i < bytes.Length; i += 4) sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(bytes[i..]));
        return sum;
    }
}
