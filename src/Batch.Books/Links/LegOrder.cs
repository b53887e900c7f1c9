using Batch.Books.Headers;
using Batch.Flight.Week;

namespace Batch.Books.Links;

/// <summary>Looks at the legs of each trip together: keys that stand twice, numbers that are left out.</summary>
internal static class LegOrder
{
    /// <summary>Complains and marks. Of two rows with the same key the first is kept, in doubt; the second is given up.</summary>
    public static void Look(IReadOnlyList<LegDraft> drafts, Column trip, Column number)
    {
        var seen = new Dictionary<(string, int), LegDraft>();
        foreach (var draft in drafts.Where(draft => draft.Key.Number > 0 && !draft.Row.Raw(trip).IsBlank))
        {
            if (seen.TryAdd((draft.Key.Trip, draft.Key.Number), draft)) continue;
            var first = seen[(draft.Key.Trip, draft.Key.Number)];
            draft.IsDouble = true;
            first.Doubt([draft.Row.Fail(number, $"{draft.Key} stands twice: see {first.Row.Place}; the first is computed, this one is not", "another leg number")]);
        }

        foreach (var legs in seen.GroupBy(entry => entry.Key.Item1, entry => entry.Value, StringComparer.Ordinal))
        {
            var expected = 1;
            foreach (var draft in legs.OrderBy(draft => draft.Key.Number))
            {
                if (draft.Key.Number != expected)
                {
                    draft.Row.Complain(State.Caution, number, $"{draft.Key} follows no leg {new LegKey(draft.Key.Trip, expected)}; is a row missing?", "leg numbers from 1 without a gap");
                }

                expected = draft.Key.Number + 1;
            }
        }
    }
}
