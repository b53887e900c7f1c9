using Batch.Paper.Boxes;
using Batch.Paper.Fonts;

namespace Batch.Paper.Lines;

/// <summary>Glyphs of one face and style on a line. Places are relative to the line's top left, px; advances include kerning and spacing.</summary>
internal sealed record TextPiece(Box Box, TrueTypeFont Font, double X, double Baseline, double Size, ImmutableArray<ushort> Glyphs, ImmutableArray<double> Advances, ImmutableArray<string> Texts)
{
    public string Text => string.Concat(Texts);

    public double Width => Advances.Sum();
}
