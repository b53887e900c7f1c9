using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Sheets.Board;

/// <summary>
/// The nights (end of evening to start of morning civil twilight, 14 CFR 1.1) at the places where an aircraft or a person is. Each place's day is worked out
/// once.
/// </summary>
internal sealed class Nights
{
    private readonly Dictionary<(string Ident, LocalDate Date), SunDay> _days = [];

    /// <summary>The nights within some stays, in order, those that touch made one.</summary>
    /// <param name="stays">Where one is, from when to when, in order of time; an unknown place has no night.</param>
    public ImmutableArray<(Instant From, Instant To)> Of(IEnumerable<(Airport? Place, Instant From, Instant To)> stays)
    {
        var nights = new List<(Instant From, Instant To)>();
        foreach (var (place, from, to) in stays)
        {
            if (place is null) continue;
            foreach (var night in At(place, from, to))
            {
                if (nights.Count > 0 && night.From <= nights[^1].To) nights[^1] = (nights[^1].From, Instant.Max(nights[^1].To, night.To));
                else nights.Add(night);
            }
        }

        return [.. nights];
    }

    private IEnumerable<(Instant From, Instant To)> At(Airport place, Instant from, Instant to)
    {
        if (to <= from) yield break;
        var last = to.InZone(place.Zone).Date;
        for (var date = from.InZone(place.Zone).Date; date <= last; date = date.PlusDays(1))
        {
            foreach (var (start, end) in Dark(place, date))
            {
                var (begin, until) = (Instant.Max(start, from), Instant.Min(end, to));
                if (until > begin) yield return (begin, until);
            }
        }
    }

    private IEnumerable<(Instant From, Instant To)> Dark(Airport place, LocalDate date)
    {
        if (!_days.TryGetValue((place.Ident, date), out var sun)) _days[(place.Ident, date)] = sun = Sun.On(date, place.Zone, place.Position);
        var start = date.AtStartOfDayInZone(place.Zone).ToInstant();
        var end = date.PlusDays(1).AtStartOfDayInZone(place.Zone).ToInstant();
        return (sun.CivilState, sun.CivilDawn, sun.CivilDusk) switch
        {
            (SunState.PolarNight, _, _) => [(start, end)],
            (SunState.PolarDay, _, _) => [],
            (_, { } dawn, { } dusk) when dusk < dawn => [(dusk, dawn)],
            (_, var dawn, var dusk) => [(start, dawn ?? start), (dusk ?? end, end)],
        };
    }
}
