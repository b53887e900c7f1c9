using System.Globalization;
using Batch.Cli.Pipeline;
using Batch.Post;
using NodaTime.Text;

namespace Batch.Cli.Commands;

/// <summary>What became of the packets, as text. Persons are named by their codes, never by name or address.</summary>
internal sealed class SendText(Terminal terminal) : IProgress<Delivery>
{
    private static readonly InstantPattern Minute = InstantPattern.CreateWithInvariantCulture("d MMM HH:mm'Z'");

    /// <summary>Writes what became of a letter as soon as it is decided.</summary>
    /// <param name="value">The letter.</param>
    public void Report(Delivery value)
    {
        var what = value.Kind switch
        {
            DeliveryKind.Sent => "sent",
            DeliveryKind.Refused => $"REFUSED by the server: {value.Text}",
            DeliveryKind.NotSent => $"NOT SENT: {value.Text}",
        };
        Line(value.Packet.Person, value.Packet.Revision, what);
        if (value.MayComeTwice && value.Kind == DeliveryKind.Sent)
            Line("", "an earlier try was cut off before the server's answer: this mail may come twice, with the same Message-ID");
        if (value.MayComeTwice && value.Kind != DeliveryKind.Sent) Line("", "an earlier try was cut off before the server's answer: it may have arrived");
    }

    /// <summary>Writes the rest and gives the exit status.</summary>
    /// <param name="options">What was asked for.</param>
    /// <param name="report">What became of it.</param>
    /// <param name="isStopped">Whether the user stopped it.</param>
    public int Report(SendOptions options, SendReport report, bool isStopped)
    {
        foreach (var problem in report.TemplateProblems) terminal.Errors.WriteLine(problem);
        if (!report.TemplateProblems.IsEmpty)
        {
            terminal.Errors.WriteLine("Nothing was sent.");
            return ExitStatus.BadInput;
        }

        foreach (var issue in report.Issues) Issue(issue, report);
        new PostText(terminal).Doubts(report.Issues);
        if (report.Age > Duration.FromDays(1)) terminal.Output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Caution: the run was made {report.Age.TotalDays:0.0} days ago; weather and books may have changed since."));
        Counts(options, report, isStopped);
        var isAllDone = report.Unfit.IsEmpty && report.Deliveries.All(delivery => delivery.Kind == DeliveryKind.Sent);
        return isAllDone ? ExitStatus.AllPass : ExitStatus.SomeFail;
    }

    private void Issue(CrewIssue issue, SendReport report)
    {
        var code = issue.Person.Code;
        var delivery = report.Deliveries.FirstOrDefault(delivery => string.Equals(delivery.Packet.Person, code, StringComparison.OrdinalIgnoreCase));
        if (report.Drafts.TryGetValue(code, out var path)) Line(code, issue.Revision, "draft " + path);
        else if (report.Unfit.TryGetValue(code, out var why)) Line(code, issue.Revision, $"NOT SENT: {why}");
        else if (delivery is null && issue.Since is { } since) Line(code, since.Revision, $"unchanged since {Minute.Format(since.At)}, not sent again");
        else if (delivery is null) Line(code, issue.Held.IsEmpty ? "no flights" : "nothing to send");
        if (delivery is null && issue.IsDue)
        {
            foreach (var change in issue.Changes) Line("", change);
        }

        if (!issue.Held.IsEmpty) Line(delivery is null ? "" : code, $"held back: {string.Join(" ", issue.Held)}");
    }

    private void Counts(SendOptions options, SendReport report, bool isStopped)
    {
        var sent = report.Deliveries.Count(delivery => delivery.Kind == DeliveryKind.Sent);
        var failed = report.Unfit.Count + report.Deliveries.Length - sent;
        var ledger = options.Ledger ?? WeekPost.LedgerBeside(options.Run);
        var open = failed > 0 ? string.Create(CultureInfo.InvariantCulture, $", {failed} not; the same command again tries those") : "";
        if (options.Target is not null)
            terminal.Output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{sent} sent{open}. What was issued to whom is in {ledger}."));
        else if (options.IsByHand) terminal.Output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{report.Drafts.Count} {(report.Drafts.Count == 1 ? "draft" : "drafts")} written and noted in {ledger} as sent by you{open}."));
        else terminal.Output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{report.Drafts.Count} {(report.Drafts.Count == 1 ? "draft" : "drafts")} written{open}. Nothing was sent, and nothing is noted as issued: --smtp sends, --by-hand notes that you send them."));
        if (isStopped) terminal.Output.WriteLine("Stopped by you; what was sent is noted, and the same command carries on.");
    }

    private void Line(string code, int revision, string text) => Line(code, string.Create(CultureInfo.InvariantCulture, $"revision {revision}  {text}"));

    private void Line(string code, string text) => terminal.Output.WriteLine($"{code,-6}{text}");
}
