using Batch.Books.Tests.Support;
using Batch.Testing;
using NodaTime.Text;

namespace Batch.Books.Tests.Links;

public sealed class LocalTimeTests
{
    private static readonly CheckFile Published = CheckFile.Read("local-times.csv");

    [Fact]
    public void Local_times_become_the_instants_published_and_doubtful_ones_name_both()
    {
        var rows = Published.Rows;
        var operatorBook = GoodBooks.Operator();
        var book = GoodBooks.Week();
        book["Legs"].RemoveRange(2, 2);
        book["Manifest"].RemoveRange(1, 3);
        book["Cargo"].RemoveAt(1);
        book.Set("Legs", 1, "Departure runway", null);
        for (var i = 0; i < rows.Count; i++)
        {
            var ident = "XZ" + (char)('A' + (i / 26)) + (char)('A' + (i % 26));
            operatorBook.Add("Airports", ident, "Zone", 10 + i, 20, 100, rows[i]["tz"]);
            book.Add("Legs", "Z" + ident, 1, rows[i]["local"][..10], rows[i]["local"][11..16], "X-SKUA", ident, "XBEL", null, null, null, null, null, null,
                null, null, "MOR");
        }

        using var folder = new TempFolder();
        var week = BookReader.Read([operatorBook.SaveXlsx(folder.File("operator.xlsx")), book.SaveXlsx(folder.File("week.xlsx"))]);
        Assert.Equal(rows.Count + 1, week.Legs.Length);
        foreach (var (row, leg) in rows.Zip(week.Legs.Skip(1)))
        {
            Assert.Equal(row["first"], InstantPattern.General.Format(leg.OffBlocks));
            var caution = Array.Find([.. week.Problems], problem => problem.Cell == leg.Origin.Cell(nameof(leg.OffBlocks)));
            if (row["kind"] == "unique")
            {
                Assert.Null(caution);
                continue;
            }

            Assert.True(caution is { State: State.Caution }, $"{row} at {leg.Origin.Cell(nameof(leg.OffBlocks))}");
            Assert.Contains(row["first"].Replace(":00Z", "Z", StringComparison.Ordinal), caution?.Text, StringComparison.Ordinal);
            Assert.Contains(row["second"].Replace(":00Z", "Z", StringComparison.Ordinal), caution?.Text, StringComparison.Ordinal);
        }
    }
}
