using System.Text.Json;
using Batch.Post;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>A run held against the ledger of what was issued.</summary>
/// <param name="Record">The run.</param>
/// <param name="Ledger">The ledger.</param>
/// <param name="Issues">What everybody is to be told.</param>
/// <param name="Trips">How the trips stand to what was issued.</param>
public sealed record WeekPost(WeekRecord Record, Ledger Ledger, ImmutableArray<CrewIssue> Issues, ImmutableArray<TripRevision> Trips)
{
    private const string Ending = "-issued.jsonl";

    /// <summary>The ledger that stands beside a folder of a run where no other is named.</summary>
    /// <param name="folder">The folder.</param>
    public static string LedgerBeside(string folder) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Ending;

    /// <summary>Compares.</summary>
    /// <param name="run">The file <c>run.json</c>.</param>
    /// <param name="ledger">Path of the ledger.</param>
    /// <exception cref="InputException">The ledger cannot be used.</exception>
    public static WeekPost Of(byte[] run, string ledger)
    {
        try
        {
            using var json = JsonDocument.Parse(run);
            return Of(json.RootElement, Ledger.Read(ledger), ImmutableHashSet<string>.Empty);
        }
        catch (LedgerException error)
        {
            throw new InputException(error.Message, error);
        }
    }

    /// <summary>Compares with a ledger that was read.</summary>
    /// <param name="run">Root of <c>run.json</c>.</param>
    /// <param name="ledger">The ledger.</param>
    /// <param name="cancelled">Trips to be taken back although the run does not speak of their days, case ignored.</param>
    public static WeekPost Of(JsonElement run, Ledger ledger, IReadOnlySet<string> cancelled)
    {
        var record = WeekRecord.Of(run);
        return new WeekPost(record, ledger, CrewIssues.Of(record, ledger, cancelled), TripRevisions.Of(record, ledger));
    }

    /// <summary>The trips that were issued, for the sheets.</summary>
    public ImmutableSortedDictionary<string, SheetRevision> Revisions => Trips.Where(trip => trip.Issued is not null).ToImmutableSortedDictionary(
        trip => trip.Trip,
        trip => new SheetRevision { Number = trip.Number, Issued = trip.Issued ?? 0, IssuedAt = trip.IssuedAt ?? Instant.MinValue, Changes = trip.Changes },
        StringComparer.OrdinalIgnoreCase);

    /// <summary>Writes the calendar files.</summary>
    /// <param name="folder">The folder of the run.</param>
    public void WriteCalendars(OutputFolder folder)
    {
        foreach (var issue in Issues.Where(issue => issue.Legs.Any(leg => !leg.IsHeld) || !issue.Dropped.IsEmpty))
            folder.Write(SheetPaths.Calendar(issue.Person.Code) + ".ics", CalendarEvents.File(Record, issue));
    }
}
