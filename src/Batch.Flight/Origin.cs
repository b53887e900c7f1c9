namespace Batch.Flight;

/// <summary>Where a row came from: enough to name the cell of any of its fields in a complaint or a finding.</summary>
public sealed class Origin
{
    private readonly ImmutableDictionary<string, string> _columns;

    /// <summary>Makes the place of one row.</summary>
    /// <param name="sheet">Book and sheet, such as <c>week.xlsx/Legs</c>.</param>
    /// <param name="row">Row number as the spreadsheet shows it, 1 or more.</param>
    /// <param name="columns">Column letters by field name (the property name, such as <c>FuelAboard</c>).</param>
    public Origin(string sheet, int row, ImmutableDictionary<string, string> columns)
    {
        Sheet = sheet;
        Row = row;
        _columns = columns;
    }

    /// <summary>A row that no book holds: made by a test or by the program itself.</summary>
    public static Origin None { get; } = new("", 0, ImmutableDictionary<string, string>.Empty);

    /// <summary>Book and sheet, such as <c>week.xlsx/Legs</c>; empty for <see cref="None"/>.</summary>
    public string Sheet { get; }

    /// <summary>Row number as the spreadsheet shows it; 0 for <see cref="None"/>.</summary>
    public int Row { get; }

    /// <summary>The cell of a field, such as <c>week.xlsx/Legs/F7</c>; the row where the field has no column; empty for <see cref="None"/>.</summary>
    /// <param name="field">Property name of the field.</param>
    public string Cell(string field) =>
        Row == 0 ? "" : $"{Sheet}/{_columns.GetValueOrDefault(field, "")}{Row.ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    /// <summary>Whether the sheet has a column for a field, so that its cell can be named and written.</summary>
    /// <param name="field">Property name of the field.</param>
    public bool HasColumn(string field) => Row > 0 && _columns.ContainsKey(field);

    /// <summary>The row, such as <c>week.xlsx/Legs/7</c>.</summary>
    public override string ToString() => Cell("");
}
