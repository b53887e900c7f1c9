namespace Batch.Sheets.Figures;

/// <summary>Which of a limit, the figure held against it and the margin.</summary>
internal enum HeldPart
{
    /// <summary>The limit.</summary>
    Limit,

    /// <summary>The figure.</summary>
    Actual,

    /// <summary>The margin.</summary>
    Margin,
}
