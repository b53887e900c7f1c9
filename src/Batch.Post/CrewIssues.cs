using Batch.Post.Reading;

namespace Batch.Post;

/// <summary>Compares a run with the ledger.</summary>
public static class CrewIssues
{
    /// <summary>What everybody is to be told now, by code: those who fly in the week, and those who hold legs that they no longer fly.</summary>
    /// <param name="week">The run.</param>
    /// <param name="ledger">What was issued.</param>
    /// <param name="cancelled">Trips to be taken back although the run does not speak of their days, case ignored.</param>
    public static ImmutableArray<CrewIssue> Of(WeekRecord week, Ledger ledger, IReadOnlySet<string> cancelled)
    {
        var trips = TripRevisions.Of(week, ledger).ToImmutableDictionary(trip => trip.Trip, StringComparer.OrdinalIgnoreCase);
        var known = week.Persons.Select(person => person.Code).ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);
        var gone = ledger.Packets.Where(packet => packet.Outcome == LedgerOutcome.Issued && !known.Contains(packet.Person))
            .GroupBy(packet => packet.Person, StringComparer.OrdinalIgnoreCase)
            .Select(packets => new PersonRecord { Code = packets.Key, Mail = packets.Last().To });
        return
        [
            .. week.Persons.Concat(gone).OrderBy(person => person.Code, StringComparer.OrdinalIgnoreCase)
                .Select(person => new PersonComparison(week, ledger, trips, cancelled, person).Issue()),
        ];
    }
}
