using Batch.Books;
using Batch.Checks;
using Batch.Flight.Week;

namespace Batch.Cli.Pipeline;

/// <summary>
/// A small invented week that shows every kind of leg a template meets: one that passes, one that fails, one that could not be planned and a row that could not
/// be read.
/// </summary>
public static class DemonstrationWeek
{
    /// <summary>The week, read from the starter books, with legs added that go wrong on purpose, planned and checked as any other.</summary>
    /// <param name="progress">Told how far it has come.</param>
    /// <param name="cancel">Stops between legs.</param>
    public static CheckedWeek Make(IProgress<RunProgress> progress, CancellationToken cancel) =>
        WeekReading.Of(WithTrouble(Starter()), 1, findsRemedies: true, progress, cancel).Week;

    private static OperatorWeek Starter()
    {
        var folder = Directory.CreateTempSubdirectory("tripbatch-");
        try
        {
            foreach (var book in StarterBooks.Make(StarterBooks.ExampleMonday.PlusDays(-1)))
                File.WriteAllBytes(Path.Combine(folder.FullName, book.Name), [.. book.Content]);
            return BookReader.Read([folder.FullName]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static OperatorWeek WithTrouble(OperatorWeek week)
    {
        var doubt = new Problem { State = State.Caution, Cell = "week.xlsx/Legs/H7", Text = "XTRY is not in Airports.", Read = "XTRY", Expected = "XTRI" };
        var unread = new Problem { State = State.Fail, Cell = "week.xlsx/Legs/G9", Text = "To is empty.", Expected = "an airport ident" };
        var note =
            new Problem { State = State.Note, Cell = "week.xlsx/Legs/S2", Text = "Column 'Caterer' is not known; it is kept for templates.", Read = "Caterer" };
        var overweight = Later(week.Legs[0], "T2", 1) with
        {
            BackupRoute = "DCT",
            SecondPilot = "",
            Extra = ImmutableSortedDictionary<string, string>.Empty.Add("Caterer", "none"),
            Doubts = [doubt],
        };
        var lost = Later(week.Legs[0], "T3", 2) with { Route = "NOWHERE", Alternate = "" };
        var passengers = week.Manifest.Select(line => line with { Trip = "T2", Legs = LegSelection.All, Weight = new Pounds(330), Bags = new Pounds(90) });
        return week with
        {
            Legs = [.. week.Legs, overweight, lost],
            BrokenLegs = [new BrokenLeg { Key = new LegKey("row 9", 0), Aircraft = week.Legs[0].Aircraft, From = week.Legs[0].From,
                Date = week.Legs[0].OffBlocksLocal.Date, Captain = week.Legs[0].Captain, Problems = [unread] }],
            Manifest = [.. week.Manifest, .. passengers],
            Problems = [unread, doubt, note],
        };
    }

    private static Leg Later(Leg leg, string trip, int days) => leg with
    {
        Key = new LegKey(trip, 1),
        OffBlocksLocal = leg.OffBlocksLocal + Period.FromDays(days),
        OffBlocks = leg.OffBlocks + Duration.FromDays(days),
    };
}
