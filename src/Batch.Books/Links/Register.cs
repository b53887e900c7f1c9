using Batch.Books.Cells;
using Batch.Books.Headers;

namespace Batch.Books.Links;

/// <summary>The rows of a sheet that others refer to by name: those that could be read, those that could not, and what is in doubt about each.</summary>
/// <typeparam name="T">What a row holds.</typeparam>
internal sealed class Register<T>(string sheet)
    where T : class
{
    private readonly Dictionary<string, T> _found = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, CellRef> _places = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, List<Problem>> _doubts = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The sheet the rows stand in.</summary>
    public string Sheet => sheet;

    /// <summary>Names that could be read, in book order.</summary>
    public List<string> Names { get; } = [];

    /// <summary>Takes a row in: complains when the name stands there already, keeps it as lost when <paramref name="value"/> is null.</summary>
    public void Take(string name, Column nameColumn, Row row, T? value)
    {
        if (name.Length == 0) return;
        if (_places.TryGetValue(name, out var place))
        {
            row.Fail(nameColumn, $"{name} stands twice in {sheet}; the row {place} is used, this one is not", "one row for each");
            return;
        }

        _places.Add(name, row.Place);
        if (value is not null)
        {
            _found.Add(name, value);
            Names.Add(name);
        }

        Doubt(name, row.Fails);
    }

    /// <summary>Keeps fails that make everything of that name doubtful.</summary>
    public void Doubt(string name, IReadOnlyList<Problem> fails)
    {
        if (fails.Count == 0) return;
        if (!_doubts.TryGetValue(name, out var doubts)) _doubts.Add(name, doubts = []);
        doubts.AddRange(fails);
    }

    /// <summary>What is in doubt about a name.</summary>
    public IReadOnlyList<Problem> DoubtsOf(string name) => _doubts.TryGetValue(name, out var doubts) ? doubts : [];

    /// <summary>What stands under a name; null where nothing does.</summary>
    public T? Find(string name) => _found.GetValueOrDefault(name);

    /// <summary>What stands under the name a cell refers to; complains at the cell where nothing does, naming the nearest.</summary>
    /// <param name="row">The row that refers.</param>
    /// <param name="column">Its column.</param>
    /// <param name="name">The name read there.</param>
    /// <param name="state">How serious it is.</param>
    public T? Resolve(Row row, Column column, string name, State state = State.Fail)
    {
        if (name.Length == 0) return null;
        if (_found.TryGetValue(name, out var value)) return value;
        if (_places.TryGetValue(name, out var place))
        {
            row.Complain(state, column, $"{name} stands in {sheet}, but its row could not be read: see {place}");
            return null;
        }

        var near = Likely.Words(name, Names);
        row.Complain(state, column, $"{name} is not in {sheet}" + Likely.Question(near), near.Length > 0 ? string.Join(", ", near) : $"a name of {sheet}");
        return null;
    }

    /// <summary>Replaces each value by one made from it.</summary>
    public void Complete(Func<T, T> complete)
    {
        foreach (var name in Names) _found[name] = complete(_found[name]);
    }

    /// <summary>All that could be read, sorted by name, case ignored.</summary>
    public ImmutableSortedDictionary<string, T> Sorted() => _found.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase);
}
