using System.CommandLine;
using System.Globalization;
using Batch.Cli.Pipeline;
using Batch.Sheets;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch run</c>: everything, into a folder.</summary>
internal static class RunCommand
{
    /// <summary>Counts, what the crews are to be told, where it was written, what was not, the prompt.</summary>
    private const int LinesBelow = 9;

    /// <summary>What was not written is named up to this many; the rest is counted.</summary>
    private const int MostListed = 12;

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    /// <param name="interrupt">Stops it.</param>
    public static Command Build(Terminal terminal, CancellationToken interrupt)
    {
        var books = SharedArguments.Books();
        var into = new Option<string>("--out")
        {
            Description = "Folder that receives the outputs; an earlier run there is replaced when this one is finished.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "out"
        };
        var templates = new Option<string?>("--templates")
        {
            Description = "Folder with your own templates; a template that is not in it is the shipped one.",
            HelpName = "DIR",
        };
        var only = new Option<string?>("--only")
        {
            Description = "Trips to write, separated by commas. The whole week is planned all the same.",
            HelpName = "TRIP,..."
        };
        var from = new Option<string?>("--from") { Description = "First day to write, local to the departure.", HelpName = "DATE" };
        var to = new Option<string?>("--to") { Description = "Last day to write.", HelpName = "DATE" };
        var overrides = new Option<string[]>("--override")
        {
            Description =
            "Why a leg is flown and mailed although it fails, for this run; a reason that is to stay belongs into the column Override of the Legs sheet. May be given more than once.",
            HelpName = "TRIP/LEG=REASON"
        };
        var ledger = SharedArguments.Ledger();
        var noPdf = new Option<bool>("--no-pdf") { Description = "Writes no PDF." };
        var paper = new Option<PaperSize>("--paper") { Description = "Paper of the sheets.", HelpName = "A4|Letter", DefaultValueFactory = _ => PaperSize.A4 };
        var results = new Option<bool>("--result-columns") { Description = "Adds state, time, fuel and weight beside each leg of the checked workbook." };
        var madeAt = new Option<string?>("--made-at") { Description = "The instant printed as made at, instead of the clock's.", HelpName = "T" };
        var jobs = SharedArguments.Jobs();
        var command = new Command(
            "run",
            """
            Reads the books, plans and checks every leg, and writes the trip sheets, the board, your own week book with its
            offending cells marked, the findings and the record.

            Exit status: 0 every leg passes or has cautions only, 1 some leg fails or is unplanned, 2 the input could not be used or holds no leg,
            3 a fault of the program, or a sheet could not be written.

            Examples:
              tripbatch run operator.xlsx week.xlsx --out out
              tripbatch run my-week --result-columns --no-pdf
              tripbatch run input-samples --only T101,T105 --no-pdf
              tripbatch run input-samples --override T108/2="the chief pilot agreed, ferry without passengers"
              tripbatch run input-samples --from 2026-12-11 --to 2026-12-13 --paper Letter
            """)
        { books, into, templates, only, from, to, overrides, ledger, noPdf, paper, results, jobs, madeAt };
        command.SetAction(parsed =>
        {
            var options = new RunOptions
            {
                Books = [.. parsed.GetRequiredValue(books)],
                Out = parsed.GetRequiredValue(into),
                Templates = parsed.GetValue(templates),
                Only = [.. SharedArguments.Names(parsed.GetValue(only))],
                From = SharedArguments.Day("--from", parsed.GetValue(from)),
                To = SharedArguments.Day("--to", parsed.GetValue(to)),
                Overrides = Reasons(parsed.GetValue(overrides) ?? []),
                Ledger = parsed.GetValue(ledger),
                MakesPdf = !parsed.GetValue(noPdf),
                Paper = parsed.GetValue(paper),
                HasResultColumns = parsed.GetValue(results),
                Jobs = SharedArguments.CheckedJobs(parsed.GetValue(jobs)),
                MadeAt = SharedArguments.MadeAt(parsed.GetValue(madeAt)),
            };
            return Report(terminal, options, ProgressLines.During(terminal, progress => WeekRun.Run(options, progress, interrupt)));
        });
        return command;
    }

    private static ImmutableSortedDictionary<string, string> Reasons(string[] overrides)
    {
        var reasons = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var written in overrides)
        {
            var parts = written.Split('=', 2, StringSplitOptions.TrimEntries);
            if (parts is not [{ Length: > 0 } leg, { Length: > 0 } reason])
                throw new InputException($"--override {written}: a leg and a reason were expected, such as T101/2=\"agreed by the chief pilot\".");
            reasons[leg] = reason;
        }

        return reasons.ToImmutable();
    }

    /// <summary>Such as <c>32 trip sheets in sheets</c>.</summary>
    private static string Counted(RunReport report, string folder, string what)
    {
        var count = report.Sheets.Count(path => path.StartsWith(folder + "/", StringComparison.Ordinal));
        return string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")} in {folder}");
    }

    private static int Report(Terminal terminal, RunOptions options, RunReport report)
    {
        var text = new WeekText(terminal);
        var room = terminal.Rows is { } rows ? Math.Max(6, rows - LinesBelow) : int.MaxValue;
        text.Problems(report.Week.Week.Plan.Input.Problems, room / 3);
        text.Short(report.Week.Week, room - Math.Min(room / 3, report.Week.Week.Plan.Input.Problems.Length + 1));
        foreach (var problem in report.TemplateProblems) terminal.Errors.WriteLine(problem);
        foreach (var note in report.PaperNotes) terminal.Errors.WriteLine("paper: " + note);
        foreach (var note in report.BookNotes) terminal.Errors.WriteLine("checked workbook: " + note);
        text.Faults(report.Week.Faults);
        text.Counts(report.Week.Week);
        new PostText(terminal).Changes(report.Post);
        var board = report.Files.ContainsKey(SheetPaths.Board) ? Path.Combine(options.Out, SheetPaths.Board) : "no board, for what is wrong in its template";
        terminal.WriteSentence($"Written: {board}, {Counted(report, "sheets", "trip sheet")}, {Counted(report, "packets", "crew packet")}, {Counted(report, "loads", "load sheet")}.");
        if (!report.NotWritten.IsEmpty)
            terminal.WriteSentence($"Not written: {string.Join(", ", report.NotWritten.Take(MostListed))}{(report.NotWritten.Length > MostListed ? string.Create(CultureInfo.InvariantCulture, $" and {report.NotWritten.Length - MostListed} more") : "")}. Why stands above.");
        return ExitStatus.Of(report);
    }
}
