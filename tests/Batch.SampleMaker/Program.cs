using System.Globalization;
using Batch.SampleMaker;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.House;
using Batch.SampleMaker.Week;

switch (args)
{
    case ["big", "--legs", var legs, "--seed", var seed, var folder]:
        {
            var week = RandomWeek.Of(int.Parse(legs, CultureInfo.InvariantCulture), int.Parse(seed, CultureInfo.InvariantCulture));
            Write(folder, Sample.OperatorBook(week.Fleet, week.Pilots, new LocalDate(2026, 11, 16)),
                Sample.WeekBook(week.Trips, $"A random week of {legs} legs, seed {seed}."));
            return 0;
        }

    case [var folder] when !folder.StartsWith('-'):
        Write(
            folder,
            Sample.OperatorBook(Airframes.All, Pilots.All, new LocalDate(2025, 12, 22)),
            Sample.WeekBook(Sample.Trips(),
                "Some legs fail on purpose, each for another reason, and one airport is misspelt: expected-failures.csv says which."));
        SampleReadMe.Write(Path.Combine(folder, "README.md"));
        ExpectedFailures.Write(Path.Combine(folder, "expected-failures.csv"));
        return 0;

    default:
        Console.Error.WriteLine("usage: Batch.SampleMaker FOLDER\n       Batch.SampleMaker big --legs N --seed S FOLDER");
        return 2;
}

static void Write(string folder, params Book[] books)
{
    Directory.CreateDirectory(folder);
    foreach (var book in books)
    {
        WorkbookWriter.Write(book, Path.Combine(folder, book.Name + ".xlsx"));
        CsvFolderWriter.Write(book, Path.Combine(folder, "csv", book.Name));
    }
}
