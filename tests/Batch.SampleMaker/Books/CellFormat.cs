namespace Batch.SampleMaker.Books;

/// <summary>How the values of a column are shown.</summary>
public enum CellFormat
{
    Text,
    Whole,
    Tenths,
    Hundredths,
    Degrees,
    Date,
    Time,
    UtcDateTime,
}
