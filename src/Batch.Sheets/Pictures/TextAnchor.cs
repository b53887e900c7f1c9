namespace Batch.Sheets.Pictures;

/// <summary>Which part of a text stands at its point.</summary>
internal enum TextAnchor
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
