using Batch.Books.Packages;

namespace Batch.Books.Editing;

/// <summary>Where a cell stands in the text of its sheet.</summary>
/// <param name="Column">Column, A = 1.</param>
/// <param name="Tag">Its opening tag.</param>
/// <param name="End">Index after the whole cell.</param>
/// <param name="Style">Its style index.</param>
internal readonly record struct CellPlace(int Column, XmlTag Tag, int End, int Style);
