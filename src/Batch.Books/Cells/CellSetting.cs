using Batch.Books.Units;

namespace Batch.Books.Cells;

/// <summary>What holds for a column of one sheet beyond the cell itself.</summary>
/// <param name="Unit">Unit of a number that carries none: of the header, else the book's default, else the column's own.</param>
/// <param name="DecimalComma">Whether a comma is the decimal sign.</param>
internal readonly record struct CellSetting(UnitWord? Unit, bool DecimalComma);
