using System.Collections.Concurrent;
using System.Text;
using Batch.Books;
using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Paper;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>A whole run: books in, a folder of sheets, board, findings and record out.</summary>
public static class WeekRun
{
    /// <summary>Reads, plans, checks, renders, prints and writes.</summary>
    /// <param name="options">What to do.</param>
    /// <param name="progress">Told how far it has come.</param>
    /// <param name="cancel">Stops between legs and sheets; the last good run stays.</param>
    /// <exception cref="InputException">The books, the templates folder or the output folder cannot be used.</exception>
    public static RunReport Run(RunOptions options, IProgress<RunProgress> progress, CancellationToken cancel)
    {
        var templates = TemplateReading.Of(options.Templates, "--templates");
        using var folder = new OutputFolder(options.Out);
        var read = WeekReading.Read(options.Books, options.Jobs, findsRemedies: true, progress, cancel, options.Overrides);
        var week = Chosen(read.Week, options);
        var facts = ProgramFacts.At(options.MadeAt);
        var record = RunRecord.Json(week, facts);
        var post = WeekPost.Of(record, options.Ledger ?? WeekPost.LedgerBeside(options.Out));
        facts = facts with { Revisions = post.Revisions };
        var guard = new LegGuard();
        var renderer = new SheetRenderer(templates);
        var printer = options.MakesPdf ? new PdfPrinter() : null;
        var printed = new PaperNotes();

        var trips = SheetModels.Trips(week);
        var sheets = new RenderedSheet[trips.Length];
        var done = 0;
        progress.Report(new RunProgress("sheets", 0, trips.Length));
        Parallel.For(0, trips.Length, new ParallelOptions { MaxDegreeOfParallelism = options.Jobs, CancellationToken = cancel }, i =>
        {
            sheets[i] = guard.Run(trips[i], () => Sheet(week, trips[i], facts, renderer, printer, options, printed, cancel), _ => new RenderedSheet(null, null, []));
            progress.Report(new RunProgress("sheets", Interlocked.Increment(ref done), trips.Length));
        });

        for (var i = 0; i < trips.Length; i++)
        {
            var name = "sheets/" + SheetName.Of(trips[i]);
            if (sheets[i].Html is { } html) folder.Write(name + ".html", html);
            if (sheets[i].Pdf is { } pdf) folder.Write(name + ".pdf", pdf);
        }

        var board = renderer.Render(SheetModels.WeekBoard, SheetModels.Board(week, facts, options.Paper, options.MakesPdf));
        if (board.IsRendered) folder.Write("index.html", Encoding.UTF8.GetBytes(board.Html));
        folder.Write("findings.csv", FindingsTable.Csv(week));
        folder.Write("register.xlsx", stream => ComplianceRegister.Write(week, stream));
        folder.Write("run.json", record);
        post.WriteCalendars(folder);
        var books = guard.Run(
            "the checked workbook",
            () => CheckedBook.Make(options.Books, week.Plan.Input.Inputs, CheckedCopy.Of(week, options.MadeAt, options.HasResultColumns)),
            _ => new CheckedBookResult([], []));
        foreach (var book in books.Files) folder.Write(book.Name, [.. book.Content]);
        cancel.ThrowIfCancellationRequested();
        folder.Commit();
        return new RunReport(
            new WeekResult(week, read.Faults.AddRange(guard.Faults)),
            [.. trips.Where((_, i) => sheets[i].Html is not null)],
            [.. sheets.SelectMany(sheet => sheet.Problems).Concat(board.Problems).Distinct()],
            printed.All,
            books.Notes,
            post)
        {
            Files = folder.Files,
        };
    }

    private static RenderedSheet Sheet(
        CheckedWeek week, string trip, RunFacts facts, SheetRenderer renderer, PdfPrinter? printer, RunOptions options, PaperNotes notes, CancellationToken cancel)
    {
        RenderResult Rendered(Instant madeAt) => renderer.Render(SheetModels.TripSheet, SheetModels.Trip(week, facts with { MadeAt = madeAt }, trip, options.Paper));
        if (options.Memo?.Of(trip) is { } kept && Rendered(kept.MadeAt) is { IsRendered: true } again && again.Html == kept.Html) return new RenderedSheet(Encoding.UTF8.GetBytes(kept.Html), kept.Pdf, []);
        var rendered = Rendered(facts.MadeAt);
        if (!rendered.IsRendered) return new RenderedSheet(null, null, rendered.Problems);
        var html = Encoding.UTF8.GetBytes(rendered.Html);
        if (printer is null)
        {
            options.Memo?.Keep(trip, new SheetMemo.Kept(facts.MadeAt, rendered.Html, null));
            return new RenderedSheet(html, null, []);
        }

        var document = printer.Print(rendered.Html, new PrintOptions { MadeAt = facts.MadeAt.ToDateTimeOffset(), PageSize = options.Paper.ToString(), CancellationToken = cancel });
        notes.Add(document.Unsupported);
        options.Memo?.Keep(trip, new SheetMemo.Kept(facts.MadeAt, rendered.Html, document.Pdf));
        return new RenderedSheet(html, document.Pdf, []);
    }

    private static CheckedWeek Chosen(CheckedWeek week, RunOptions options)
    {
        if (options.Only.IsEmpty && options.From is null && options.To is null) return week;
        var known = week.Legs.Select(leg => leg.Plan.Key.Trip).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var trip in options.Only.Where(trip => !known.Contains(trip)).Order(StringComparer.Ordinal))
        {
            var near = Flight.NearWords.Nearest(trip, known);
            throw new InputException($"--only {trip}: there is no such trip.{(near.IsEmpty ? "" : $" Did you mean {string.Join(" or ", near)}?")}");
        }

        return week with
        {
            Legs = [.. week.Legs.Where(leg => (options.Only.IsEmpty || options.Only.Contains(leg.Plan.Key.Trip)) && IsInDays(leg.Plan, options))],
        };
    }

    private static bool IsInDays(LegPlan plan, RunOptions options)
    {
        var day = plan switch
        {
            LegPlan.Planned planned => planned.Leg.OffBlocks.InZone(planned.From.Zone).Date,
            LegPlan.Unplanned { Leg: { } leg } => leg.OffBlocksLocal.Date,
            LegPlan.Unplanned { Broken: { } broken } => broken.Date,
            _ => null,
        };
        return day is not { } date || ((options.From is null || date >= options.From) && (options.To is null || date <= options.To));
    }

    private sealed record RenderedSheet(byte[]? Html, byte[]? Pdf, ImmutableArray<TemplateProblem> Problems);

    private sealed class PaperNotes
    {
        private readonly ConcurrentDictionary<string, byte> _texts = new(StringComparer.Ordinal);

        public ImmutableArray<string> All => [.. _texts.Keys.Order(StringComparer.Ordinal)];

        public void Add(ImmutableArray<Unsupported> unsupported)
        {
            foreach (var note in unsupported) _texts.TryAdd(note.Text, 0);
        }
    }
}
