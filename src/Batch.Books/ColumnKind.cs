namespace Batch.Books;

/// <summary>What the cells of a column hold, for those who format or offer it.</summary>
public enum ColumnKind
{
    /// <summary>Text, idents, words.</summary>
    Text,

    /// <summary>Words or numbers, such as <c>auto</c> or <c>FL160</c> or <c>9000</c>.</summary>
    Mixed,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A date.</summary>
    Date,

    /// <summary>A time of day.</summary>
    Time,

    /// <summary>A date and a time in UTC.</summary>
    UtcDateTime,
}
