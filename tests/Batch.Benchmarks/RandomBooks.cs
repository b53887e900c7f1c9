using Batch.Books;
using Batch.SampleMaker;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.Week;

namespace Batch.Benchmarks;

/// <summary>Random weeks, written as books and read again, as an operator's would be.</summary>
internal static class RandomBooks
{
    /// <summary>A random week of some legs; the same seed gives the same week.</summary>
    public static OperatorWeek Week(int legs, int seed)
    {
        var folder = Directory.CreateTempSubdirectory("tripbatch-week-").FullName;
        try
        {
            var random = RandomWeek.Of(legs, seed);
            foreach (var book in new[] { Sample.OperatorBook(random.Fleet, random.Pilots, new LocalDate(2026, 11, 16)),
                Sample.WeekBook(random.Trips, "A random week.") })
                CsvFolderWriter.Write(book, Path.Combine(folder, book.Name));
            return BookReader.Read([Path.Combine(folder, "operator"), Path.Combine(folder, "week")]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
