using System.CommandLine;
using System.Text;
using Batch.Books;
using Batch.Cli.Pipeline;
using Batch.Sheets;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch new</c>: books and templates to begin with.</summary>
internal static class NewCommand
{
    private const string Templates = "templates";

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    public static Command Build(Terminal terminal)
    {
        var folder = new Argument<string>(
            "DIR")
        { Description = "Folder that receives the books; it is made where it does not exist. Nothing in it is overwritten." };
        var madeAt = new Option<string?>("--made-at")
        {
            Description = "The instant taken for now, instead of the clock's: the example trip flies on the Monday after it.",
            HelpName = "T",
        };
        var command = new Command(
            "new",
            """
            Writes an operator book, a week book and a copy of the templates to begin with. The books hold a small invented operator and one trip, so that
            they can be run at once; replace the rows by your own. The trip flies on the coming Monday.

            Examples:
              tripbatch new my-week
              tripbatch run my-week --out out
              tripbatch run my-week --templates my-week/templates --out out
            """)
        { folder, madeAt };
        command.SetAction(parsed => Make(terminal, parsed.GetRequiredValue(folder), SharedArguments.MadeAt(parsed.GetValue(madeAt)).InUtc().Date));
        return command;
    }

    private static int Make(Terminal terminal, string folder, LocalDate today)
    {
        if (File.Exists(folder)) throw new InputException($"{folder} is a file; new needs a folder.");
        var books = StarterBooks.Make(today);
        string[] names = [.. books.Select(book => book.Name), Templates];
        var there = Array.FindAll(names, name => Path.Exists(Path.Combine(folder, name)));
        if (there.Length > 0)
            throw new InputException($"{folder} holds {string.Join(" and ", there)} already, and nothing is overwritten; name another folder.");
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, Templates));
            foreach (var book in books) Write(Path.Combine(folder, book.Name), book.Content.AsSpan());
            foreach (var name in TemplateFolder.Shipped.Names)
                Write(Path.Combine(folder, Templates, name), Encoding.UTF8.GetBytes(TemplateFolder.Shipped.Text(name) ?? ""));
            foreach (var path in TemplateFolder.Examples)
            {
                var file = Path.Combine(folder, Templates, path);
                Directory.CreateDirectory(Path.GetDirectoryName(file) ?? folder);
                Write(file, Encoding.UTF8.GetBytes(TemplateFolder.ExampleText(path)));
            }

        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException($"{folder} cannot be written: {error.Message}", error);
        }

        terminal.Output.WriteLine(
            $"Written: {string.Join(", ", books.Select(book => Path.Combine(folder, book.Name)))} and the templates in {Path.Combine(folder, Templates)}.");
        terminal.Output.WriteLine($"The example in them is invented, not for navigation. Try it: tripbatch run {folder}");
        return ExitStatus.AllPass;
    }

    private static void Write(string path, ReadOnlySpan<byte> content)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        file.Write(content);
    }
}
