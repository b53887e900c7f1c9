using Batch.Books.Headers;
using Batch.Flight.Week;

namespace Batch.Books.Links;

/// <summary>The trips of the week: finds the legs that a manifest or cargo row is for, and passes doubts on to them.</summary>
internal sealed class Trips(IReadOnlyList<LegDraft> drafts)
{
    private readonly ILookup<string, LegDraft> _legs = drafts.Where(draft => !draft.Key.Trip.StartsWith("row ", StringComparison.Ordinal)).ToLookup(draft => draft.Key.Trip, StringComparer.OrdinalIgnoreCase);

    /// <summary>The trip as the Legs sheet spells it; as written where it has none.</summary>
    public string AsInLegs(string trip) => _legs[trip].FirstOrDefault()?.Key.Trip ?? trip;

    /// <summary>Whether any row of the Legs sheet is of the trip; complains at the cell where none is, without repeating it: a name may stand in the wrong column.</summary>
    public bool Resolve(Row row, Column column, string trip)
    {
        if (trip.Length == 0) return false;
        if (_legs.Contains(trip)) return true;
        var near = Likely.Words(trip, _legs.Select(group => group.Key));
        row.Fail(column, "the trip is not one of Legs" + Likely.Question(near), near.Length > 0 ? string.Join(", ", near) : "a trip of Legs");
        return false;
    }

    /// <summary>Complains where a row names a leg that the trip does not have.</summary>
    public void LookAtLegs(Row row, Column column, string trip, LegSelection? selection)
    {
        if (selection?.Greatest is not { } greatest) return;
        var most = _legs[trip].Max(draft => draft.Key.Number);
        var named = Enumerable.Range(1, Math.Min(greatest, 9999)).Where(selection.Contains);
        var missing = named.Where(number => _legs[trip].All(draft => draft.Key.Number != number)).Take(5).ToArray();
        if (missing.Length > 0) row.Fail(column, $"{trip} has no leg {string.Join(", ", missing)}", "legs 1 to " + most.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>Passes the fails of a row on to the legs it is for; to all of the trip where that could not be read.</summary>
    public void Doubt(Row row, string trip, LegSelection? selection)
    {
        if (row.Fails.Count == 0) return;
        foreach (var draft in _legs[trip].Where(draft => selection is null || selection.Contains(draft.Key.Number))) draft.Doubt(row.Fails);
    }
}
