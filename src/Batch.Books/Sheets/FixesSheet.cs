using Batch.Books.Headers;
using Batch.Flight.Earth;
using Batch.Flight.Route;

namespace Batch.Books.Sheets;

/// <summary>The Fixes sheet: one named point a row; idents may repeat.</summary>
internal static class FixesSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Fixes", "operator", "Named points: navigation aids and waypoints. The same ident may stand at two places.");

    private static readonly Column<string> Ident = Plan.Add(ColumnKinds.Ident("Ident", nameof(Fix.Ident), "Ident.", ColumnKinds.Starred, "Fix"));
    private static readonly Column<double> Latitude = Plan.Add(ColumnKinds.Latitude("Latitude", "Latitude", "Latitude, WGS84.", ColumnKinds.Starred, "Lat"));
    private static readonly Column<double> Longitude =
        Plan.Add(ColumnKinds.Longitude("Longitude", "Longitude", "Longitude, WGS84.", ColumnKinds.Starred, "Long", "Lon"));
    private static readonly Column<string> Kind = Plan.Add(ColumnKinds.Text("Kind", nameof(Fix.Kind), "VOR, NDB or waypoint."));
    private static readonly Column<string> Name = Plan.Add(ColumnKinds.Text("Name", nameof(Fix.Name), "Name."));
    private static readonly Column<string> Frequency = Plan.Add(ColumnKinds.Text("Frequency", nameof(Fix.Frequency), "Frequency."));
    private static readonly Column<double> Variation = Plan.Add(ColumnKinds.Number(Units.Quantity.Angle, "Variation", nameof(Fix.VariationDeg),
        "Own variation, east positive; empty: from the magnetic model.", false, "Declination"));

    /// <summary>The fixes in book order.</summary>
    public static ImmutableArray<Fix> Read(Shelf shelf)
    {
        var fixes = ImmutableArray.CreateBuilder<Fix>();
        foreach (var row in shelf.Rows(Plan))
        {
            var fix = new Fix
            {
                Ident = row.NeededText(Ident),
                Position = new GeoPoint(row.Needed(Latitude), row.Needed(Longitude)),
                Kind = row.Text(Kind),
                Name = row.Text(Name),
                Frequency = row.Text(Frequency),
                VariationDeg = row.Optional(Variation),
                Origin = row.Origin,
            };
            if (!row.IsLost) fixes.Add(fix);
        }

        return fixes.ToImmutable();
    }
}
