namespace Batch.Paper.Fonts;

/// <summary>Pair kerning of the GPOS table (ISO/IEC 14496-22, lookup type 2, formats 1 and 2, first value record's advance only).</summary>
internal sealed class PairKerning
{
    private readonly TrueTypeFont _font;
    private readonly List<List<int>> _lookups = [];
    private readonly Dictionary<int, Dictionary<int, int>> _coverage = [];
    private readonly System.Collections.Concurrent.ConcurrentDictionary<(ushort, ushort), double> _known = new();

    private PairKerning(TrueTypeFont font) => _font = font;

    public static PairKerning Read(TrueTypeFont font)
    {
        var kerning = new PairKerning(font);
        var gpos = font.Table("GPOS").Offset;
        if (gpos == 0) return kerning;
        var features = gpos + font.U16(gpos + 6);
        var lookups = gpos + font.U16(gpos + 8);
        var wanted = new SortedSet<int>();
        for (var i = 0; i < font.U16(features); i++)
        {
            var at = features + 2 + 6 * i;
            if (System.Text.Encoding.ASCII.GetString(font.Data, at, 4) != "kern") continue;
            var feature = features + font.U16(at + 4);
            for (var k = 0; k < font.U16(feature + 2); k++) wanted.Add(font.U16(feature + 4 + 2 * k));
        }

        foreach (var index in wanted) kerning.AddLookup(lookups + font.U16(lookups + 2 + 2 * index));
        return kerning;
    }

    /// <summary>Change of the first glyph's advance, in em, when the second follows it.</summary>
    public double Between(ushort left, ushort right) => _lookups.Count == 0 ? 0 : _known.GetOrAdd((left, right), pair => Look(pair.Item1, pair.Item2));

    private void AddLookup(int lookup)
    {
        var tables = new List<int>();
        for (var i = 0; i < _font.U16(lookup + 4); i++)
        {
            var sub = lookup + _font.U16(lookup + 6 + 2 * i);
            var type = _font.U16(lookup);
            if (type == 9)
            {
                type = _font.U16(sub + 2);
                sub += (int)_font.U32(sub + 4);
            }

            if (type != 2) continue;
            tables.Add(sub);
            _coverage[sub] = ReadCoverage(sub + _font.U16(sub + 2));
        }

        if (tables.Count > 0) _lookups.Add(tables);
    }

    private Dictionary<int, int> ReadCoverage(int at)
    {
        var covered = new Dictionary<int, int>();
        for (var i = 0; i < _font.U16(at + 2); i++)
        {
            if (_font.U16(at) == 1) covered[_font.U16(at + 4 + 2 * i)] = i;
            else
                for (int g = _font.U16(at + 4 + 6 * i), n = _font.U16(at + 8 + 6 * i); g <= _font.U16(at + 6 + 6 * i); g++) covered[g] = n++;
        }

        return covered;
    }

    private double Look(ushort left, ushort right)
    {
        var total = 0;
        foreach (var lookup in _lookups)
        {
            foreach (var sub in lookup)
            {
                if (!_coverage[sub].TryGetValue(left, out var covered)) continue;
                if (Value(sub, covered, left, right) is not { } value) continue;
                total += value;
                break;
            }
        }

        return total / (double)_font.UnitsPerEm;
    }

    private int? Value(int sub, int covered, ushort left, ushort right)
    {
        int first = _font.U16(sub + 4), second = _font.U16(sub + 6);
        var size = 2 * (System.Numerics.BitOperations.PopCount((uint)first) + System.Numerics.BitOperations.PopCount((uint)second));
        var advance = 2 * System.Numerics.BitOperations.PopCount((uint)first & 3);
        if ((first & 4) == 0) return null;
        if (_font.U16(sub) == 1)
        {
            var set = sub + _font.U16(sub + 10 + 2 * covered);
            for (var i = 0; i < _font.U16(set); i++)
            {
                var at = set + 2 + i * (2 + size);
                if (_font.U16(at) == right) return _font.S16(at + 2 + advance);
            }

            return null;
        }

        var record = sub + 16 + (ClassOf(sub + _font.U16(sub + 8), left) * _font.U16(sub + 14) + ClassOf(sub + _font.U16(sub + 10), right)) * size;
        return _font.S16(record + advance);
    }

    private int ClassOf(int at, int glyph)
    {
        if (_font.U16(at) == 1)
        {
            var index = glyph - _font.U16(at + 2);
            return index >= 0 && index < _font.U16(at + 4) ? _font.U16(at + 6 + 2 * index) : 0;
        }

        for (var i = 0; i < _font.U16(at + 2); i++)
        {
            var range = at + 4 + 6 * i;
            if (glyph >= _font.U16(range) && glyph <= _font.U16(range + 2)) return _font.U16(range + 4);
        }

        return 0;
    }
}
