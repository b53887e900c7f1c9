using System.CommandLine;
using Batch.Cli.Pipeline;
using Batch.Sheets;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch check</c>: the answer on the terminal, no files.</summary>
internal static class CheckCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    /// <param name="interrupt">Stops it.</param>
    public static Command Build(Terminal terminal, CancellationToken interrupt)
    {
        var books = SharedArguments.Books();
        var json = new Option<bool>("--json") { Description = "Writes run.json to the output instead of text." };
        var madeAt = new Option<string?>("--made-at") { Description = "The instant printed as made at, instead of the clock's.", HelpName = "T" };
        var noRemedies = new Option<bool>("--no-remedies") { Description = "Does not look for changes that would make failed checks pass; quicker." };
        var jobs = SharedArguments.Jobs();
        var command = new Command(
            "check",
            """
            Plans and checks every leg and prints what fails, worst first; writes no files.

            Exit status: 0 every leg passes or has cautions only, 1 some leg fails or is unplanned, 2 the input could not be used, 3 a fault of the program.

            Examples:
              tripbatch check operator.xlsx week.xlsx
              tripbatch check input-samples --json
              tripbatch check operator.xlsx week.xlsx --no-remedies
            """)
        { books, json, noRemedies, madeAt, jobs };
        command.SetAction(parsed =>
        {
            var read = WeekReading.Read(parsed.GetRequiredValue(books), SharedArguments.CheckedJobs(parsed.GetValue(jobs)), !parsed.GetValue(noRemedies), new ProgressLines(terminal), interrupt);
            if (parsed.GetValue(json))
                terminal.Output.WriteLine(System.Text.Encoding.UTF8.GetString(RunRecord.Json(read.Week, ProgramFacts.At(SharedArguments.MadeAt(parsed.GetValue(madeAt))))).TrimEnd());
            else
                new WeekText(terminal).Write(read);
            return ExitStatus.Of(read.Week, read.Faults);
        });
        return command;
    }
}
