namespace Batch.Books.Cells;

/// <summary>What a cell holds as it came from the file.</summary>
internal enum CellKind
{
    /// <summary>Nothing, or blanks only.</summary>
    Blank,

    /// <summary>Text.</summary>
    Text,

    /// <summary>A number, dates and times of a workbook included.</summary>
    Number,

    /// <summary>A truth value of a workbook.</summary>
    Boolean,

    /// <summary>An error value such as <c>#N/A</c>, or a formula without a stored value.</summary>
    Error,
}
