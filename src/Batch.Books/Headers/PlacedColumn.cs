using Batch.Books.Cells;

namespace Batch.Books.Headers;

/// <summary>Where a declared column stands in one sheet.</summary>
/// <param name="Column">Column number, A = 1.</param>
/// <param name="Setting">What holds for its cells.</param>
/// <param name="Blocked">The complaint about its header that makes every cell of it unreadable; null for none.</param>
internal readonly record struct PlacedColumn(int Column, CellSetting Setting, Problem? Blocked);
