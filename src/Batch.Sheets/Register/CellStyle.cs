namespace Batch.Sheets.Register;

/// <summary>How a cell of the register looks; the number is its place in the style table of <see cref="WorkbookParts"/>.</summary>
internal enum CellStyle
{
    /// <summary>Text, top of the cell.</summary>
    Text,

    /// <summary>Header of a column.</summary>
    Header,

    /// <summary>Text that may run over several lines.</summary>
    Wrapped,

    /// <summary>A number with up to two decimals, thousands separated.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A number with one decimal.</summary>
    Tenths,

    /// <summary>A date.</summary>
    Date,

    /// <summary>A date with the time of day.</summary>
    DateTime,

    /// <summary>The word of a failure.</summary>
    Fail,

    /// <summary>The word of a caution.</summary>
    Caution,

    /// <summary>The word of what could not be checked.</summary>
    Open,

    /// <summary>A text that leads to another place of the workbook.</summary>
    Link,

    /// <summary>Text of a row that sums up.</summary>
    Strong,

    /// <summary>A number with one decimal in a row that sums up.</summary>
    StrongTenths,
}
