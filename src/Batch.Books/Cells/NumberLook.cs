namespace Batch.Books.Cells;

/// <summary>How a workbook shows a number, as far as its meaning depends on it.</summary>
[Flags]
internal enum NumberLook
{
    /// <summary>As a number.</summary>
    Plain = 0,

    /// <summary>As a date.</summary>
    Date = 1,

    /// <summary>As a time of day or an elapsed time.</summary>
    Clock = 2,

    /// <summary>As a percentage.</summary>
    Percent = 4,
}
