using Batch.Paper.Fonts;

namespace Batch.Paper.Paint;

/// <summary>A shaped text parted by face, with the place of each part, px.</summary>
internal sealed record TextRuns(TrueTypeFont Font, double X, ImmutableArray<ushort> Glyphs, ImmutableArray<double> Advances, ImmutableArray<string> Texts)
{
    public static List<TextRuns> Of(IEnumerable<ShapedGlyph> shaped, double size, double spacing = 0)
    {
        var runs = new List<TextRuns>();
        var x = 0.0;
        foreach (var glyph in shaped.Where(g => !g.Invisible))
        {
            var advance = glyph.AdvanceEm * size + spacing;
            if (runs.Count == 0 || runs[^1].Font != glyph.Font) runs.Add(new TextRuns(glyph.Font, x, [], [], []));
            var last = runs[^1];
            runs[^1] = last with { Glyphs = last.Glyphs.Add(glyph.Glyph), Advances = last.Advances.Add(advance), Texts = last.Texts.Add(glyph.Text) };
            x += advance;
        }

        return runs;
    }
}
