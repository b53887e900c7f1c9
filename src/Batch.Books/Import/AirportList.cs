using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Sheets;
using Batch.Flight.Earth;

namespace Batch.Books.Import;

/// <summary>
/// Takes airports out of a list in the column layout of the public-domain world airport lists (ident, type, name, latitude_deg, longitude_deg, elevation_ft,
/// ...).
/// </summary>
internal sealed class AirportList
{
    private const double MetresInNauticalMile = 1852;

    /// <summary>A list with more is one of the world's, of which an operator wants some.</summary>
    private const int MostTakenWhole = 500;

    // Kinds of places that an aeroplane on wheels cannot use; taken only when named.
    private static readonly string[] OtherKinds = ["closed", "heliport", "seaplane_base", "balloonport"];

    private readonly ImportTable _table;
    private readonly ImportRequest _request;
    private readonly ImportNotes _notes;
    private readonly IReadOnlyDictionary<string, GeoPoint> _known;

    /// <summary>Opens the list.</summary>
    /// <param name="request">What is wanted.</param>
    /// <param name="known">Positions of the airports in the book.</param>
    /// <param name="notes">Where rows that are left out go.</param>
    /// <exception cref="BookException">The list cannot be used.</exception>
    public AirportList(ImportRequest request, IReadOnlyDictionary<string, GeoPoint> known, ImportNotes notes)
    {
        (_request, _known, _notes) = (request, known, notes);
        _table = new ImportTable(request.File, "ident", "latitude_deg", "longitude_deg");
        if (request.Only.IsEmpty && request.Within is null && _table.Rows.Skip(MostTakenWhole).Any())
            throw new BookException("a list of the world's airports is not taken whole; say which with --only XAAA,XBBB or --within 500 XAAA");
    }

    /// <summary>The airports wanted, in the order of the list, with their positions.</summary>
    /// <exception cref="BookException">The airport to measure from is not known.</exception>
    public IReadOnlyList<(ImportRow Row, string Ident, GeoPoint At)> Rows()
    {
        var found = new List<(ImportRow, string, GeoPoint)>();
        var centre = Centre();
        var only = _request.Only.ToHashSet(StringComparer.OrdinalIgnoreCase);
        var met = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in _table.Rows)
        {
            var ident = _table.Text(row, "ident").ToUpperInvariant();
            var named = only.Contains(ident);
            if (only.Count > 0 && !named) continue;
            if (named && !met.Add(ident))
            {
                _notes.LeaveOut(_table.Line(row), $"{ident} stands in the list twice; the first is taken");
                continue;
            }

            if (!named && OtherKinds.Contains(_table.Text(row, "type"), StringComparer.OrdinalIgnoreCase)) continue;
            if (One(row, ident) is not { } made) continue;
            if (centre is { } from && _request.Within is { } within && Geodesic.Inverse(from, made.At).DistanceM > within.Value * MetresInNauticalMile)
                continue;
            found.Add((made.Row, ident, made.At));
        }

        foreach (var missing in only.Where(ident => !met.Contains(ident)).Order(StringComparer.Ordinal))
        {
            var near = NearWords.Nearest(missing, _table.Rows.Select(row => _table.Text(row, "ident")), 3);
            _notes.Say($"{missing} is not in {Path.GetFileName(_request.File)}{(near.IsEmpty ? "" : $"; did you mean {string.Join(" or ", near)}?")}");
        }

        return found;
    }

    private GeoPoint? Centre()
    {
        if (_request.Within is null) return null;
        if (_known.TryGetValue(_request.Around, out var at)) return at;
        var row = _table.Rows.FirstOrDefault(row => string.Equals(_table.Text(row, "ident"), _request.Around, StringComparison.OrdinalIgnoreCase));
        if (row is not null && Position(row) is { } place) return place;
        throw new BookException($"{_request.Around}, from which the distance is measured, is neither in the list nor in the book");
    }

    private (ImportRow Row, GeoPoint At)? One(RawRow row, string ident)
    {
        if (ident.Length == 0 || Position(row) is not { } at)
        {
            _notes.LeaveOut(_table.Line(row), ident.Length == 0 ? "ident is empty" : $"{ident}: latitude_deg \"{_table.Text(row, "latitude_deg")}\" and longitude_deg \"{_table.Text(row, "longitude_deg")}\" are not a position");
            return null;
        }

        var values = new List<ImportValue>
        {
            new(Column("Ident"), ident),
            new(Column("Latitude"), "", at.LatitudeDeg),
            new(Column("Longitude"), "", at.LongitudeDeg),
        };
        if (_table.Text(row, "name") is { Length: > 0 } name) values.Add(new ImportValue(Column("Name"), name));
        if (_table.Number(row, "elevation_ft") is { } elevation) values.Add(new ImportValue(Column("Elevation"), "", elevation));
        else _notes.Say(
            $"{ident} has no elevation in the list ({_table.Line(row)}): its cell is left empty, and the airport cannot be used before you fill it");
        if (_request.TimeZone.Length > 0) values.Add(new ImportValue(Column("Time zone"), _request.TimeZone));
        return (new ImportRow(ident, [.. values]), at);
    }

    private GeoPoint? Position(RawRow row) =>
        _table.Number(row, "latitude_deg") is { } latitude && _table.Number(row,
            "longitude_deg") is { } longitude && Math.Abs(latitude) <= 90 && Math.Abs(longitude) <= 180
            ? new GeoPoint(latitude, longitude)
            : null;

    private static Column Column(string name) => AirportsSheet.Plan.Columns.First(column => column.Name == name);
}
