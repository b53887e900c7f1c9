using System.Text.Json;
using Batch.Post;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>Sends the packets of a finished run, or writes them as drafts.</summary>
public static class SendRun
{
    private const string ByHand = "drafted; noted as sent by hand";

    /// <summary>Compares the run with the ledger and sends what is due.</summary>
    /// <param name="options">What to send.</param>
    /// <param name="progress">Told of each letter whose fate is decided.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="stop">Stops between letters; the one at hand is finished first.</param>
    /// <exception cref="InputException">The run, the ledger, the templates or what was asked for cannot be used.</exception>
    public static SendReport Run(SendOptions options, IProgress<Delivery> progress, IClock clock, CancellationToken stop)
    {
        var templates = TemplateReading.Of(options.Templates, "--templates");
        try
        {
            using var run = Record(options.Run);
            var renderer = new SheetRenderer(CrewLetters.Templates(templates, run.RootElement));
            var path = options.Ledger ?? WeekPost.LedgerBeside(options.Run);
            if (options.Target is null && !options.IsByHand) return Sent(options, run.RootElement, Ledger.Read(path), null, renderer, progress, clock, stop);
            using var pen = LedgerPen.Open(path, clock);
            return Sent(options, run.RootElement, pen.Ledger, pen, renderer, progress, clock, stop);
        }
        catch (LedgerException error)
        {
            throw new InputException(error.Message, error);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException($"{options.Run} cannot be read: {error.Message}", error);
        }
    }

    private static SendReport Sent(SendOptions options, JsonElement run, Ledger ledger, LedgerPen? pen, SheetRenderer renderer, IProgress<Delivery> progress,
        IClock clock, CancellationToken stop)
    {
        var post = WeekPost.Of(run, ledger, options.Cancelled);
        Known("--only", options.Only, post.Issues.Select(issue => issue.Person.Code));
        Known("--again", options.Again, post.Issues.Where(issue => issue.Since is not null).Select(issue => issue.Person.Code));
        Known("--cancel", options.Cancelled, ledger.Packets.SelectMany(packet => packet.Legs).Select(leg => leg.Facts.Trip));
        ImmutableArray<CrewIssue> issues = [.. post.Issues.Where(issue => options.Only.IsEmpty || options.Only.Contains(issue.Person.Code))];
        var report = new SendReport(issues, [], ImmutableSortedDictionary<string, string>.Empty, ImmutableSortedDictionary<string, string>.Empty, [],
            clock.GetCurrentInstant() - post.Record.MadeAt);
        var due = issues.Where(issue => issue.IsDue || options.Again.Contains(issue.Person.Code)).ToArray();
        if (due.Length == 0) return report;
        if (MailAddress.Complaint(post.Record.OperatorMail) is { Length: > 0 } complaint)
            throw new InputException($"The sender address {complaint}: give it as 'Mail from' in the Operator sheet and run again.");

        var writer = new LetterWriter(options.Run, post, run, renderer, clock.GetCurrentInstant());
        var letters = due.Select(issue => writer.Write(issue, options.Again.Contains(issue.Person.Code))).ToArray();
        report = report with
        {
            Unfit = letters.Where(letter => letter.Unfit.Length > 0)
                .ToImmutableSortedDictionary(letter => letter.Issue.Person.Code, letter => letter.Unfit, StringComparer.OrdinalIgnoreCase),
            TemplateProblems = [.. letters.SelectMany(letter => letter.Problems).Distinct()],
        };
        if (!report.TemplateProblems.IsEmpty) return report;
        (LedgerPacket Packet, MailLetter Letter)[] ready = [.. letters.Where(letter => letter.Letter is not null)
            .Select(letter => (letter.Packet!, letter.Letter!))];
        if (options.Target is { } target && pen is not null)
            return report with { Deliveries = new Postman(target, pen, options.Pauses) { Waits = options.Waits }.Send(ready, progress, stop) };
        return report with { Drafts = Draft(options, ready, pen) };
    }

    private static ImmutableSortedDictionary<string, string> Draft(
        SendOptions options, IEnumerable<(LedgerPacket Packet, MailLetter Letter)> letters, LedgerPen? pen)
    {
        var folder = options.Drafts ?? Path.Combine(options.Run, "drafts");
        var written = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.OrdinalIgnoreCase);
        try
        {
            Directory.CreateDirectory(folder);
            foreach (var (packet, letter) in letters)
            {
                var path = Path.Combine(folder,
                    $"{SheetName.Of(packet.Person)}-revision-{packet.Revision.ToString(System.Globalization.CultureInfo.InvariantCulture)}.eml");
                File.WriteAllBytes(path, MailMessage.Draft(letter));
                written[packet.Person] = path;
                pen?.Begin(packet);
                pen?.Issue(packet.MessageId, ByHand);
            }
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException($"{folder} cannot be written: {error.Message}", error);
        }

        return written.ToImmutable();
    }

    private static JsonDocument Record(string folder)
    {
        var path = Path.Combine(folder, SheetPaths.Record);
        if (!File.Exists(path))
            throw new InputException($"{folder} holds no run ({SheetPaths.Record} is not there); make one with 'tripbatch run BOOK... --out {folder}'.");
        JsonDocument? json = null;
        try
        {
            // A pipe has no length, and opening it would wait for whoever writes into it.
            if ((File.ResolveLinkTarget(path, returnFinalTarget: true) ?? new FileInfo(path)) is FileInfo { Length: 0 })
                throw new InputException($"{path} is empty, or is no file (a pipe or a device); run again.");
            json = JsonDocument.Parse(File.ReadAllBytes(path));
            WeekRecord.Of(json.RootElement);
            return json;
        }
        catch (Exception error) when (error is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            json?.Dispose();
            throw new InputException($"{path} is not the record of a run by this version; run again.", error);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException($"{path} cannot be read: {error.Message}", error);
        }
    }

    private static void Known(string option, IEnumerable<string> asked, IEnumerable<string> known)
    {
        var all = known.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);
        if (asked.Where(name => !all.Contains(name)).Order(StringComparer.Ordinal).FirstOrDefault() is { } name)
            throw new InputException($"{option} {name}: {(option == "--only" ? "nobody of that code flies in this run" : "nothing of that name was issued")}.{Meant.Question(name, all)}");
    }
}
