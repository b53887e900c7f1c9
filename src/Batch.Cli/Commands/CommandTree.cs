using System.CommandLine;
using System.CommandLine.Parsing;

namespace Batch.Cli.Commands;

/// <summary>The commands of the program.</summary>
internal static class CommandTree
{
    /// <summary>Makes the commands.</summary>
    /// <param name="terminal">Where they write.</param>
    /// <param name="interrupt">Stops them.</param>
    public static RootCommand Build(Terminal terminal, CancellationToken interrupt) => new(
        """
        Plans and checks a week of charter legs from a spreadsheet and writes the trip sheets.

        A planning aid: the approved flight manual, local rules and the pilot in command decide.

        Examples:
          tripbatch new my-week
          tripbatch run operator.xlsx week.xlsx --out out
          tripbatch check week-folder
          tripbatch explain operator.xlsx week.xlsx --leg T101/2 --value "final reserve"
        """)
    {
        RunCommand.Build(terminal, interrupt),
        WatchCommand.Build(terminal, interrupt),
        CheckCommand.Build(terminal, interrupt),
        ExplainCommand.Build(terminal, interrupt),
        NewCommand.Build(terminal),
        SendCommand.Build(terminal, interrupt),
        TemplatesCommand.Build(terminal, interrupt),
        ImportCommand.Build(terminal),
    };

    /// <summary>For each word that was not understood the commands and options that are near to it.</summary>
    /// <param name="parsed">What was parsed.</param>
    public static IEnumerable<string> Hints(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        var known = command.Subcommands.Select(sub => sub.Name).Concat(command.Options.Select(option => option.Name)).ToImmutableArray();
        foreach (var word in parsed.UnmatchedTokens)
        {
            var near = Flight.NearWords.Nearest(word, known);
            if (!near.IsEmpty) yield return $"{word}: did you mean {string.Join(" or ", near)}?";
        }
    }

    /// <summary>The names of the command that was parsed, without the program's own.</summary>
    /// <param name="parsed">What was parsed.</param>
    public static IEnumerable<string> PathOf(ParseResult parsed)
    {
        var names = new Stack<string>();
        for (SymbolResult? at = parsed.CommandResult; at is CommandResult command; at = command.Parent)
        {
            if (command.Command is not RootCommand) names.Push(command.Command.Name);
        }

        return names;
    }
}
