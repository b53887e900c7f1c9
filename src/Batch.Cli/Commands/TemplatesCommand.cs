using System.CommandLine;
using System.Globalization;
using System.Text;
using Batch.Cli.Pipeline;
using Batch.Sheets;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch templates</c>: tries templates and lists what they can use.</summary>
internal static class TemplatesCommand
{
    private const string ValuesFile = "values.html";

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    /// <param name="interrupt">Stops it.</param>
    public static Command Build(Terminal terminal, CancellationToken interrupt) => new(
        "templates",
        """
        For those who write their own sheets.

        Examples:
          tripbatch templates check my-templates
          tripbatch templates values
        """)
    {
        Check(terminal, interrupt),
        Values(terminal, interrupt),
    };

    private static Command Check(Terminal terminal, CancellationToken interrupt)
    {
        var folder = new Argument<string?>("DIR")
        {
            Description = "Folder with your own templates; without it the shipped ones are tried.",
            Arity = ArgumentArity.ZeroOrOne
        };
        var week = new Option<string[]>("--week")
        {
            Description = "Books whose sheets are rendered instead of the built-in demonstration week.",
            HelpName = "BOOK",
            AllowMultipleArgumentsPerToken = true
        };
        var command = new Command(
            "check",
            """
            Renders every sheet of a week with your templates, prints it on A4 and Letter, writes no file, and lists by file and line: text that cannot be
            understood, values and functions that do not exist with the nearest name, whatever paper does not honour, tables and texts wider than the page.

            Exit status: 0 nothing is wrong, 2 something is wrong, 3 a fault of the program.

            Examples:
              tripbatch templates check
              tripbatch templates check my-templates
              tripbatch templates check my-templates --week operator.xlsx week.xlsx
            """)
        { folder, week };
        command.SetAction(parsed =>
        {
            var templates = TemplateReading.Of(parsed.GetValue(folder), "");
            var books = parsed.GetValue(week) ?? [];
            return Report(terminal, ProgressLines.During(terminal, progress =>
            {
                var read = books.Length > 0
                    ? WeekReading.Read(books, 1, findsRemedies: true, progress, interrupt).Week
                    : DemonstrationWeek.Make(progress, interrupt);
                var known = read.Plan.Input.Operator;
                return TemplateCheck.Of(
                    templates.For(known.WeightUnit, known.Language), read, ProgramFacts.At(Instant.FromUnixTimeSeconds(0)), progress, interrupt);
            }));
        });
        return command;
    }

    private static Command Values(Terminal terminal, CancellationToken interrupt)
    {
        var folder = new Argument<string>("DIR")
        {
            Description = $"Folder that receives {ValuesFile}.",
            Arity = ArgumentArity.ZeroOrOne,
            DefaultValueFactory = _ => "."
        };
        var command = new Command(
            "values",
            $"""
            Writes a page, {ValuesFile}, with every value and function that a template can use: name, type, unit, what it is, an example.

            Examples:
              tripbatch templates values
              tripbatch templates values my-notes
            """)
        { folder };
        command.SetAction(parsed =>
        {
            var week = ProgressLines.During(terminal, progress => DemonstrationWeek.Make(progress, interrupt));
            var page = new SheetRenderer(TemplateFolder.Shipped)
                .Render(SheetModels.ValuesPage, SheetModels.Values(week, ProgramFacts.At(Instant.FromUnixTimeSeconds(0)), PaperSize.A4));
            if (!page.IsRendered) throw new InvalidOperationException(page.Problems[0].ToString());
            var path = Path.Combine(parsed.GetValue(folder) ?? ".", ValuesFile);
            try
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path) ?? ".");
                File.WriteAllText(path, page.Html, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                throw new InputException($"{path} cannot be written: {error.Message}", error);
            }

            terminal.Output.WriteLine($"Written: {path}");
            return ExitStatus.AllPass;
        });
        return command;
    }

    private static int Report(Terminal terminal, TemplateCheckReport report)
    {
        foreach (var problem in report.Problems) terminal.Output.WriteLine(problem);
        foreach (var name in report.Unused) terminal.Output.WriteLine($"note: {name} was used by no sheet of this week.");
        foreach (var (file, lines) in report.NotReached)
            terminal.Output.WriteLine($"note: no sheet of this week came to {file}, lines {Ranges(lines)}; what is wrong there was not seen.");
        if (report.IsStopped) terminal.Output.WriteLine("note: a sheet stopped at a problem above; mend it and check again, what comes after it was not seen.");
        terminal.Output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{report.Sheets} sheets tried: {(report.Problems.IsEmpty ? "nothing is wrong" : $"{report.Problems.Length} {(report.Problems.Length == 1 ? "problem" : "problems")}")}."));
        return report.Problems.IsEmpty ? ExitStatus.AllPass : ExitStatus.BadInput;
    }

    /// <summary>Such as <c>3, 7-9</c>.</summary>
    private static string Ranges(ImmutableArray<int> lines)
    {
        var text = new StringBuilder();
        for (var i = 0; i < lines.Length; i++)
        {
            var first = i;
            while (i + 1 < lines.Length && lines[i + 1] == lines[i] + 1) i++;
            text.Append(text.Length > 0 ? ", " : "").Append(CultureInfo.InvariantCulture, $"{lines[first]}");
            if (i > first) text.Append(CultureInfo.InvariantCulture, $"-{lines[i]}");
        }

        return text.ToString();
    }
}
