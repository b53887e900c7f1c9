using System.CommandLine;
using Batch.Checks;
using Batch.Cli.Pipeline;
using Batch.Flight.Fleet;
using Batch.Flight.Week;
using Batch.Sheets;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch check</c>: the answer on the terminal, no files.</summary>
internal static class CheckCommand
{
    private const int ThinnestShown = 5;

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    /// <param name="interrupt">Stops it.</param>
    public static Command Build(Terminal terminal, CancellationToken interrupt)
    {
        var books = SharedArguments.Books();
        var json = new Option<bool>("--json") { Description = "The answer as JSON on one line, for scripts: each leg with state, times, fuel, weights and findings under the names of run.json; with --stress what the scenarios do." };
        var madeAt = new Option<string?>("--made-at") { Description = "The instant printed as made at, instead of the clock's.", HelpName = "T" };
        var noRemedies = new Option<bool>("--no-remedies") { Description = "Does not look for changes that would make failed checks pass; quicker." };
        var stress = new Option<string?>("--stress") { Description = $"Plans the week again under a scenario and prints which legs break first: {string.Join(", ", Scenario.BuiltIn.Select(scenario => scenario.Name))}, one of the Operator sheet, or all.", HelpName = "NAME" };
        var jobs = SharedArguments.Jobs();
        var command = new Command(
            "check",
            """
            Plans and checks every leg and prints what fails, worst first; writes no files.

            Exit status: 0 every leg passes or has cautions only, 1 some leg fails or is unplanned (with --stress: as planned or under a scenario), 2 the input could not be used or holds no leg, 3 a fault of the program.

            Examples:
              tripbatch check operator.xlsx week.xlsx
              tripbatch check input-samples --json
              tripbatch check operator.xlsx week.xlsx --no-remedies
              tripbatch check input-samples --stress hot
              tripbatch check input-samples --stress all --json

            A scenario of your own is a row of the Operator sheet, such as 'Scenario hot-and-heavy' with the value '12 °C, 25 kt, 10 %, 45 min'.
            """)
        { books, json, noRemedies, stress, madeAt, jobs };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(stress) is { } name)
            {
                var weeks = ProgressLines.During(terminal, progress => WeekReading.Stress(parsed.GetRequiredValue(books), house => Scenarios(name, house),
                    SharedArguments.CheckedJobs(parsed.GetValue(jobs)), progress, interrupt));
                return Stressed(terminal, weeks, parsed.GetValue(json));
            }

            var read = ProgressLines.During(terminal, progress => WeekReading.Read(parsed.GetRequiredValue(books),
                SharedArguments.CheckedJobs(parsed.GetValue(jobs)), !parsed.GetValue(noRemedies), progress, interrupt));
            if (parsed.GetValue(json))
                terminal.Output.Write(
                    System.Text.Encoding.UTF8.GetString(RunRecord.Answer(read.Week, ProgramFacts.At(SharedArguments.MadeAt(parsed.GetValue(madeAt))))));
            else
                new WeekText(terminal).Write(read with { Week = WeekInUnit.Of(read.Week) });
            return ExitStatus.Of(read.Week, read.Faults);
        });
        return command;
    }

    private static int Stressed(Terminal terminal, ImmutableArray<(Scenario Scenario, WeekResult Result)> weeks, bool isJson)
    {
        CheckedWeek Shown(WeekResult result) => isJson ? result.Week : WeekInUnit.Of(result.Week);
        var before = Shown(weeks[0].Result);
        ImmutableArray<StressAnswer> answers = [.. weeks.Skip(1).Select(week => StressAnswer.Of(week.Scenario, before, Shown(week.Result), ThinnestShown))];
        if (isJson) terminal.Output.WriteLine(StressJson.Of(before, answers));
        else new StressText(terminal).Write(before, answers);
        new WeekText(terminal).Faults([.. weeks.SelectMany(week => week.Result.Faults)]);
        return weeks.Max(week => ExitStatus.Of(week.Result.Week, week.Result.Faults));
    }

    private static ImmutableArray<Scenario> Scenarios(string name, Operator house)
    {
        var known = Scenario.Of(house);
        if (name.Equals("all", StringComparison.OrdinalIgnoreCase)) return known;
        if (known.FirstOrDefault(scenario => scenario.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } found) return [found];
        var names = known.Select(scenario => scenario.Name).Append("all").ToImmutableArray();
        ImmutableArray<string> parts = [.. names.Where(one => one.Contains(name, StringComparison.OrdinalIgnoreCase))];
        var near = parts.IsEmpty ? Flight.NearWords.Nearest(name, names) : parts;
        throw new InputException($"--stress {name}: {(near.IsEmpty ? $"one of {string.Join(", ", names)} was expected" : $"did you mean {string.Join(" or ", near)}")}{(near.IsEmpty ? "." : "?")}");
    }
}
