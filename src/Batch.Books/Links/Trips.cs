using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Flight.Week;

namespace Batch.Books.Links;

/// <summary>The trips of the week: finds the legs that a manifest or cargo row is for, and passes doubts on to them.</summary>
internal sealed class Trips(IReadOnlyList<LegDraft> drafts)
{
    private static readonly string[] Totals = ["total", "totals", "subtotal", "grandtotal", "sum", "count", "average"];

    private readonly List<(Row Row, Column Column, string Trip)> _strays = [];
    private readonly HashSet<CellRef> _sheetsWithStrays = [];
    private readonly ILookup<string, LegDraft> _legs = drafts.Where(draft => !draft.Key.Trip.StartsWith("row ", StringComparison.Ordinal))
        .ToLookup(draft => draft.Key.Trip, StringComparer.OrdinalIgnoreCase);

    /// <summary>The trip as the Legs sheet spells it; as written where it has none.</summary>
    public string AsInLegs(string trip) => _legs[trip].FirstOrDefault()?.Key.Trip ?? trip;

    /// <summary>Whether any row of the Legs sheet is of the trip; keeps the row for <see cref="ComplainOfStrays"/> where none is.</summary>
    public bool Resolve(Row row, Column column, string trip)
    {
        // Of a week without legs one complaint is enough.
        if (trip.Length == 0 || drafts.Count == 0) return false;
        if (_legs.Contains(trip)) return true;
        _strays.Add((row, column, trip));
        return false;
    }

    /// <summary>
    /// Complains once of each trip that rows of a sheet name and Legs does not have, at the first of its cells, without repeating the trip: a name may stand in
    /// the wrong column. Several rows of one trip are more likely those of a trip that was taken out of Legs than misspelled: then only the one trip that is
    /// near is asked about.
    /// </summary>
    public void ComplainOfStrays()
    {
        foreach (var rows in _strays.GroupBy(stray => (stray.Row.Sheet.Place, stray.Trip.ToUpperInvariant())))
        {
            var (row, column, trip) = rows.First();
            var near = Likely.Words(trip, _legs.Select(group => group.Key));
            var numbers = rows.Select(stray => stray.Row.Place.Row).ToArray();
            if (near.Length > (numbers.Length > 1 ? 1 : 2)) near = [];
            var text = numbers.Length == 1
                ? "the trip is not one of Legs"
                : $"the trip of rows {RowNumbers.Listed(numbers)} is not one of Legs, so they are on no leg: give the trip its legs, or clear the rows";
            row.Fail(column, text + Likely.Question(near), near.Length > 0 ? string.Join(", ", near) : "a trip of Legs");
        }

        _strays.Clear();
    }

    /// <summary>Complains where a row names a leg that the trip does not have.</summary>
    public void LookAtLegs(Row row, Column column, string trip, LegSelection? selection)
    {
        // A leg whose number could not be read may be the one.
        if (selection?.Greatest is not { } greatest || _legs[trip].Any(draft => draft.Key.Number == 0)) return;
        var most = _legs[trip].Max(draft => draft.Key.Number);
        var named = Enumerable.Range(1, Math.Min(greatest, 9999)).Where(selection.Contains);
        var missing = named.Where(number => _legs[trip].All(draft => draft.Key.Number != number)).Take(5).ToArray();
        if (missing.Length > 0) row.Fail(column, $"{trip} has no leg {string.Join(", ", missing)}",
            "legs 1 to " + most.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>
    /// Passes the doubts of a row on to the legs it is for; to all of the trip where that could not be read. Where the trip itself is not known, what the row
    /// holds may be missing from any leg: a caution of every leg, said once for all such rows of a sheet, because each has its own complaint; or of those of
    /// the trips that were likely meant.
    /// </summary>
    public void Doubt(Row row, string trip, LegSelection? selection)
    {
        if (_legs.Contains(trip))
        {
            if (row.Doubts.Count == 0) return;
            foreach (var draft in _legs[trip].Where(draft => selection is null || selection.Contains(draft.Key.Number))) draft.Doubt(row.Doubts);
            return;
        }

        // Three that are as near may be the first of more: then it may be any.
        var near = trip.Length == 0 ? [] : Likely.Words(trip, _legs.Select(group => group.Key));
        if (near.Length > 2) near = [];
        if (near.IsEmpty && !_sheetsWithStrays.Add(row.Sheet.Place)) return;
        var caution = new Problem
        {
            State = State.Caution,
            Cell = row.Place.ToString(),
            Text = $"What {row.Sheet.Name} holds for a trip that is not in Legs may be missing from this leg",
            Read = "",
            Expected = "",
        };
        foreach (var draft in near.IsEmpty ? drafts : near.SelectMany(name => _legs[name])) draft.Doubt([caution]);
    }

    /// <summary>Passes a complaint on to the legs of a trip.</summary>
    public void Doubt(string trip, LegSelection selection, Problem problem)
    {
        foreach (var draft in _legs[trip].Where(draft => selection.Contains(draft.Key.Number))) draft.Doubt([problem]);
    }

    /// <summary>
    /// Whether a row of passengers or cargo is a total or a remark: it names neither a trip of Legs or one alike, nor what it is of. That costs one caution.
    /// </summary>
    /// <param name="row">The row.</param>
    /// <param name="trip">Its column of trips.</param>
    /// <param name="what">Its column of names.</param>
    /// <param name="kind">What a row holds, such as <c>passenger</c>.</param>
    public bool IsRemark(Row row, Column trip, Column what, string kind)
    {
        if (IsTotal(row.Raw(what).Text) && row.Raw(trip).IsBlank) return Remark(row, kind);
        if (!row.Raw(what).IsBlank || _legs.Contains(row.Raw(trip).Text) || !Likely.Words(row.Raw(trip).Text, _legs.Select(group => group.Key)).IsEmpty)
            return false;
        return Remark(row, kind);
    }

    private static bool IsTotal(string text) => Totals.Contains(HeaderText.Plain(text), StringComparer.Ordinal);

    private static bool Remark(Row row, string kind)
    {
        row.ComplainOfRow(State.Caution, $"the row holds no trip of Legs and no {kind}, so it is taken for a total or a remark",
            $"a trip and a {kind}, or nothing");
        return true;
    }
}
