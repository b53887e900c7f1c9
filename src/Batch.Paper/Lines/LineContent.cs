namespace Batch.Paper.Lines;

/// <summary>What stands on a line: decorations of inline boxes first, then text; atomic inlines are the line fragment's children.</summary>
internal sealed record LineContent(ImmutableArray<InlineSpan> Spans, ImmutableArray<TextPiece> Pieces, double Baseline);
