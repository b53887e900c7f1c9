using Batch.Books.Headers;
using Batch.Flight.Week;

namespace Batch.Books.Links;

/// <summary>Looks at the legs of each trip together: keys that stand twice, numbers that are left out, legs that leave before the one before.</summary>
internal static class LegOrder
{
    /// <summary>Complains and marks. Of two rows with the same key the first is kept, in doubt; the second is given up.</summary>
    public static void Look(IReadOnlyList<LegDraft> drafts, Column trip, Column number, Column date)
    {
        var seen = new Dictionary<(string, int), LegDraft>();
        foreach (var draft in drafts.Where(draft => draft.Key.Number > 0 && !draft.Row.Raw(trip).IsBlank))
        {
            if (seen.TryAdd((draft.Key.Trip, draft.Key.Number), draft)) continue;
            var first = seen[(draft.Key.Trip, draft.Key.Number)];
            draft.IsDouble = true;
            first.Doubt(
                [draft.Row.Fail(number, $"{draft.Key} stands twice: see {first.Row.Place}; the first is computed, this one is not", "another leg number")]);
        }

        foreach (var legs in seen.GroupBy(entry => entry.Key.Item1, entry => entry.Value, StringComparer.Ordinal))
        {
            var expected = 1;
            Leg? before = null;
            foreach (var draft in legs.OrderBy(draft => draft.Key.Number))
            {
                if (draft.Key.Number != expected)
                {
                    draft.Row.Complain(State.Caution, number, $"{draft.Key} follows no leg {new LegKey(draft.Key.Trip, expected)}; is a row missing?",
                        "leg numbers from 1 without a gap");
                }

                if (draft.Leg is { } leg && before is not null && leg.OffBlocks <= before.OffBlocks)
                {
                    var next = leg.OffBlocksLocal.Date.PlusDays(1);
                    var isNextDay = leg.OffBlocks + Duration.FromDays(1) > before.OffBlocks;
                    draft.Row.Complain(
                        State.Caution,
                        date,
                        $"{draft.Key} leaves before {before.Key}"
                            + (isNextDay ? $"; is it the next day, {next.ToString("d MMM", System.Globalization.CultureInfo.InvariantCulture)}?" : ""),
                        isNextDay ? Cells.DateText.Iso(next) : "a date and time after those of the leg before");
                }

                before = draft.Leg ?? before;
                expected = draft.Key.Number + 1;
            }
        }
    }
}
