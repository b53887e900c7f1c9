using System.Globalization;
using Batch.Cli.Pipeline;
using Batch.Post;

namespace Batch.Cli.Commands;

/// <summary>What the crews are to be told, as text. Persons are named by their codes.</summary>
internal sealed class PostText(Terminal terminal)
{
    private const int MostLines = 12;
    private const int MostTrips = 40;

    /// <summary>Writes what changed since the last issue in a few lines; nothing where nothing was issued.</summary>
    /// <param name="post">The comparison.</param>
    public void Changes(WeekPost post)
    {
        var held = post.Record.HeldTrips.Order(StringComparer.Ordinal).ToArray();
        var more = held.Length > MostTrips ? string.Create(CultureInfo.InvariantCulture, $" and {held.Length - MostTrips} more") : "";
        if (held.Length > 0) terminal.WriteSentence($"Held back from the crews, because a leg fails or could not be planned: {string.Join(", ", held.Take(MostTrips))}{more}. A reason in the column Override of the Legs sheet releases a trip.");
        if (post.Ledger.Packets.IsEmpty) return;
        var due = post.Issues.Where(issue => issue.IsDue).ToArray();
        var changed = due.Count(issue => issue.Since is not null);
        var unchanged = post.Issues.Count(issue => issue.Since is not null && !issue.IsDue);
        terminal.Output.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"Since the last issue: {changed} changed, {due.Length - changed} new, {unchanged} unchanged."));
        var lines = due.SelectMany(issue => issue.Changes.Select(
            change => string.Create(CultureInfo.InvariantCulture, $"  {issue.Person.Code}, revision {issue.Revision}: {change}"))).ToArray();
        foreach (var line in lines.Take(lines.Length > MostLines ? MostLines - 1 : MostLines)) terminal.Output.WriteLine(line);
        if (lines.Length > MostLines) terminal.Output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  and {lines.Length - MostLines + 1} more."));
        Doubts(post.Issues);
    }

    /// <summary>Writes what could not be decided.</summary>
    /// <param name="issues">What everybody is to be told.</param>
    public void Doubts(IEnumerable<CrewIssue> issues)
    {
        foreach (var issue in issues)
        {
            foreach (var doubt in issue.Doubts) terminal.Output.WriteLine($"  {issue.Person.Code}: {doubt}");
        }
    }
}
