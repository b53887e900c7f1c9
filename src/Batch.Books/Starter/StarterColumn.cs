using System.Globalization;

namespace Batch.Books.Starter;

/// <summary>A column of a starter sheet: its header, its explanation, its example cells, how it looks.</summary>
internal sealed record StarterColumn
{
    private const double Narrowest = 9;
    private const double Widest = 42;

    /// <summary>Header with unit.</summary>
    public required string Header { get; init; }

    /// <summary>Name without unit.</summary>
    public required string Name { get; init; }

    /// <summary>What the comment on the header says.</summary>
    public required string Explanation { get; init; }

    /// <summary>What its cells hold.</summary>
    public required ColumnKind Kind { get; init; }

    /// <summary>Whether every row needs it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>The words a drop-down offers; empty for none.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>Example cells as text.</summary>
    public ImmutableArray<string> Cells { get; init; } = [];

    /// <summary>Width in characters, from the letters it has to show.</summary>
    public double Width
    {
        get
        {
            var cell = Cells.Select(text => text.Length).DefaultIfEmpty(0).Max();
            var word = Header.Split(' ').Max(part => part.Length);
            return Math.Clamp(Math.Max(cell, Math.Max(word, Header.Length * 0.6)) + 2.5,
                Kind == ColumnKind.UtcDateTime ? 17 : Kind == ColumnKind.Date ? 12 : Narrowest, Widest);
        }
    }

    /// <summary>Number format.</summary>
    public string Format => Kind switch
    {
        ColumnKind.Text => "@",
        ColumnKind.Mixed => "General",
        ColumnKind.Whole => "0",
        ColumnKind.Number => NumberFormat(),
        ColumnKind.Date => "yyyy-mm-dd",
        ColumnKind.Time => "hh:mm",
        ColumnKind.UtcDateTime => "yyyy-mm-dd hh:mm",
    };

    /// <summary>A column of the catalogue.</summary>
    /// <param name="column">The column.</param>
    /// <param name="cells">Its example cells.</param>
    public static StarterColumn Of(CatalogueColumn column, ImmutableArray<string> cells) => new()
    {
        Header = column.Header,
        Name = column.Name,
        Explanation = Explain(column),
        Kind = column.Kind,
        IsRequired = column.IsRequired,
        Words = column.Words,
        Cells = cells,
    };

    /// <summary>A named speed.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="cells">Its example cells.</param>
    public static StarterColumn Speed(string name, ImmutableArray<string> cells) => new()
    {
        Header = name + " [kt]",
        Name = name,
        Explanation = "A named speed; any further column of this sheet is one and is printed under its name.",
        Kind = ColumnKind.Number,
        Cells = cells,
    };

    /// <summary>What a column or an item means, for a comment.</summary>
    /// <param name="column">The column.</param>
    public static string Explain(CatalogueColumn column)
    {
        var text = column.Meaning + (column.IsRequired ? "\nNeeded in every row." : "");
        if (column.Unit.Length > 0 && column.UnitsKnown.Length > 0) text += $"\nUnits: {column.UnitsKnown}. The header's unit holds; a cell may carry its own.";
        if (column.Words.Length > 0) text += "\nOne of: " + string.Join(", ", column.Words) + ".";
        return text;
    }

    private string NumberFormat()
    {
        if (Header is "Latitude" or "Longitude" or "South" or "West") return "0.0000";
        var decimals = Cells.Select(text => text.IndexOf('.', StringComparison.Ordinal) is var point and >= 0 ? text.Length - point - 1 : 0).DefaultIfEmpty(0)
            .Max();
        return Cells.IsEmpty || Array.TrueForAll([.. Cells], text => text.Length == 0)
            ? "General"
            : decimals == 0 ? "#,##0" : "#,##0." + new string('0', decimals).ToString(CultureInfo.InvariantCulture);
    }
}
