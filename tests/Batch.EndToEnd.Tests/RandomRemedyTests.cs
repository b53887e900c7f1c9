using System.Globalization;
using Batch.SampleMaker;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.Week;

namespace Batch.EndToEnd.Tests;

/// <summary>Remedies really work in weeks that nobody looked at: random ones in which some cells are spoilt.</summary>
public sealed class RandomRemedyTests
{
    private const int Legs = 63;
    private const int Spoilt = 7;

    private const int UsualWeeks = 4;

    /// <summary>First row of legs: a title and the headers stand above.</summary>
    private const int FirstRow = 3;

    /// <summary>The weeks: a few, or as many as RANDOM_WEEKS says.</summary>
    public static TheoryData<int> Seeds => [.. Enumerable.Range(
        int.TryParse(Environment.GetEnvironmentVariable("RANDOM_FROM"), NumberStyles.None, CultureInfo.InvariantCulture, out var first) ? first : 1,
        int.TryParse(Environment.GetEnvironmentVariable("RANDOM_WEEKS"), NumberStyles.None, CultureInfo.InvariantCulture, out var weeks) ? weeks : UsualWeeks)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Typing_a_remedy_into_a_random_week_makes_the_check_pass_and_adds_no_failure(int seed)
    {
        using var folder = new TemporaryFolder();
        Write(folder.Path, seed);
        var failing = RemedyTests.Failing(folder.Path).ToArray();
        Assert.NotEmpty(failing);
        // Of many weeks one may hold no failure with a remedy that can be typed; the few that are always run all do.
        if (seed <= UsualWeeks) Assert.Contains(failing, failure => failure.Changes.Length > 0);
        Assert.Empty(RemedyTests.Wrong(folder.Path, failing));
    }

    private static void Write(string folder, int seed)
    {
        var week = RandomWeek.Of(Legs, seed);
        foreach (var book in new[] { Sample.OperatorBook(week.Fleet, week.Pilots, new LocalDate(2026, 11, 16)), Sample.WeekBook(week.Trips, "") })
            CsvFolderWriter.Write(book, Path.Combine(folder, book.Name));
        var random = new Random(seed);
        CsvCells.Type(folder, Enumerable.Range(0, Spoilt).Select(_ => Spoil(random, week)).DistinctBy(change => change.Cell));
    }

    private static (string Cell, string Value) Spoil(Random random, RandomWeek week)
    {
        var row = (FirstRow + random.Next(Legs)).ToString(CultureInfo.InvariantCulture);
        return random.Next(7) switch
        {
            0 => ($"week/Legs/R{row}", "520 lb"),
            1 => ($"week/Legs/R{row}", "full"),
            2 => ($"week/Legs/L{row}", "3500 ft"),
            3 => ($"week/Legs/H{row}", ""),
            4 => ($"week/Legs/P{row}", week.Pilots[random.Next(week.Fleet.Count)].Code),
            5 => ($"week/Legs/D{row}", (18 + random.Next(5)).ToString(CultureInfo.InvariantCulture) + ":30"),
            _ => ($"week/Manifest/E{row}", "310"),
        };
    }
}
