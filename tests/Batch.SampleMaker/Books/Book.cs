namespace Batch.SampleMaker.Books;

/// <summary>A workbook to be written, once as xlsx and once as a folder of csv files.</summary>
public sealed record Book
{
    public required string Name { get; init; }

    /// <summary>Lines of the Read me sheet.</summary>
    public required ImmutableArray<string> ReadMe { get; init; }

    public required ImmutableArray<SheetTable> Sheets { get; init; }
}
