using Batch.Books.Headers;

namespace Batch.Books.Import;

/// <summary>One value from a list.</summary>
/// <param name="Column">The column it is for.</param>
/// <param name="Text">The value as text.</param>
/// <param name="Number">The value where it is a number, in the unit the column is kept in.</param>
internal sealed record ImportValue(Column Column, string Text, double? Number = null);
