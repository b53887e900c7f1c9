using System.Text;
using Batch.Checks;
using Batch.Paper;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>
/// Makes all sheets of a week, several at once: trip sheets, load sheets, packets. What comes out does not depend on how many are made at once.
/// </summary>
/// <param name="week">The week, cut to what is to be written.</param>
/// <param name="facts">When and by which version.</param>
/// <param name="renderer">The templates.</param>
/// <param name="options">Paper, whether to print, how many at once.</param>
internal sealed class SheetBatch(CheckedWeek week, RunFacts facts, SheetRenderer renderer, RunOptions options)
{
    /// <summary>How often a packet is printed for its page numbers before it is left without them.</summary>
    private const int MostPrints = 4;

    private readonly PdfPrinter _printer = new();
    private readonly PaperNotes _notes = new();

    /// <summary>What the paper engine did not honour, each once.</summary>
    public ImmutableArray<string> PaperNotes => _notes.All;

    /// <summary>Makes the sheets: those of trips, then loads, then packets, each kind in its order.</summary>
    /// <param name="guard">Keeps a fault from the other sheets.</param>
    /// <param name="progress">Told how far it has come.</param>
    /// <param name="cancel">Stops between sheets.</param>
    public ImmutableArray<SheetFile> Make(LegGuard guard, IProgress<RunProgress> progress, CancellationToken cancel)
    {
        var (trips, places, people) = (SheetModels.Trips(week), SheetModels.Departures(week), SheetModels.People(week));
        var sheets = new SheetFile[trips.Length + places.Length + people.Length];
        var done = 0;
        void Make<T>(ImmutableArray<T> subjects, int at, Func<T, string> path, Func<T, SheetFile> make) =>
            Parallel.For(0, subjects.Length, new ParallelOptions { MaxDegreeOfParallelism = options.Jobs, CancellationToken = cancel }, i =>
            {
                var name = path(subjects[i]);
                sheets[at + i] = guard.Run(name, () => make(subjects[i]), _ => new SheetFile(name, null, null, []));
                progress.Report(new RunProgress("sheets", Interlocked.Increment(ref done), sheets.Length));
            });

        progress.Report(new RunProgress("sheets", 0, sheets.Length));
        Make(trips, 0, SheetPaths.Trip,
            trip => Sheet(SheetPaths.Trip(trip), SheetModels.TripSheet, at => SheetModels.Trip(week, at, trip, options.Paper), cancel));
        Make(places, trips.Length, Load, place => Sheet(Load(place), SheetModels.LoadSheet, at => SheetModels.Load(week, at, place, options.Paper), cancel));
        var printed = trips.Zip(sheets).ToDictionary(pair => pair.First, pair => pair.Second.Printed, StringComparer.Ordinal);
        Make(people, trips.Length + places.Length, SheetPaths.Packet, code => Packet(code, printed, cancel));
        return [.. sheets];
    }

    private static string Load((string Airport, LocalDate Day) place) => SheetPaths.Load(place.Airport, place.Day);

    /// <summary>A sheet; while a book is watched, the one of the run before where it says the same but for the time at which it was made.</summary>
    private SheetFile Sheet(string path, string template, Func<RunFacts, SheetModel> model, CancellationToken cancel)
    {
        if (options.Memo?.Of(path) is { } kept
            && renderer.Render(template, model(facts with { MadeAt = kept.MadeAt })) is { IsRendered: true } again
            && again.Html == kept.Html)
            return new SheetFile(path, Shown(kept.Html, kept.Printed), kept.Printed, []);
        var rendered = renderer.Render(template, model(facts));
        if (!rendered.IsRendered) return new SheetFile(path, null, null, rendered.Problems);
        var printed = Print(rendered.Html, cancel);
        options.Memo?.Keep(path, new SheetMemo.Kept(facts.MadeAt, rendered.Html, printed));
        return new SheetFile(path, Shown(rendered.Html, printed), printed, []);
    }

    /// <summary>A page that is not printed, with its letters inside, so that it looks the same on a telephone too.</summary>
    /// <param name="html">The page.</param>
    public byte[] Shown(string html) => Shown(html, null);

    private byte[] Shown(string html, PrintedDocument? printed) => Encoding.UTF8.GetBytes(printed?.Shown(html) ?? _printer.WithFaces(html));

    /// <summary>
    /// A packet with page numbers in its contents. They are reckoned from the trip sheets and held against the print; where they are wrong, as with a template
    /// of the user's own, it is printed again.
    /// </summary>
    private SheetFile Packet(string code, IReadOnlyDictionary<string, PrintedDocument?> trips, CancellationToken cancel)
    {
        var path = SheetPaths.Packet(code);
        SheetModel Unnumbered(RunFacts at) => SheetModels.Packet(week, at, code, options.Paper);
        if (!options.MakesPdf) return Sheet(path, SheetModels.CrewPacket, Unnumbered, cancel);
        var unnumbered = Unnumbered(facts);
        var cover = renderer.Render(SheetModels.CrewPacket, SheetModels.Cover(unnumbered));
        if (!cover.IsRendered) return new SheetFile(path, null, null, cover.Problems);
        var coverPages = _printer.Print(cover.Html, Options(cancel)).Pages;
        IReadOnlyDictionary<string, int> pages =
            SheetModels.ExpectedPages(unnumbered, coverPages, trip => trips.GetValueOrDefault(trip) is { } sheet ? (sheet.Pages, sheet.Places) : null);
        for (var prints = 0; prints < MostPrints; prints++)
        {
            var numbers = pages;
            var packet = Sheet(path, SheetModels.CrewPacket, at => SheetModels.WithPages(Unnumbered(at), numbers), cancel);
            if (packet.Printed is null || SheetModels.HasPages(SheetModels.WithPages(unnumbered, numbers), packet.Printed.Places)) return packet;
            pages = packet.Printed.Places;
        }

        return Sheet(path, SheetModels.CrewPacket, Unnumbered, cancel);
    }

    private PrintedDocument? Print(string html, CancellationToken cancel)
    {
        if (!options.MakesPdf) return null;
        var document = _printer.Print(html, Options(cancel));
        _notes.Add(document.Unsupported);
        return document;
    }

    private PrintOptions Options(CancellationToken cancel) =>
        new() { MadeAt = facts.MadeAt.ToDateTimeOffset(), PageSize = options.Paper.ToString(), WithFaces = true, CancellationToken = cancel };
}
