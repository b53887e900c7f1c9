using Batch.Paper.Boxes;

namespace Batch.Paper.Lines;

/// <summary>The part of an inline box on one line: its border box relative to the line, and whether it begins and ends here.</summary>
internal sealed record InlineSpan(Box Box, double X, double Y, double Width, double Height, bool Begins, bool Ends);
