namespace Batch.Paper.Lines;

internal enum InlineKind { Glyph, Open, Close, Atom, LineBreak }
