using Batch.Books.Tests.Support;

namespace Batch.Books.Tests;

public sealed class CatalogueTests
{
    [Fact]
    public void Every_sheet_and_column_of_the_good_books_is_in_the_catalogue_and_offered_as_there()
    {
        var own = new HashSet<string>(["Hangar", "VR [kt]", "VREF [kt]", "From", "To", "Received"], StringComparer.Ordinal);
        foreach (var (name, rows) in GoodBooks.Operator().Sheets.Concat(GoodBooks.Week().Sheets))
        {
            var sheet = ColumnCatalogue.Find(name);
            Assert.NotNull(sheet);
            Assert.All(rows[0].OfType<string>().Where(header => !own.Contains(header)),
                header => Assert.Contains(header, sheet.Columns.Select(column => column.Header)));
        }
    }

    [Fact]
    public void Every_column_says_what_it_means_and_no_name_stands_twice_in_a_sheet()
    {
        Assert.Equal(28, ColumnCatalogue.Sheets.Length);
        foreach (var sheet in ColumnCatalogue.Sheets)
        {
            Assert.All(sheet.Columns.Concat(sheet.Items), column => Assert.EndsWith(".", column.Meaning, StringComparison.Ordinal));
            var names = sheet.Columns.SelectMany(column => column.Aliases.Prepend(column.Name).Select(Books.Headers.HeaderText.Plain).Distinct()).ToArray();
            Assert.Equal(names.Distinct(StringComparer.Ordinal), names);
            var fields = sheet.Columns.Select(column => column.Field).ToArray();
            Assert.Equal(fields.Distinct(StringComparer.Ordinal), fields);
        }
    }

    [Fact]
    public void Starred_columns_are_those_decided()
    {
        Assert.Equal(["Trip", "Leg", "Date", "Off blocks", "Aircraft", "From", "To", "Captain"], Required("Legs"));
        Assert.Equal(["Trip", "Name"], Required("Manifest"));
        Assert.Equal(["Ident", "Latitude", "Longitude", "Elevation", "Time zone"], Required("Airports"));
        Assert.Equal(["Altitude", "Direction", "Speed"], Required("Winds"));
    }

    private static IEnumerable<string> Required(string sheet) =>
        ColumnCatalogue.Find(sheet)?.Columns.Where(column => column.IsRequired).Select(column => column.Name) ?? [];
}
