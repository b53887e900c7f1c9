using Batch.Post.Words;

namespace Batch.Post.Reading;

/// <summary>Holds what a person is to fly against what the person was told.</summary>
internal sealed class PersonComparison(
    WeekRecord week, Ledger ledger, ImmutableDictionary<string, TripRevision> trips, IReadOnlySet<string> cancelled, PersonRecord person)
{
    private readonly LedgerPacket? _since = ledger.LastIssued(person.Code);
    private readonly ImmutableHashSet<string> _held = week.HeldTrips.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);
    private readonly List<IssuedLeg> _legs = [];
    private readonly List<IssuedLeg> _dropped = [];
    private readonly HashSet<string> _told = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<string> _changes = [];
    private readonly List<string> _doubts = [];
    private readonly LedgerPacket? _open = Open(ledger, person.Code);

    /// <summary>The comparison.</summary>
    public CrewIssue Issue()
    {
        var before = (_since?.Legs ?? []).Where(leg => leg.Facts.OnBlocks > week.MadeAt).ToDictionary(leg => leg.Facts.Key, StringComparer.OrdinalIgnoreCase);
        foreach (var leg in week.Legs.Where(leg => leg.IsFlownBy(person.Code) && !_held.Contains(leg.Trip)))
        {
            if (leg.Facts is { } facts) Tell(facts, leg.FromName, before.GetValueOrDefault(facts.Key));
        }

        var told = _legs.Select(leg => leg.Facts.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var leg in before.Values.Where(leg => !told.Contains(leg.Facts.Key))) Miss(leg);
        var known = _changes.Count;
        if (_open is { } open) TakeBack(open, before.Keys.Concat(told).ToHashSet(StringComparer.OrdinalIgnoreCase));
        _legs.Sort((a, b) => a.Facts.OffBlocks != b.Facts.OffBlocks
            ? a.Facts.OffBlocks.CompareTo(b.Facts.OffBlocks)
            : string.CompareOrdinal(a.Facts.Key, b.Facts.Key));
        if (_since is not null) Order(before);
        if (_since is not null && _changes.Count == 0 && _open is { } other && !Tells(other))
            _changes.Add($"Revision {Text(other.Revision)} may have reached you; it does not hold.");
        return Numbered(new CrewIssue
        {
            Person = person,
            Since = _since,
            Revision = 1,
            Legs = [.. _legs],
            Dropped = [.. _dropped],
            Changes = [.. _changes.Skip(_since is null ? known : 0)],
            Unsure = [.. Unsure()],
            Held = [.. week.Legs.Where(leg => leg.IsFlownBy(person.Code) && _held.Contains(leg.Trip)).Select(leg => leg.Trip)
                .Distinct(StringComparer.OrdinalIgnoreCase).Select(Held)],
            Doubts = [.. _doubts],
        });
    }

    // The last packet that may have reached the person after the last one that surely did.
    private static LedgerPacket? Open(Ledger ledger, string person) =>
        ledger.Of(person).LastOrDefault(packet => packet.Outcome == LedgerOutcome.Unknown && packet.Revision > (ledger.LastIssued(person)?.Revision ?? 0));

    private IEnumerable<int> Unsure() => _open is null ? [] : ledger.Of(person.Code)
        .Where(packet => packet.Outcome == LedgerOutcome.Unknown && packet.Revision > (_since?.Revision ?? 0)).Select(packet => packet.Revision).Distinct()
            .Order();

    // Legs of a packet that may have arrived and that nothing speaks of now.
    private void TakeBack(LedgerPacket open, HashSet<string> spoken)
    {
        if (!week.IsWhole || week.Legs.Any(leg => leg.IsNameless)) return;
        foreach (var leg in open.Legs.Where(
            leg => !leg.IsHeld && leg.Facts.OnBlocks > week.MadeAt && !spoken.Contains(leg.Facts.Key) && !_held.Contains(leg.Facts.Trip) && IsInDays(leg)))
            Drop(leg, $"{LegWords.Cancelled(leg.Facts)}, in case revision {Text(open.Revision)} reached you");
    }

    private bool Tells(LedgerPacket packet) => packet.Legs.Select(leg => (leg.Facts, leg.IsHeld)).SequenceEqual(_legs.Select(leg => (leg.Facts, leg.IsHeld)));

    private static string Text(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    // A number that may have reached the person is not given to another content; one that surely did not is free.
    private CrewIssue Numbered(CrewIssue issue)
    {
        if (_since is not null && issue.Changes.IsEmpty) return issue with { Revision = _since.Revision };
        var next = issue with
        {
            Revision = 1 + ledger.Of(person.Code).Where(packet => packet.Outcome == LedgerOutcome.Issued).Select(packet => packet.Revision)
            .DefaultIfEmpty(0).Max()
        };
        var open = ledger.Of(person.Code).Where(packet => packet.Outcome == LedgerOutcome.Unknown && packet.Revision >= next.Revision)
            .MaxBy(packet => packet.Revision);
        if (open is null) return next;
        var same = next with { Revision = open.Revision };
        return same.Fingerprint == open.Fingerprint
            ? same with { Unsure = [.. same.Unsure.Where(revision => revision < open.Revision)] }
            : next with { Revision = open.Revision + 1, Legs = After(open, next.Legs), Dropped = After(open, next.Dropped) };
    }

    // Legs whose events outrank those of a packet that may have arrived.
    private static ImmutableArray<IssuedLeg> After(LedgerPacket open, ImmutableArray<IssuedLeg> legs)
    {
        var told = open.Legs.Concat(open.Dropped).ToDictionary(leg => leg.Uid, leg => leg.Sequence, StringComparer.Ordinal);
        return [.. legs.Select(leg => told.TryGetValue(leg.Uid, out var sequence) && sequence >= leg.Sequence ? leg with { Sequence = sequence + 1 } : leg)];
    }

    private void Tell(LegFacts now, string place, IssuedLeg? was)
    {
        Instant? report = person.Reports.TryGetValue(now.Key, out var known) ? known : null;
        var revision = trips[now.Trip].Number;
        if (was is null)
        {
            var uid = CalendarEvents.Uid(person.Code, now, week.OperatorMail);
            var used = ledger.Of(person.Code).Where(packet => packet.Outcome == LedgerOutcome.Issued).SelectMany(packet => packet.Legs.Concat(packet.Dropped))
                .Where(leg => leg.Uid == uid).Select(leg => leg.Sequence + 1).DefaultIfEmpty(0).Max();
            _legs.Add(new IssuedLeg { Facts = now, Uid = uid, Sequence = used, TripRevision = revision, Place = place, Report = report });
            _changes.Add($"{now.Key}: {LegWords.Added(now)}.");
            return;
        }

        var said = LegChanges.Between(was.Facts, now, week.Weights).ToList();
        if (was.IsHeld) said.Insert(0, "no longer held back");
        if (was.Report is { } reported && report is { } reports && reported != reports)
            said.Add($"report {LocalTimes.DayAndClock(LocalTimes.At(reported, was.Facts.FromZone))} to {LocalTimes.DayAndClock(LocalTimes.At(reports, now.FromZone))}");
        var leg = new IssuedLeg { Facts = now, Uid = was.Uid, Sequence = was.Sequence, TripRevision = revision, Place = place, Report = report };
        if (CalendarEvents.Of(leg, person.Code) != CalendarEvents.Of(was with { IsHeld = false }, person.Code)) leg = leg with { Sequence = was.Sequence + 1 };
        _legs.Add(leg);
        if (said.Count > 0) _changes.Add($"{now.Key}: {string.Join(", ", said)}.");
    }

    // A leg told before that the run does not tell again.
    private void Miss(IssuedLeg was)
    {
        var key = was.Facts.Key;
        var now = week.Legs.FirstOrDefault(leg => string.Equals(leg.Key, key, StringComparison.OrdinalIgnoreCase));
        if (cancelled.Contains(was.Facts.Trip)) Drop(was, LegWords.Cancelled(was.Facts));
        else if (now is { Facts: not null } && !now.IsFlownBy(person.Code)) Drop(was, $"no longer yours, was {LegWords.Journey(was.Facts)}");
        else if (_held.Contains(was.Facts.Trip)) Hold(was);
        else if (!week.IsWhole) _legs.Add(was);
        else if (week.Legs.Any(leg => leg.IsNameless))
            Keep(was, "is not found in the book, but a row there could not be read; nothing is taken back before it can be");
        else if (!IsInDays(was))
            Keep(was, $"was issued and is not in this run, but neither are its days; it stands. To take it back: --cancel {was.Facts.Trip}");
        else Drop(was, LegWords.Cancelled(was.Facts));
    }

    private void Drop(IssuedLeg was, string said)
    {
        _dropped.Add(was with { Sequence = was.Sequence + 1, IsHeld = false });
        _changes.Add($"{was.Facts.Key}: {said}.");
    }

    private void Hold(IssuedLeg was)
    {
        _legs.Add(was with { IsHeld = true });
        // The trip is held whole, whatever leg is the cause.
        if (!was.IsHeld && _told.Add(was.Facts.Trip))
            _changes.Add($"{was.Facts.Trip}: held back. {Why(was.Facts.Trip)} Do not fly it by the sheet that you hold.");
    }

    private void Keep(IssuedLeg was, string said)
    {
        _legs.Add(was);
        _doubts.Add($"{was.Facts.Key} {said}.");
    }

    private bool IsInDays(IssuedLeg was)
    {
        var days = week.Legs.Select(leg => leg.OffBlocks?.InUtc().Date).OfType<LocalDate>().ToArray();
        var day = was.Facts.OffBlocks.InUtc().Date;
        return days.Length > 0 && day >= days.Min() && day <= days.Max();
    }

    private string Held(string trip) => $"{trip}: {Why(trip)}";

    private string Why(string trip)
    {
        var legs = week.Legs.Where(leg => leg.IsHeld && string.Equals(leg.Trip, trip, StringComparison.OrdinalIgnoreCase)).ToArray();
        return string.Join(" ", legs.Select(leg => Named(leg) + (leg.Facts is { } facts ? " fails " + facts.Failing : " could not be planned")
            + (leg.Trouble.Length > 0 ? ": " + leg.Trouble : ".")));
    }

    private static string Named(LegRecord leg) => leg.Number > 0
        ? "Leg " + leg.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)
        : leg.Row > 0 ? "The leg in row " + leg.Row.ToString(System.Globalization.CultureInfo.InvariantCulture) : "A leg whose number could not be read";

    private void Order(Dictionary<string, IssuedLeg> before)
    {
        var now = _legs.Select(leg => leg.Facts.Key).Where(before.ContainsKey).ToArray();
        var was = now.OrderBy(key => before[key].Facts.OffBlocks).ThenBy(key => key, StringComparer.Ordinal).ToArray();
        if (!now.SequenceEqual(was, StringComparer.Ordinal)) _changes.Add($"Order of your legs: {string.Join(", ", was)} to {string.Join(", ", now)}.");
    }
}
