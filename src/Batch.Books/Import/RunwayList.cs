using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Sheets;
using Batch.Flight.Earth;

namespace Batch.Books.Import;

/// <summary>
/// Takes the runways of airports out of a list in the column layout of the public-domain world lists (airport_ident, length_ft, surface, lighted, closed,
/// le_ident, ..., he_ident, ...).
/// </summary>
internal sealed class RunwayList(string path, ImportNotes notes)
{
    private readonly ImportTable _table = new(path, "airport_ident", "length_ft", "le_ident", "he_ident");

    /// <summary>One row for each direction of each open runway of some airports.</summary>
    /// <param name="airports">Idents.</param>
    public IReadOnlyList<ImportRow> Rows(IReadOnlySet<string> airports)
    {
        var found = new List<ImportRow>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in _table.Rows)
        {
            var airport = _table.Text(row, "airport_ident").ToUpperInvariant();
            if (!airports.Contains(airport)) continue;
            if (_table.Text(row, "closed") is "1" or "yes" or "true")
            {
                notes.LeaveOut(_table.Line(row), $"the runway {_table.Text(row, "le_ident")}/{_table.Text(row, "he_ident")} of {airport} is closed");
                continue;
            }

            if (_table.Number(row, "length_ft") is not { } length || length <= 0)
            {
                notes.LeaveOut(_table.Line(row), $"{airport}: length_ft \"{_table.Text(row, "length_ft")}\" is not a length");
                continue;
            }

            foreach (var (end, other) in new[] { ("le", "he"), ("he", "le") })
            {
                if (Direction(row, airport, length, end, other) is not { } made) continue;
                if (seen.Add(made.Label)) found.Add(made);
                else notes.LeaveOut(_table.Line(row), $"{made.Label} stands in the list twice; the first is taken");
            }
        }

        foreach (var airport in airports.Where(ident => !seen.Any(label => label.StartsWith(ident + " ", StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal))
            notes.Say($"{airport} has no open runway in {Path.GetFileName(path)}");
        if (found.Count > 0) notes.Say("The list gives lengths and displaced thresholds, not declared distances: TORA is the length, LDA the length less the displaced threshold. Check each against the official publication.");
        return found;
    }

    private ImportRow? Direction(RawRow row, string airport, double length, string end, string other)
    {
        var written = _table.Text(row, end + "_ident");
        if (written.Length == 0) return null;
        var ident = TextReading.Runway(RawCell.OfText(written));
        if (!ident.IsGood || ident.Value is not { } runway)
        {
            notes.LeaveOut(_table.Line(row), $"{airport}: {end}_ident {written} is not a runway designator");
            return null;
        }

        var label = airport + " " + runway;
        var landing = length - (_table.Number(row, end + "_displaced_threshold_ft") ?? 0);
        if (landing <= 0)
        {
            notes.LeaveOut(_table.Line(row), $"{label}: the displaced threshold is as long as the runway");
            return null;
        }

        var values = new List<ImportValue> { new(Column("Airport"), airport), new(Column("Runway"), runway), new(Column("TORA"), "", length),
            new(Column("LDA"), "", landing) };
        if (Bearing(row, end, other) is { } bearing) values.Add(new ImportValue(Column("True bearing"), "", bearing));
        else notes.Say($"{label} has neither a true heading nor two thresholds in the list ({_table.Line(row)}): its cell True bearing is left empty, and the runway cannot be used before you fill it");
        if (_table.Number(row, end + "_elevation_ft") is { } elevation) values.Add(new ImportValue(Column("Threshold elevation"), "", elevation));
        var surface = SurfaceWords.Of(_table.Text(row, "surface"));
        if (surface.Length > 0) values.Add(new ImportValue(Column("Surface"), surface));
        else if (_table.Text(row, "surface") is { Length: > 0 } words)
            notes.Say($"{label} has the surface {words}, which is not one of paved, grass and gravel: its cell is left empty");
        if (_table.Text(row, "lighted") is { Length: > 0 } lighted && TextReading.YesNo(RawCell.OfText(lighted)) is { IsGood: true } isLighted)
            values.Add(new ImportValue(Column("Lighted"), isLighted.Value ? "yes" : "no"));
        return new ImportRow(label, [.. values]);
    }

    // As the list gives it, else from threshold to threshold.
    private double? Bearing(RawRow row, string end, string other)
    {
        if (_table.Number(row, end + "_heading_degT") is { } heading and >= 0 and <= 360) return heading;
        return Threshold(row, end) is { } from && Threshold(row, other) is { } to && from != to
            ? Math.Round(Geodesic.Inverse(from, to).InitialAzimuthDeg, 1)
            : null;
    }

    private GeoPoint? Threshold(RawRow row, string end) =>
        _table.Number(row, end + "_latitude_deg") is { } latitude && _table.Number(row,
            end + "_longitude_deg") is { } longitude && Math.Abs(latitude) <= 90 && Math.Abs(longitude) <= 180
            ? new GeoPoint(latitude, longitude)
            : null;

    private static Column Column(string name) => RunwaysSheet.Plan.Columns.First(column => column.Name == name);
}
