namespace Batch.Paper.Fonts;

/// <summary>One glyph of a shaped text: advance in em with kerning to the next, source text, and its place in the source string.</summary>
internal readonly record struct ShapedGlyph(TrueTypeFont Font, ushort Glyph, double AdvanceEm, string Text, int Index, bool Invisible, bool Missing);
