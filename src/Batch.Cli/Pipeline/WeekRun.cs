using Batch.Books;
using Batch.Checks;
using Batch.Flight.Plan;
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
        using var folder = new OutputFolder(options.Out, cancel: cancel);
        var read = WeekReading.Read(options.Books, options.Jobs, findsRemedies: true, progress, cancel, options.Overrides, options.WeekMemo);
        var week = Chosen(options.Templates is null ? Noted(read.Week) : read.Week, options);
        var shown = WeekInUnit.Of(week);
        var facts = ProgramFacts.At(options.MadeAt);
        var record = RunRecord.Json(week, facts);
        var post = WeekPost.Of(record, options.Ledger ?? WeekPost.LedgerBeside(options.Out));
        facts = facts with { Revisions = post.Revisions };
        var guard = new LegGuard();
        var renderer = new SheetRenderer(templates.For(week.Plan.Input.Operator.WeightUnit, week.Plan.Input.Operator.Language));
        var batch = new SheetBatch(week, facts, renderer, options);
        var sheets = batch.Make(guard, progress, cancel);
        foreach (var sheet in sheets) sheet.Write(folder);

        var board = renderer.Render(SheetModels.WeekBoard, SheetModels.Board(shown, facts, options.Paper, options.MakesPdf));
        if (board.IsRendered) folder.Write(SheetPaths.Board, batch.Shown(board.Html));
        else if (options.Memo is not null && folder.Before(SheetPaths.Board) is { } last) folder.Write(SheetPaths.Board, LastBoard.Of(last));
        folder.Write("findings.csv", FindingsTable.Csv(shown));
        folder.Write("register.xlsx", stream => ComplianceRegister.Write(shown, stream));
        folder.Write(SheetPaths.Record, record);
        post.WriteCalendars(folder);
        var books = guard.Run<CheckedBookResult?>(
            "the checked workbook",
            () => CheckedBook.Make(options.Books, week.Plan.Input.Inputs, CheckedCopy.Of(shown, options.MadeAt, options.HasResultColumns)),
            _ => null);
        foreach (var book in books?.Files ?? []) folder.Write(book.Name, [.. book.Content]);
        cancel.ThrowIfCancellationRequested();
        folder.Commit(options.Books);
        return new RunReport(
            new WeekResult(shown, read.Faults.AddRange(guard.Faults)),
            [.. sheets.Where(sheet => sheet.Html is not null).Select(sheet => sheet.Path)],
            [.. sheets.SelectMany(sheet => sheet.Problems).Concat(board.Problems).Distinct()],
            batch.PaperNotes,
            books?.Notes ?? [],
            post)
        {
            Files = folder.Files,
            NotWritten = [.. board.IsRendered ? [] : new[] { SheetPaths.Board }, .. sheets.Where(sheet => sheet.Html is null).Select(sheet => sheet.Path),
                .. books is null ? new[] { "the checked workbook" } : []],
        };
    }

    /// <summary>The week with a note where its sheets are not in the language that the operator asks for.</summary>
    private static CheckedWeek Noted(CheckedWeek week)
    {
        var input = week.Plan.Input;
        return SheetLanguage.Note(input.Operator) is { } note
            ? week with { Plan = week.Plan with { Input = input with { Problems = input.Problems.Add(note) } } }
            : week;
    }

    private static CheckedWeek Chosen(CheckedWeek week, RunOptions options)
    {
        if (options.Only.IsEmpty && options.From is null && options.To is null) return week;
        var known = week.Legs.Select(leg => leg.Plan.Key.Trip).ToHashSet(StringComparer.OrdinalIgnoreCase);
        if (options.Only.Except(known).Order(StringComparer.Ordinal).FirstOrDefault() is { } unknown)
            throw new InputException($"--only {unknown}: there is no such trip.{Meant.Question(unknown, known)}");
        ImmutableArray<CheckedLeg> legs =
            [.. week.Legs.Where(leg => (options.Only.IsEmpty || options.Only.Contains(leg.Plan.Key.Trip)) && IsInDays(leg.Plan, options))];
        return !legs.IsEmpty || week.Legs.IsEmpty
            ? week with { Legs = legs }
            : throw new InputException("No leg is left by --only, --from and --to, so there is nothing to write.");
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
}
