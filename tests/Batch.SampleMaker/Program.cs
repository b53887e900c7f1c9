using Batch.SampleMaker;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.Week;

if (args.Length != 1)
{
    Console.Error.WriteLine("usage: Batch.SampleMaker FOLDER");
    return 2;
}

var folder = args[0];
Directory.CreateDirectory(folder);
foreach (var book in new[] { Sample.OperatorBook(), Sample.WeekBook(Sample.Trips()) })
{
    WorkbookWriter.Write(book, Path.Combine(folder, book.Name + ".xlsx"));
    CsvFolderWriter.Write(book, Path.Combine(folder, "csv", book.Name));
}

SampleReadMe.Write(Path.Combine(folder, "README.md"));
ExpectedFailures.Write(Path.Combine(folder, "expected-failures.csv"));
return 0;
