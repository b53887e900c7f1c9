using System.CommandLine;
using System.Globalization;
using Batch.Cli.Pipeline;
using Batch.Post;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch send</c>: packets to the crews, as drafts or by mail.</summary>
internal static class SendCommand
{
    private const string PasswordVariable = "TRIPBATCH_SMTP_PASSWORD";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    /// <param name="interrupt">Stops it.</param>
    public static Command Build(Terminal terminal, CancellationToken interrupt)
    {
        var run = new Argument<string>("OUT") { Description = "Folder of a finished run." };
        var draft = new Option<string?>("--draft")
        {
            Description = "Folder that receives the mails as drafts (.eml); usually drafts in OUT.",
            HelpName = "DIR",
        };
        var smtp = new Option<string?>("--smtp")
        {
            Description = "Sends through this server. The connection is encrypted (STARTTLS, or from the first byte on port 465 and with smtps://), "
                + "or nothing is sent; only a server on this machine may do without.",
            HelpName = "HOST:PORT",
        };
        var user = new Option<string?>("--user")
        {
            Description = $"User name for the server. The password stands in the environment variable {PasswordVariable} or in a file.",
            HelpName = "NAME"
        };
        var passwordFile = new Option<string?>("--password-file") { Description = "File that holds the password in its first line.", HelpName = "FILE" };
        var only = new Option<string?>("--only") { Description = "Persons to send to, by code, separated by commas.", HelpName = "CREW,..." };
        var again = new Option<string?>("--again") { Description = "Persons who get their packet once more although nothing changed.", HelpName = "CREW,..." };
        var cancel = new Option<string?>("--cancel")
        {
            Description = "Trips that were issued and are to be taken back although they are not of the days of this run.",
            HelpName = "TRIP,..."
        };
        var byHand = new Option<bool>("--by-hand") { Description = "Writes the drafts and notes in the ledger that you send them yourself." };
        var ledger = SharedArguments.Ledger();
        var templates = new Option<string?>("--templates") { Description = "Folder with your own templates mail.html and mail.txt.", HelpName = "DIR" };
        var command = new Command(
            "send",
            """
            Writes each person of a finished run a mail with packet and calendar file: as drafts unless a server is named. Only what changed since the last
            issue is sent, with the changes in words; trips that fail or could not be planned are held back. What was issued to whom is kept in a ledger beside OUT.

            It is safe to run it twice, and to stop it: the next run carries on. One exception is left: if it is killed in the moment between a server's taking a
            letter and our noting that, the letter is sent again with the same Message-ID, and it says so.

            Exit status: 0 all that was due is sent or drafted, 1 somebody's packet is not, 2 the input could not be used, 3 a fault of the program.

            Examples:
              tripbatch send out
              tripbatch send out --only RIM,SOR --by-hand
              tripbatch send out --smtp mail.your-operator.example:587 --user dispatch
              tripbatch send out --smtp localhost:25
            """)
        { run, draft, smtp, user, passwordFile, only, again, cancel, byHand, ledger, templates };
        command.SetAction(parsed =>
        {
            var server = parsed.GetValue(smtp);
            if (server is not null && (parsed.GetValue(draft) is not null || parsed.GetValue(byHand)))
                throw new InputException("--smtp sends, --draft and --by-hand write drafts; give one or the other.");
            if (server is null && (parsed.GetValue(user) is not null || parsed.GetValue(passwordFile) is not null))
                throw new InputException("--user and --password-file belong to --smtp.");
            var options = new SendOptions
            {
                Run = parsed.GetRequiredValue(run),
                Ledger = parsed.GetValue(ledger),
                Drafts = parsed.GetValue(draft),
                Target = server is null ? null : Target(server, parsed.GetValue(user), parsed.GetValue(passwordFile), interrupt),
                IsByHand = parsed.GetValue(byHand),
                Only = [.. SharedArguments.Names(parsed.GetValue(only))],
                Again = [.. SharedArguments.Names(parsed.GetValue(again))],
                Cancelled = [.. SharedArguments.Names(parsed.GetValue(cancel))],
                Templates = parsed.GetValue(templates),
                Waits = (why, left, pause) => terminal.Errors.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{why}; the {(left == 1 ? "letter that is left is" : $"{left} letters that are left are")} tried again in {pause.TotalSeconds:0} s.")),
            };
            var text = new SendText(terminal);
            using var said = interrupt.Register(
                () => terminal.Errors.WriteLine("Stopping when the letter at hand is done; Ctrl-C again stops at once, and the next run carries on."));
            return text.Report(options, SendRun.Run(options, text, SystemClock.Instance, interrupt), interrupt.IsCancellationRequested);
        });
        return command;
    }

    private static MailTarget Target(string server, string? user, string? passwordFile, CancellationToken interrupt)
    {
        if (MailTarget.Parse(server) is not { } target)
            throw new InputException($"--smtp {server}: a server such as mail.your-operator.example:587 was expected.");
        if (user is null) return target;
        var password = passwordFile is not null ? FirstLine(passwordFile, interrupt) : Environment.GetEnvironmentVariable(PasswordVariable);
        return string.IsNullOrEmpty(password)
            ? throw new InputException($"--user needs a password: in the environment variable {PasswordVariable}, or --password-file.")
            : target with { User = user, Password = password };
    }

    // It may be a pipe from a keeper of passwords, which asks a person first; one that nobody writes into must not hold the program for ever.
    private static string FirstLine(string path, CancellationToken interrupt)
    {
        try
        {
            return Task.Run(() => File.ReadLines(path).FirstOrDefault() ?? "", interrupt).WaitAsync(Patience, interrupt).GetAwaiter().GetResult();
        }
        catch (TimeoutException error)
        {
            throw new InputException(
                $"--password-file {path} cannot be read: nothing came out of it within {Patience.TotalSeconds.ToString("0", CultureInfo.InvariantCulture)} s.",
                error);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException($"--password-file {path} cannot be read: {error.Message}", error);
        }
    }
}
