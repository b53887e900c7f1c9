namespace Batch.Books;

/// <summary>A sheet that is understood.</summary>
public sealed record CatalogueSheet
{
    /// <summary>Name of the sheet.</summary>
    public required string Name { get; init; }

    /// <summary>The book it usually stands in: <c>week</c> or <c>operator</c>.</summary>
    public required string Book { get; init; }

    /// <summary>What it is for, one sentence.</summary>
    public required string Meaning { get; init; }

    /// <summary>Whether every further column is a named speed.</summary>
    public bool TakesAnySpeed { get; init; }

    /// <summary>Its columns in the order in which they are offered.</summary>
    public required ImmutableArray<CatalogueColumn> Columns { get; init; }

    /// <summary>Its items where each row is one (the Operator sheet); else empty.</summary>
    public ImmutableArray<CatalogueColumn> Items { get; init; } = [];
}
