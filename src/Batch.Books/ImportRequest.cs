namespace Batch.Books;

/// <summary>What is to be taken from a list into a book.</summary>
public sealed record ImportRequest
{
    /// <summary>What the list holds.</summary>
    public required ImportKind Kind { get; init; }

    /// <summary>Path of the list, a csv file.</summary>
    public required string File { get; init; }

    /// <summary>Path of the list of runways; null for none.</summary>
    public string? Runways { get; init; }

    /// <summary>Path of the workbook that receives the rows, or of a folder with it.</summary>
    public required string Book { get; init; }

    /// <summary>Idents, or names of airways, to take; empty for all that <see cref="Within"/> leaves.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>How far from <see cref="Around"/> to take; null for no limit.</summary>
    public NauticalMiles? Within { get; init; }

    /// <summary>Ident of the airport that <see cref="Within"/> is measured from, of the list or of the book.</summary>
    public string Around { get; init; } = "";

    /// <summary>IANA time zone for airports that are added; empty to leave the cell empty.</summary>
    public string TimeZone { get; init; } = "";

    /// <summary>Names of columns in the list by our names, for lists of fixes and airways with headers of their own.</summary>
    public ImmutableDictionary<string, string> Columns { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Whether cells that differ are set to what the list says.</summary>
    public bool Updates { get; init; }

    /// <summary>Whether nothing is written.</summary>
    public bool IsPreview { get; init; }
}
