using System.Globalization;
using Batch.Books.Headers;
using Batch.Flight.Earth;
using Batch.Flight.Route;

namespace Batch.Books.Sheets;

/// <summary>The Land sheet: shorelines as polygons, one vertex a row.</summary>
internal static class LandSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Land", "operator", "Shorelines as polygons, for the glide-to-land check and the sketch maps.");

    private static readonly Column<string> Name = Plan.Add(ColumnKinds.Text("Name", nameof(LandRing.Name), "Name of the land.", ColumnKinds.Starred));
    private static readonly Column<int> Ring =
        Plan.Add(ColumnKinds.Whole("Ring", nameof(LandRing.Ring), "Number of the ring where a land has several.", 0, 100000));
    private static readonly Column<double> Sequence = Plan.Add(
        ColumnKinds.Of("Sequence", "Sequence", "Place of the vertex in the ring, rising.", ColumnKinds.Starred, ["Seq"], null, Cells.QuantityReading.Plain));
    private static readonly Column<double> Latitude = Plan.Add(ColumnKinds.Latitude("Latitude", "Latitude", "Latitude, WGS84.", ColumnKinds.Starred, "Lat"));
    private static readonly Column<double> Longitude =
        Plan.Add(ColumnKinds.Longitude("Longitude", "Longitude", "Longitude, WGS84.", ColumnKinds.Starred, "Long", "Lon"));

    /// <summary>The rings in book order.</summary>
    public static ImmutableArray<LandRing> Read(Shelf shelf)
    {
        var rings = new Dictionary<(string Name, int Ring), (Row First, SortedDictionary<double, GeoPoint> Points)>();
        foreach (var row in shelf.Rows(Plan))
        {
            var key = (row.NeededText(Name), row.Optional(Ring) ?? 1);
            var sequence = row.Needed(Sequence);
            var point = new GeoPoint(row.Needed(Latitude), row.Needed(Longitude));
            if (row.IsLost || row.Fails.Count > 0) continue;
            if (!rings.TryGetValue(key, out var ring)) rings.Add(key, ring = (row, []));
            if (!ring.Points.TryAdd(sequence, point))
                row.Fail(Sequence, "the sequence number stands twice in this ring; this row is not used", "one row for each number");
        }

        var land = ImmutableArray.CreateBuilder<LandRing>();
        foreach (var (key, ring) in rings)
        {
            var points = ring.Points.Values.ToList();
            if (points.Count > 1 && points[0] == points[^1]) points.RemoveAt(points.Count - 1);
            if (points.Count >= 3) land.Add(new LandRing(key.Name, key.Ring, [.. points]));
            else ring.First.ComplainOfRow(State.Fail,
                string.Create(CultureInfo.InvariantCulture, $"ring {key.Ring} of {key.Name} has fewer than three vertices"), "at least three vertices");
        }

        return land.ToImmutable();
    }
}
