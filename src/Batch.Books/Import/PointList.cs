using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Units;
using Batch.Flight.Earth;

namespace Batch.Books.Import;

/// <summary>Takes the rows of a declared sheet out of a csv file whose headers are ours, or are said to mean ours.</summary>
internal sealed class PointList
{
    private const double MetresInNauticalMile = 1852;

    private readonly ImportRequest _request;
    private readonly SheetPlan _plan;
    private readonly ImportTable _table;
    private readonly HeaderMatch _header;
    private readonly ImportNotes _notes;

    /// <summary>Opens the list.</summary>
    /// <param name="request">What is wanted.</param>
    /// <param name="plan">The sheet its rows are for.</param>
    /// <param name="notes">Where rows that are left out go.</param>
    /// <exception cref="BookException">The list cannot be used.</exception>
    public PointList(ImportRequest request, SheetPlan plan, ImportNotes notes)
    {
        (_request, _plan, _notes) = (request, plan, notes);
        _table = new ImportTable(request.File, [.. request.Columns.Values]);
        foreach (var unknown in request.Columns.Keys.Where(
            name => plan.Columns.All(column => HeaderText.Plain(column.Name) != HeaderText.Plain(HeaderText.Of(name).Name))))
            throw new BookException($"{unknown} is not a column of {plan.Name}; those are {string.Join(", ", plan.Columns.Select(column => column.Name))}");
        var complaints = new Complaints();
        _header = HeaderMatch.Find(Renamed(), plan, UnitDefaults.None, complaints) ?? throw Unusable(complaints);
        if (_header.Missing.Count > 0 || _header.Placed.Values.Any(placed => placed.Blocked is not null)) throw Unusable(complaints);
    }

    /// <summary>The rows wanted, in the order of the list.</summary>
    /// <param name="keys">The columns that name a row.</param>
    /// <param name="known">Positions of the airports in the book.</param>
    /// <exception cref="BookException">The airport to measure from is not known.</exception>
    public IReadOnlyList<ImportRow> Rows(ImmutableArray<Column> keys, IReadOnlyDictionary<string, GeoPoint> known)
    {
        GeoPoint? centre = _request.Within is null ? null : known.TryGetValue(_request.Around,
            out var at) ? at : throw new BookException($"{_request.Around}, from which the distance is measured, is not an airport of the book");
        var only = _request.Only.ToHashSet(StringComparer.OrdinalIgnoreCase);
        var met = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var found = new List<ImportRow>();
        foreach (var row in _header.Sheet.Rows.Where(row => row.Number > _header.Row))
        {
            var name = row[_header.Placed[keys[0]].Column].Text;
            if (only.Count > 0 && !only.Contains(name)) continue;
            met.Add(name);
            if (One(row) is not { } values) continue;
            if (centre is { } from && !IsNear(values, from)) continue;
            found.Add(new ImportRow(string.Join(' ', keys.Select(key => Label(values.First(value => value.Column == key)))), values));
        }

        foreach (var missing in only.Where(name => !met.Contains(name)).Order(StringComparer.Ordinal))
            _notes.Say($"{missing} is not in {Path.GetFileName(_request.File)}");
        return found;
    }

    private ImmutableArray<ImportValue>? One(RawRow row)
    {
        var values = ImmutableArray.CreateBuilder<ImportValue>();
        foreach (var column in _plan.Columns)
        {
            if (!_header.Placed.TryGetValue(column, out var placed)) continue;
            var cell = row[placed.Column];
            if (cell.IsBlank)
            {
                if (!column.IsRequired) continue;
                _notes.LeaveOut(_table.Line(row), $"{column.Name} is empty");
                return null;
            }

            if (column.ValueOf(cell, placed.Setting) is not { } value)
            {
                _notes.LeaveOut(_table.Line(row), $"{column.Name} \"{cell.Text}\" cannot be read");
                return null;
            }

            values.Add(value switch
            {
                double number => new ImportValue(column, "", number),
                string text => new ImportValue(column, text),
                _ => new ImportValue(column, cell.Text),
            });
        }

        return values.ToImmutable();
    }

    private static bool IsNear(ImmutableArray<ImportValue> values, GeoPoint from, NauticalMiles within)
    {
        double? Of(string name) => values.FirstOrDefault(value => value.Column.Name == name)?.Number;
        return Of("Latitude") is not { } latitude
            || Of("Longitude") is not { } longitude
            || Geodesic.Inverse(from, new GeoPoint(latitude, longitude)).DistanceM <= within.Value * MetresInNauticalMile;
    }

    private bool IsNear(ImmutableArray<ImportValue> values, GeoPoint from) => _request.Within is not { } within || IsNear(values, from, within);

    private static string Label(ImportValue value) =>
        value.Number is { } number ? number.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) : value.Text;

    // The list with our names over the columns that the user says are ours.
    private RawSheet Renamed()
    {
        if (_request.Columns.IsEmpty) return _table.Sheet;
        var ours = _request.Columns.ToLookup(pair => pair.Value, pair => pair.Key, StringComparer.OrdinalIgnoreCase);
        var headers = _table.Sheet.Rows[0].Cells.Select(cell => ours[cell.Text].FirstOrDefault() is { } name ? RawCell.OfText(name) : cell).ToArray();
        return _table.Sheet with { Rows = [_table.Sheet.Rows[0] with { Cells = headers }, .. _table.Sheet.Rows.Skip(1)] };
    }

    private BookException Unusable(Complaints complaints)
    {
        var first = complaints.InOrder().FirstOrDefault(problem => problem.State == State.Fail);
        return new BookException($"{Path.GetFileName(_request.File)}: {first?.Text ?? "no column is known"}; name its columns with --columns, such as --columns \"{_plan.Columns[0].Name}=ID,{_plan.Columns[1].Name}=Y\"");
    }
}
