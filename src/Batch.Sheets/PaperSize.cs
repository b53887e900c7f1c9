namespace Batch.Sheets;

/// <summary>The paper that sheets are laid out for.</summary>
public enum PaperSize
{
    /// <summary>ISO A4, 210 by 297 mm.</summary>
    A4,

    /// <summary>US Letter, 8.5 by 11 in.</summary>
    Letter,
}
