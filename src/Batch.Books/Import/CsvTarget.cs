using Batch.Books.Csv;
using Batch.Books.Editing;

namespace Batch.Books.Import;

/// <summary>A csv file that takes imported rows.</summary>
/// <param name="edit">The changes to it.</param>
/// <param name="decimalComma">Whether its numbers are written with a decimal comma.</param>
internal sealed class CsvTarget(CsvEdit edit, bool decimalComma) : RowTarget
{
    /// <summary>The changes.</summary>
    public CsvEdit Edit => edit;

    /// <inheritdoc/>
    public override bool HasFormula(int row, int column) => false;

    /// <inheritdoc/>
    public override void Put(int row, int column, CellValue value) => edit.Put(row, column, value.Plain(decimalComma));
}
