using Batch.Post.Words;

namespace Batch.Post;

/// <summary>Compares the trips of a run with the ledger.</summary>
public static class TripRevisions
{
    /// <summary>The revisions of all trips of a run, by name. A trip that was flown before this run was made begins anew.</summary>
    /// <param name="week">The run.</param>
    /// <param name="ledger">What was issued.</param>
    public static ImmutableArray<TripRevision> Of(WeekRecord week, Ledger ledger)
    {
        var (issued, unsure) = (Told(week, ledger, LedgerOutcome.Issued), Told(week, ledger, LedgerOutcome.Unknown));
        return
        [
            .. week.Legs.GroupBy(leg => leg.Trip, StringComparer.OrdinalIgnoreCase).OrderBy(trip => trip.Key, StringComparer.Ordinal)
                .Select(trip => Numbered(
                    issued.Contains(trip.Key)
                        ? Compared(trip.Key, [.. trip], [.. issued[trip.Key]], week)
                        : new TripRevision { Trip = trip.Key, Number = 1 }, [.. trip], [.. unsure[trip.Key]])),
        ];
    }

    private static ILookup<string, (Instant At, IssuedLeg Leg)> Told(WeekRecord week, Ledger ledger, LedgerOutcome outcome) =>
        ledger.Packets.Where(packet => packet.Outcome == outcome)
        .SelectMany(packet => packet.Legs.Where(leg => !leg.IsHeld && leg.Facts.OnBlocks > week.MadeAt).Select(leg => (packet.At, Leg: leg)))
        .ToLookup(entry => entry.Leg.Facts.Trip, StringComparer.OrdinalIgnoreCase);

    // A number that may have reached somebody with another content is not given again.
    private static TripRevision Numbered(TripRevision trip, ImmutableArray<LegRecord> legs, ImmutableArray<(Instant At, IssuedLeg Leg)> unsure)
    {
        if (trip.Issued is not null && trip.Changes.IsEmpty) return trip;
        var highest = unsure.Select(entry => entry.Leg.TripRevision).DefaultIfEmpty(0).Max();
        if (highest < trip.Number) return trip;
        var now = legs.Select(leg => leg.Facts).OfType<LegFacts>().GroupBy(facts => facts.Leg).ToDictionary(leg => leg.Key, leg => leg.Last());
        var isSame = unsure.Where(entry => entry.Leg.TripRevision == highest)
            .All(entry => now.TryGetValue(entry.Leg.Facts.Leg, out var facts) && facts == entry.Leg.Facts);
        return trip with { Number = isSame ? highest : highest + 1 };
    }

    private static TripRevision Compared(string trip, ImmutableArray<LegRecord> legs, ImmutableArray<(Instant At, IssuedLeg Leg)> entries, WeekRecord week)
    {
        var number = entries.Max(entry => entry.Leg.TripRevision);
        var latest = entries.Where(entry => entry.Leg.TripRevision == number).ToImmutableArray();
        var before = latest.GroupBy(entry => entry.Leg.Facts.Leg).ToDictionary(leg => leg.Key, leg => leg.Last().Leg.Facts);
        var changes = new List<string>();
        foreach (var leg in legs.Where(leg => leg.Facts is null || leg.Facts.OnBlocks > week.MadeAt).OrderBy(leg => leg.Number))
        {
            if (leg.Facts is not { } now) changes.Add($"{leg.Key}: cannot be planned now. {leg.Trouble}");
            else if (!before.TryGetValue(leg.Number, out var was)) changes.Add($"{leg.Key}: {LegWords.Added(now)}.");
            else if (LegChanges.Between(was, now, week.Weights) is { IsEmpty: false } said) changes.Add($"{leg.Key}: {string.Join(", ", said)}.");
        }

        var kept = legs.Select(leg => leg.Number).ToHashSet();
        if (week.IsWhole && !week.Legs.Any(leg => leg.IsNameless))
            changes.AddRange(before.Values.Where(was => !kept.Contains(was.Leg)).OrderBy(was => was.Leg)
                .Select(was => $"{was.Key}: {LegWords.Cancelled(was)}."));
        return new TripRevision
        {
            Trip = trip,
            Number = changes.Count > 0 ? number + 1 : number,
            Issued = number,
            IssuedAt = latest.Min(entry => entry.At),
            Changes = [.. changes]
        };
    }
}
