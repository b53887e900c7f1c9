namespace Batch.Books.Cells;

/// <summary>One sheet of a book as it came from the file.</summary>
internal sealed record RawSheet
{
    /// <summary>Place of the sheet.</summary>
    public required CellRef Place { get; init; }

    /// <summary>Sheet name as written.</summary>
    public required string Name { get; init; }

    /// <summary>Rows that hold anything, in order.</summary>
    public required IReadOnlyList<RawRow> Rows { get; init; }

    /// <summary>Merged cells, in the order of the file.</summary>
    public ImmutableArray<MergedArea> Merged { get; init; } = [];

    /// <summary>Those of them whose value was put into each of their rows.</summary>
    public ImmutableArray<MergedArea> Spread { get; init; } = [];

    /// <summary>Whether the sheet itself is hidden.</summary>
    public bool Hidden { get; init; }

    /// <summary>Whether a comma is the decimal sign of numbers written as text.</summary>
    public bool DecimalComma { get; init; }

    /// <summary>What is worth saying about how the file was read, such as a character that was replaced.</summary>
    public ImmutableArray<(CellRef At, State State, string Text)> Remarks { get; init; } = [];
}
