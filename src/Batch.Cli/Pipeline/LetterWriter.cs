using System.Globalization;
using System.Text.Json;
using Batch.Post;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>Writes the letters of a run.</summary>
internal sealed class LetterWriter(string folder, WeekPost post, JsonElement run, SheetRenderer renderer, Instant now)
{
    private readonly ImmutableDictionary<string, CrewLetter> _letters = CrewLetters.Of(run)
        .ToImmutableDictionary(letter => letter.Code, StringComparer.OrdinalIgnoreCase);
    private readonly ImmutableHashSet<string> _held = post.Record.HeldTrips.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>The letter to one person.</summary>
    /// <param name="issue">What the person is told.</param>
    /// <param name="isAgain">Whether the person gets it once more, so that it needs a Message-ID of its own.</param>
    public WrittenLetter Write(CrewIssue issue, bool isAgain)
    {
        if (MailAddress.Complaint(issue.Person.Mail) is { Length: > 0 } complaint) return None(issue, $"the mail address in the Crew sheet {complaint}");
        if (Attachments(issue) is not { } files) return None(issue, Missing(SheetPaths.Packet(issue.Person.Code)));
        var mail = MailBody.Render(renderer, Letter(issue) with { Attachments = [.. files.Select(file => file.Name)] });
        if (!mail.IsRendered) return new WrittenLetter(issue, null, null, "", mail.Problems);
        var packet = Packet(issue, isAgain);
        var letter = new MailLetter
        {
            FromName = post.Record.Operator,
            From = post.Record.OperatorMail,
            ToName = issue.Person.Name,
            To = issue.Person.Mail,
            Subject = mail.Subject,
            Text = mail.Text,
            Html = mail.Html,
            Attachments = files,
            MessageId = packet.MessageId,
            At = now,
        };
        return new WrittenLetter(issue, packet, letter, "", []);
    }

    /// <summary>Why there is no packet: a run without paper holds its page, a run that could not write it holds neither.</summary>
    private string Missing(string packet) => File.Exists(InRun(packet + ".html"))
        ? $"{packet}.pdf is not in the run; run again without --no-pdf"
        : $"{packet} could not be written by the run; run again, which says why";

    private string InRun(string path) => Path.Combine(folder, path.Replace('/', Path.DirectorySeparatorChar));

    private static WrittenLetter None(CrewIssue issue, string why) => new(issue, null, null, why, []);

    private CrewLetter Letter(CrewIssue issue)
    {
        var code = issue.Person.Code;
        var letter = _letters.GetValueOrDefault(code) ?? _letters.Values.First() with { Code = code, Name = "", Mail = issue.Person.Mail, Legs = [] };
        var reasons = issue.Legs.ToDictionary(leg => leg.Facts.Key, leg => leg.Facts.Override, StringComparer.OrdinalIgnoreCase);
        return letter with
        {
            Revision = issue.Revision,
            Since = issue.Since?.Revision,
            Unsure = issue.Unsure,
            Changes = issue.Changes,
            Held = issue.Held,
            Legs = [.. letter.Legs.Where(leg => !_held.Contains(leg.Trip)).Select(leg => leg with { OverrideReason = reasons.GetValueOrDefault(leg.Key, "") })],
        };
    }

    private LedgerPacket Packet(CrewIssue issue, bool isAgain)
    {
        var domain = post.Record.OperatorMail[(post.Record.OperatorMail.IndexOf('@', StringComparison.Ordinal) + 1)..];
        var before = isAgain ? post.Ledger.Of(issue.Person.Code).Count(packet => packet.Outcome == LedgerOutcome.Issued) : 0;
        return new LedgerPacket
        {
            Person = issue.Person.Code,
            To = issue.Person.Mail,
            Revision = issue.Revision,
            Fingerprint = issue.Fingerprint,
            MessageId = string.Create(CultureInfo.InvariantCulture, $"{issue.Fingerprint}.{issue.Revision}.{before}@{domain}"),
            At = now,
            Outcome = LedgerOutcome.Begun,
            Legs = issue.Legs,
            Dropped = issue.Dropped,
        };
    }

    /// <summary>The files of the letter; null where the packet is missing.</summary>
    private ImmutableArray<MailAttachment>? Attachments(CrewIssue issue)
    {
        var code = SheetName.Of(issue.Person.Code);
        var files = ImmutableArray.CreateBuilder<MailAttachment>();
        if (issue.Legs.Any(leg => !leg.IsHeld))
        {
            var packet = InRun(SheetPaths.Packet(issue.Person.Code) + ".pdf");
            if (!File.Exists(packet)) return null;
            files.Add(MailAttachment.Pdf($"packet-{code}.pdf", File.ReadAllBytes(packet)));
        }

        if (issue.Legs.Any(leg => !leg.IsHeld) || !issue.Dropped.IsEmpty)
            files.Add(MailAttachment.Calendar($"flights-{code}.ics", CalendarMethod.Publish, CalendarEvents.File(post.Record, issue)));
        if (CalendarEvents.Cancellation(post.Record, issue) is { } cancelled)
            files.Add(MailAttachment.Calendar($"cancelled-{code}.ics", CalendarMethod.Cancel, cancelled));
        return files.ToImmutable();
    }
}
