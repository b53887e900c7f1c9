using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Sheets;
using Batch.Books.Units;

namespace Batch.Books;

/// <summary>All sheets and columns that are understood, from the declarations by which they are read.</summary>
public static class ColumnCatalogue
{
    /// <summary>The sheets, those of the week book first, in the order in which they are offered.</summary>
    public static ImmutableArray<CatalogueSheet> Sheets { get; } = [.. AllSheets.Plans.Select(Sheet)];

    /// <summary>The sheet of a name; null where none is known.</summary>
    /// <param name="name">Name, case ignored.</param>
    public static CatalogueSheet? Find(string name) => Sheets.FirstOrDefault(sheet => string.Equals(sheet.Name, name, StringComparison.OrdinalIgnoreCase));

    private static CatalogueSheet Sheet(SheetPlan plan) => new()
    {
        Name = plan.Name,
        Book = plan.Book,
        Meaning = plan.Meaning,
        TakesAnySpeed = plan.IsOpen,
        Columns = [.. plan.Columns.Select(Column)],
        Items = [.. plan.Items.Select(Column)],
    };

    private static CatalogueColumn Column(Column column) => new()
    {
        Name = column.Name,
        Field = column.Field,
        Meaning = column.Meaning,
        IsRequired = column.IsRequired,
        Unit = column.IsBare || column.Quantity is null || column.Quantity == Quantity.Clock ? "" : column.Quantity.Unit,
        UnitsKnown = column.Quantity?.KnownUnits ?? "",
        Words = column.Words,
        Aliases = column.Aliases,
        Kind = Kind(column),
    };

    private static ColumnKind Kind(Column column)
    {
        var read = column.ValueType;
        return read == typeof(int) ? ColumnKind.Whole
            : read == typeof(double) || read == typeof(FuelAmount) ? ColumnKind.Number
            : read == typeof(LocalDate) ? ColumnKind.Date
            : column.Quantity == Quantity.UtcClock ? ColumnKind.UtcDateTime
            : read == typeof(LocalTime) || read == typeof(WrittenTime) ? ColumnKind.Time
            : column.IsBare ? ColumnKind.Mixed
            : ColumnKind.Text;
    }
}
