using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>An earlier or later departure, in steps of 15 minutes up to six hours: this leg alone, else with the legs of the trip that it pushes.</summary>
internal sealed class OtherTime : IRemedyKind
{
    private const int StepMinutes = 15;
    private const int MostMinutes = 360;
    private const int ShortMinutes = 60;

    /// <inheritdoc/>
    public int Disruption => Disruptions.ShortTime;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("ADM-04", "ADM-07", "ACFT-04", "ALT-01", "ALT-02", "ALT-03", "ALT-04", "CREW-01", "CREW-02",
        "CREW-04", "CREW-08", "CREW-11", "ENR-04", "ENR-06", "ENR-07", "FUEL-02", "FUEL-09", "PERF-");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure, trials), failure.Check, looksAlone: false);

    private static IEnumerable<WeekEdit> Edits(Failure failure, Trials trials)
    {
        for (var minutes = StepMinutes; minutes <= MostMinutes; minutes += StepMinutes)
        {
            foreach (var by in new[] { minutes, -minutes })
            {
                if (Moved(failure, [failure.Leg], by) is not { } alone || !trials.PassesAlone(alone, failure.Check))
                {
                    continue;
                }

                yield return alone;
                var pushed = failure.Trip.Where(leg => by > 0 ? leg.OffBlocks >= failure.Leg.OffBlocks : leg.OffBlocks <= failure.Leg.OffBlocks)
                    .ToImmutableArray();
                if (pushed.Length > 1 && Moved(failure, pushed, by) is { } together)
                {
                    yield return together;
                }
            }
        }
    }

    private static WeekEdit? Moved(Failure failure, ImmutableArray<Leg> legs, int byMinutes)
    {
        var by = Duration.FromMinutes(byMinutes);
        var (hours, rest) = Math.DivRem(Math.Abs(byMinutes), 60);
        var amount = string.Join(" ", new[] { hours > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{hours} h") : "",
            rest > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{rest} min") : "" }.Where(part => part.Length > 0));
        var others = legs.Length == 1 ? "" : $" with {string.Join(", ", legs.Where(leg => leg.Key != failure.Leg.Key).Select(leg => leg.Key))}";
        var edit = new WeekEdit($"Leave {amount} {(byMinutes > 0 ? "later" : "earlier")}{others}",
            Math.Abs(byMinutes) <= ShortMinutes ? Disruptions.ShortTime : Disruptions.People);
        foreach (var leg in legs)
        {
            if (!failure.Ground.Input.Airports.TryGetValue(leg.From, out var from) || Moved(edit, leg, from.Zone, by) is not { } moved)
            {
                return null;
            }

            edit = moved;
        }

        return edit;
    }

    /// <summary>The change with a leg moved; null where the new time does not exist, or comes twice, at its airport.</summary>
    private static WeekEdit? Moved(WeekEdit edit, Leg leg, DateTimeZone zone, Duration by)
    {
        var isUtc = leg.OffBlocksLocal == leg.OffBlocks.InUtc().LocalDateTime && zone.GetUtcOffset(leg.OffBlocks) != Offset.Zero;
        var at = leg.OffBlocks + by;
        var written = isUtc ? at.InUtc().LocalDateTime : at.InZone(zone).LocalDateTime;
        if (!isUtc && zone.MapLocal(written).Count != 1)
        {
            return null;
        }

        var moved = leg with { OffBlocks = at, OffBlocksLocal = written };
        var time = (nameof(Leg.OffBlocks), Typed.Time(written.TimeOfDay) + (isUtc ? "Z" : ""));
        return written.Date == leg.OffBlocksLocal.Date ? edit.With(leg, moved, time) : edit.With(leg, moved, ("Date", Typed.Date(written.Date)), time);
    }
}
