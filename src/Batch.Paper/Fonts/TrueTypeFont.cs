using System.Buffers.Binary;

namespace Batch.Paper.Fonts;

/// <summary>One TrueType face: the tables the printer needs, read once and never changed (ISO/IEC 14496-22).</summary>
internal sealed class TrueTypeFont
{
    private readonly Dictionary<string, (int Offset, int Length)> _tables = [];
    private readonly ushort[] _advances;
    private readonly Dictionary<int, ushort> _glyphs = [];

    public TrueTypeFont(string name, byte[] data)
    {
        Name = name;
        Data = data;
        for (var i = 0; i < U16(4); i++)
        {
            var entry = 12 + 16 * i;
            _tables[System.Text.Encoding.ASCII.GetString(data, entry, 4)] = ((int)U32(entry + 8), (int)U32(entry + 12));
        }

        var head = Table("head").Offset;
        var hhea = Table("hhea").Offset;
        UnitsPerEm = U16(head + 18);
        LongOffsets = S16(head + 50) == 1;
        Bounds = [.. Enumerable.Range(0, 4).Select(i => S16(head + 36 + 2 * i) * 1000.0 / UnitsPerEm)];
        Ascent = S16(hhea + 4) / (double)UnitsPerEm;
        Descent = -S16(hhea + 6) / (double)UnitsPerEm;
        LineGap = S16(hhea + 8) / (double)UnitsPerEm;
        GlyphCount = U16(Table("maxp").Offset + 4);
        ItalicAngle = S16(Table("post").Offset + 4);
        var long_ = U16(hhea + 34);
        var hmtx = Table("hmtx").Offset;
        _advances = [.. Enumerable.Range(0, GlyphCount).Select(g => (ushort)U16(hmtx + 4 * Math.Min(g, long_ - 1)))];
        var os2 = Table("OS/2");
        CapHeight = os2.Length >= 90 ? S16(os2.Offset + 88) / (double)UnitsPerEm : Ascent;
        XHeight = os2.Length >= 88 ? S16(os2.Offset + 86) / (double)UnitsPerEm : 0.5;
        ReadCharacterMap();
        Kerning = PairKerning.Read(this);
    }

    public string Name { get; }

    public byte[] Data { get; }

    public int UnitsPerEm { get; }

    public int GlyphCount { get; }

    public bool LongOffsets { get; }

    /// <summary>Ascent of the typographic line, in em, positive upwards.</summary>
    public double Ascent { get; }

    /// <summary>Descent of the typographic line, in em, positive downwards.</summary>
    public double Descent { get; }

    public double LineGap { get; }

    public double CapHeight { get; }

    public double XHeight { get; }

    public double ItalicAngle { get; }

    /// <summary>xMin, yMin, xMax, yMax of all glyphs in thousandths of an em.</summary>
    public ImmutableArray<double> Bounds { get; }

    public PairKerning Kerning { get; }

    public (int Offset, int Length) Table(string tag) => _tables.TryGetValue(tag, out var table) ? table : default;

    /// <summary>Glyph of a code point, 0 when the face has none.</summary>
    public ushort Glyph(int codePoint) => _glyphs.GetValueOrDefault(codePoint);

    /// <summary>Advance width in em.</summary>
    public double Advance(int glyph) => _advances[glyph] / (double)UnitsPerEm;

    public int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(Data.AsSpan(at));

    public int S16(int at) => BinaryPrimitives.ReadInt16BigEndian(Data.AsSpan(at));

    public uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(Data.AsSpan(at));

    private void ReadCharacterMap()
    {
        var cmap = Table("cmap").Offset;
        for (var i = 0; i < U16(cmap + 2); i++)
        {
            var sub = cmap + (int)U32(cmap + 8 + 8 * i);
            if (U16(cmap + 4 + 8 * i) != 3) continue;
            if (U16(sub) == 4) ReadSegments(sub);
            if (U16(sub) == 12) ReadGroups(sub);
        }
    }

    private void ReadSegments(int sub)
    {
        var count = U16(sub + 6) / 2;
        for (var s = 0; s < count; s++)
        {
            int end = U16(sub + 14 + 2 * s), start = U16(sub + 16 + 2 * count + 2 * s), delta = U16(sub + 16 + 4 * count + 2 * s);
            var rangeAt = sub + 16 + 6 * count + 2 * s;
            var range = U16(rangeAt);
            for (var c = start; c <= end && c != 0xFFFF; c++)
            {
                var glyph = range == 0 ? c : U16(rangeAt + range + 2 * (c - start));
                if (range == 0 || glyph != 0) glyph = (glyph + delta) & 0xFFFF;
                if (glyph != 0) _glyphs[c] = (ushort)glyph;
            }
        }
    }

    private void ReadGroups(int sub)
    {
        for (var i = 0; i < U32(sub + 12); i++)
        {
            var at = sub + 16 + 12 * i;
            for (var c = U32(at); c <= U32(at + 4); c++) _glyphs[(int)c] = (ushort)(U32(at + 8) + c - U32(at));
        }
    }
}
