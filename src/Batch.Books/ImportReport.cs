namespace Batch.Books;

/// <summary>What an import did.</summary>
public sealed record ImportReport
{
    /// <summary>What came into each sheet.</summary>
    public required ImmutableArray<ImportedSheet> Sheets { get; init; }

    /// <summary>Rows of the lists that were left out, with file and line.</summary>
    public required ImmutableArray<string> LeftOut { get; init; }

    /// <summary>What the user should know or do.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>The book that was written; empty where nothing was.</summary>
    public string Written { get; init; } = "";

    /// <summary>The copy of the book as it was; empty where nothing was written.</summary>
    public string Backup { get; init; } = "";
}
