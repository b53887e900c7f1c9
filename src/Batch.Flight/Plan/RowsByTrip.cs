namespace Batch.Flight.Plan;

/// <summary>Rows of a sheet by the trip that they belong to, in the order of the sheet; case of the trip ignored.</summary>
/// <typeparam name="T">Row.</typeparam>
internal sealed class RowsByTrip<T>
    where T : class
{
    private readonly Func<T, string> _trip;
    private readonly ILookup<string, T> _all;
    private readonly ImmutableDictionary<string, ImmutableArray<T>> _instead;

    /// <summary>Sorts the rows of a sheet.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="trip">Trip of a row.</param>
    public RowsByTrip(ImmutableArray<T> rows, Func<T, string> trip)
        : this(rows.ToLookup(trip, StringComparer.OrdinalIgnoreCase), trip,
            ImmutableDictionary.Create<string, ImmutableArray<T>>(StringComparer.OrdinalIgnoreCase))
    {
    }

    private RowsByTrip(ILookup<string, T> all, Func<T, string> trip, ImmutableDictionary<string, ImmutableArray<T>> instead) =>
        (_all, _trip, _instead) = (all, trip, instead);

    /// <summary>The rows of a trip; none is allowed.</summary>
    /// <param name="trip">The trip.</param>
    public IEnumerable<T> this[string trip] => _instead.TryGetValue(trip, out var rows) ? rows : _all[trip];

    /// <summary>The same with the rows of some trips changed.</summary>
    /// <param name="rows">All rows after the change.</param>
    /// <param name="trips">The trips of which rows have changed, come or gone.</param>
    public RowsByTrip<T> With(ImmutableArray<T> rows, IReadOnlyCollection<string> trips)
    {
        if (trips.Count == 0) return this;
        var changed = trips.ToDictionary(trip => trip, _ => ImmutableArray.CreateBuilder<T>(), StringComparer.OrdinalIgnoreCase);
        foreach (var row in rows)
            if (changed.TryGetValue(_trip(row), out var of)) of.Add(row);
        return new RowsByTrip<T>(_all, _trip, _instead.SetItems(changed.Select(pair => KeyValuePair.Create(pair.Key, pair.Value.ToImmutable()))));
    }
}
