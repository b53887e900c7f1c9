using Batch.Paper.Fonts;

namespace Batch.Paper.Paint;

/// <summary>A shaped text parted by face, with the place of each part, px.</summary>
internal sealed record TextRuns(TrueTypeFont Font, double X, ImmutableArray<ushort> Glyphs, ImmutableArray<double> Advances, ImmutableArray<string> Texts)
{
    public DisplayItem.Text Painted(Matrix place, double size, Style.Colour colour) => new(place, Font, size, colour, Glyphs, Advances, Texts);

    public static List<TextRuns> Of(IEnumerable<ShapedGlyph> shaped, double size, double spacing = 0)
    {
        var visible = shaped.Where(g => !g.Invisible).ToList();
        var (runs, x) = (new List<TextRuns>(), 0.0);
        for (var start = 0; start < visible.Count;)
        {
            var font = visible[start].Font;
            var end = visible.FindIndex(start, g => g.Font != font);
            var run = visible[start..(end < 0 ? visible.Count : end)];
            runs.Add(new TextRuns(font, x, [.. run.Select(g => g.Glyph)], [.. run.Select(g => g.AdvanceEm * size + spacing)], [.. run.Select(g => g.Text)]));
            x += runs[^1].Advances.Sum();
            start += run.Count;
        }

        return runs;
    }
}
