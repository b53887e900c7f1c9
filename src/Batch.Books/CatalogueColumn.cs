namespace Batch.Books;

/// <summary>A column, or an item of the Operator sheet, that is understood.</summary>
public sealed record CatalogueColumn
{
    /// <summary>Name as written in headers.</summary>
    public required string Name { get; init; }

    /// <summary>Property name by which the origin of a row knows it.</summary>
    public required string Field { get; init; }

    /// <summary>What it means, one sentence.</summary>
    public required string Meaning { get; init; }

    /// <summary>Whether every row needs it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>What its cells hold.</summary>
    public ColumnKind Kind { get; init; }

    /// <summary>Unit offered in the header; empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Unit words understood, with commas; empty for none.</summary>
    public string UnitsKnown { get; init; } = "";

    /// <summary>The words a cell may hold where it is limited to a list; else empty.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>Other names understood in headers.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>The header as offered, such as <c>Weight [lb]</c>.</summary>
    public string Header => Unit.Length > 0 ? $"{Name} [{Unit}]" : Name;
}
