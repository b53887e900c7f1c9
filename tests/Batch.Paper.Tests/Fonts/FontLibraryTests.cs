using System.Buffers.Binary;
using Batch.Paper.Fonts;

namespace Batch.Paper.Tests.Fonts;

public sealed class FontLibraryTests
{
    private static readonly FontLibrary Library = new();

    [Fact]
    public void Figures_are_all_of_one_width_in_every_face()
    {
        foreach (var (weight, italic) in new[] { (400, false), (400, true), (600, false), (700, false), (700, true) })
        {
            var face = Library.Face(weight, italic);
            Assert.Single("0123456789".Select(c => face.Advance(face.Glyph(c))).Distinct());
        }
    }

    [Fact]
    public void Pairs_are_kerned() => Assert.True(Width("AV") < Width("A") + Width("V") - 0.01);

    [Fact]
    public void Symbols_come_from_the_second_face_and_letters_from_the_first()
    {
        var faces = Library.Shape("a\u25B2\u017E\u03A9\u041A", 400, italic: false).Select(g => g.Font.Name);
        Assert.Equal(["IBMPlexSans-Regular", "DejaVuSans", "IBMPlexSans-Regular", "IBMPlexSans-Regular", "IBMPlexSans-Regular"], faces);
    }

    [Theory]
    [InlineData("\u0645")]
    [InlineData("\u05D0")]
    [InlineData("\uD83D\uDE80")]
    public void Letters_that_cannot_be_set_are_boxes_and_known_as_missing(string text)
    {
        var glyph = Assert.Single(Library.Shape(text, 400, italic: false));
        Assert.True(glyph.Missing);
        Assert.True(glyph.AdvanceEm > 0);
    }

    [Theory]
    [InlineData(300, "IBMPlexSans-Regular")]
    [InlineData(500, "IBMPlexSans-Regular")]
    [InlineData(600, "IBMPlexSans-SemiBold")]
    [InlineData(900, "IBMPlexSans-Bold")]
    public void The_nearest_weight_is_taken(int weight, string name) => Assert.Equal(name, Library.Face(weight, italic: false).Name);

    [Fact]
    public void A_subset_holds_the_glyphs_asked_for_and_is_small()
    {
        var face = Library.Face(400, italic: false);
        ushort[] used = [face.Glyph('A'), face.Glyph('\u00C9'), face.Glyph('\u042F')];
        var subset = FontSubset.Of(face, used);
        Assert.True(subset.Length < face.Data.Length / 4);
        var (loca, glyf) = (Table(subset, "loca"), Table(subset, "glyf"));
        foreach (var glyph in used) Assert.True(Offset(glyph + 1) > Offset(glyph), "glyph " + glyph + " is empty");
        Assert.Equal(Offset(face.Glyph('B') + 1), Offset(face.Glyph('B')));
        var count = loca.Length / 4 - 1;
        Assert.InRange(count, used.Max() + 1, face.GlyphCount);
        Assert.Equal(glyf.Length, (int)Offset(count));
        Assert.Equal(4 * count, Table(subset, "hmtx").Length);

        uint Offset(int glyph) => BinaryPrimitives.ReadUInt32BigEndian(loca.AsSpan(4 * glyph));
    }

    private static double Width(string text) => Library.Shape(text, 400, italic: false).Sum(g => g.AdvanceEm);

    private static byte[] Table(byte[] font, string tag)
    {
        for (var i = 0; i < BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(4)); i++)
        {
            var entry = font.AsSpan(12 + 16 * i);
            if (System.Text.Encoding.ASCII.GetString(entry[..4]) == tag)
                return font.AsSpan((int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]), (int)BinaryPrimitives.ReadUInt32BigEndian(entry[12..])).ToArray();
        }

        return [];
    }
}
