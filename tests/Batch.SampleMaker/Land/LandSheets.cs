using Batch.SampleMaker.Books;

namespace Batch.SampleMaker.Land;

/// <summary>The sheets of shorelines and safe altitudes.</summary>
public static class LandSheets
{
    private const double CellDeg = 0.5;

    public static SheetTable Land() => SheetTable.Of(
        "Land",
        [new("Name", 14), new("Ring", 7, CellFormat.Whole), new("Sequence", 10, CellFormat.Whole), new("Latitude", 11, CellFormat.Degrees),
            new("Longitude", 11, CellFormat.Degrees)],
        Island.All.SelectMany(island => island.Shore().Select((spot, index) => new object?[] { island.Name, 1, index + 1, spot.LatDeg, spot.LonDeg })));

    public static SheetTable AltitudeGrid() => SheetTable.Of(
        "AltitudeGrid",
        [new("South", 10, CellFormat.Hundredths), new("West", 10, CellFormat.Hundredths), new("Size [deg]", 10, CellFormat.Hundredths),
            new("Minimum altitude [ft]", 12, CellFormat.Whole)],
        Cells().Select(cell => new object?[] { cell.South, cell.West, CellDeg, Terrain.SafeAltitudeFt(cell.South, cell.West, CellDeg) }));

    private static IEnumerable<(double South, double West)> Cells() =>
        from row in Enumerable.Range(0, 20)
        from column in Enumerable.Range(0, 24)
        select (36 + (row * CellDeg), -45 + (column * CellDeg));
}
