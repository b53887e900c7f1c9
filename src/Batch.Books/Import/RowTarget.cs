using Batch.Books.Editing;

namespace Batch.Books.Import;

/// <summary>A sheet that takes imported rows: of a workbook or of a csv file.</summary>
internal abstract class RowTarget
{
    /// <summary>Whether a cell holds a formula, which is left alone.</summary>
    /// <param name="row">Row, 1 or more.</param>
    /// <param name="column">Column, A = 1.</param>
    public abstract bool HasFormula(int row, int column);

    /// <summary>Writes a cell.</summary>
    /// <param name="row">Row, 1 or more; the one below the last adds a row.</param>
    /// <param name="column">Column, A = 1.</param>
    /// <param name="value">What it holds.</param>
    public abstract void Put(int row, int column, CellValue value);
}
