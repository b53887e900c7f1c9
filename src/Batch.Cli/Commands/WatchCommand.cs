using System.CommandLine;
using Batch.Cli.Pipeline;
using Batch.Cli.Watching;
using Batch.Sheets;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch watch</c>: runs again after every save, with the board in the browser.</summary>
internal static class WatchCommand
{
    /// <summary>How long a run that is stopped may take to put the output folder in order.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(1);

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    /// <param name="interrupt">Stops it.</param>
    public static Command Build(Terminal terminal, CancellationToken interrupt)
    {
        var books = SharedArguments.Books();
        var into = new Option<string>("--out")
        {
            Description = "Folder that receives the outputs of every run.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "out"
        };
        var templates = new Option<string?>("--templates") { Description = "Folder with your own templates; it is watched as well.", HelpName = "DIR" };
        var noPdf = new Option<bool>("--no-pdf") { Description = "Writes no PDF; quicker." };
        var paper = new Option<PaperSize>("--paper") { Description = "Paper of the sheets.", HelpName = "A4|Letter", DefaultValueFactory = _ => PaperSize.A4 };
        var madeAt = new Option<string?>("--made-at") { Description = "The instant printed as made at, instead of the clock's.", HelpName = "T" };
        var jobs = SharedArguments.Jobs();
        var command = new Command(
            "watch",
            """
            Runs once, then again whenever a book or a template is saved, also while it is open in a spreadsheet, and prints one line a run: the counts and which legs changed. The board is shown in a
            browser at the address that is printed, on this machine only, and reloads itself. A book that cannot be used leaves the last good board, and the board says so. Ctrl-C ends it.

            Examples:
              tripbatch watch operator.xlsx week.xlsx --out out
              tripbatch watch my-week --templates my-week/templates --no-pdf
            """)
        { books, into, templates, noPdf, paper, jobs, madeAt };
        command.SetAction(parsed =>
        {
            var given = parsed.GetValue(madeAt);
            var options = new RunOptions
            {
                Books = [.. parsed.GetRequiredValue(books)],
                Out = parsed.GetRequiredValue(into),
                Templates = parsed.GetValue(templates),
                MakesPdf = !parsed.GetValue(noPdf),
                Paper = parsed.GetValue(paper),
                Jobs = SharedArguments.CheckedJobs(parsed.GetValue(jobs)),
                MadeAt = SharedArguments.MadeAt(given),
            };
            return Watch(terminal, options, given is null ? null : options.MadeAt, interrupt);
        });
        return command;
    }

    private static int Watch(Terminal terminal, RunOptions options, Instant? madeAt, CancellationToken interrupt)
    {
        foreach (var book in options.Books.Where(book => !Path.Exists(book))) throw new InputException($"{book} does not exist.");
        var zone = DateTimeZoneProviders.Tzdb.GetSystemDefault();
        var server = BoardServer.Start(interrupt).GetAwaiter().GetResult();
        void Say(string line)
        {
            terminal.Output.WriteLine(
                $"{SystemClock.Instance.GetCurrentInstant().InZone(zone).ToString("HH:mm:ss", System.Globalization.CultureInfo.InvariantCulture)}  {line}");
            terminal.Output.Flush();
        }

        terminal.Output.WriteLine($"Board: {server.Address}  (this machine only; Ctrl-C ends)");
        terminal.Output.Flush();
        var watch = Task.Run(() => new BookWatch(options, madeAt, SystemClock.Instance, server.Show, Say,
            work => ProgressLines.During(terminal, work)).Watch(interrupt), CancellationToken.None);
        Task.WaitAny([watch, Task.Delay(Timeout.Infinite, interrupt)], CancellationToken.None);
        if (!interrupt.IsCancellationRequested) watch.GetAwaiter().GetResult();
        Task.WaitAny([watch, Task.Delay(Grace, CancellationToken.None)], CancellationToken.None);
        return ExitStatus.AllPass;
    }
}
