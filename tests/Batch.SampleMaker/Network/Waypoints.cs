using Batch.SampleMaker.Books;
using Batch.SampleMaker.Land;

namespace Batch.SampleMaker.Network;

/// <summary>The fixes.</summary>
public static class Waypoints
{
    public static ImmutableArray<Waypoint> All { get; } =
    [
        Aid("AND", OnMain(-20, -16), "VOR", "Andrel", "114.10"),
        Aid("BEL", OnMain(97, 5), "VOR", "Bellhaven", "113.40"),
        Aid("COR", OnMain(-104, -2), "VOR", "Corrin", "115.70"),
        Aid("DUN", OnMain(36, 15), "VOR", "Dunmoor", "112.90"),
        Aid("MAR", new Spot(41.565, -44.02), "VOR", "Rillmouth", "116.20"),
        Aid("OST", new Spot(38.6, -38.22), "VOR", "Ostrane", "117.30"),
        Aid("ROA", new Spot(45.34, -43.74), "VOR", "Roan", "113.90"),
        Aid("FEN", OnMain(60, -21), "NDB", "Fenwater", "348"),
        Aid("KEL", OnMain(-70, 51), "NDB", "Kelda", "372"),
        Aid("QUI", new Spot(43.61, -36.02), "NDB", "Quill", "401"),
        new("TIDES", OnMain(-78, -6)), new("MELLO", OnMain(-50, -10)), new("KORDA", OnMain(8, -12)), new("SENNA", OnMain(34, -9)), new("LUPIN", OnMain(64, -6)),
        new("RUDDY", OnMain(-75, -19)), new("VESPA", OnMain(-46, -22)), new("GALVO", OnMain(18, -27)),
        new("HAWEL", OnMain(-82, 11)), new("ELMIA", OnMain(-58, 19)), new("PIRRO", OnMain(-25, 22)), new("TARNO", OnMain(8, 25)), new("IVORA", OnMain(70, 19)),
        new("BOSCA", OnMain(-38, 1)), new("NORRA", OnMain(-2, 6)), new("DELVE", OnMain(50, -16)), new("HARLO", OnMain(84, -14)),
        new("BRYNA", new Spot(40.72, -42.05)), new("TESSO", new Spot(41.15, -43.05)),
        new("VINDA", new Spot(42.7, -43.95)), new("GRETO", new Spot(44.0, -43.85)),
        new("SORRA", new Spot(42.55, -41.55)), new("HILDA", new Spot(43.6, -42.35)), new("MISKA", new Spot(44.5, -43.05)),
        new("OLMEN", new Spot(40.2, -37.8)), new("DRAYA", new Spot(39.35, -38.02)),
        new("CALDO", new Spot(40.05, -39.0)), new("MERIN", new Spot(39.3, -38.6)),
        new("ARDEN", new Spot(42.3, -36.68)), new("NEVRA", new Spot(42.95, -36.36)),
        new("CORVA", new Spot(42.15, -38.0)), new("WENDA", new Spot(42.85, -37.05)),
        new("SALTO", new Spot(40.9, -40.9)), new("ORLIN", new Spot(41.85, -42.4)), new("PELLA", new Spot(38.95, -38.9)), new("QUORA", new Spot(44.4, -38.2)),
        new("RONSA", new Spot(37.6, -38.4)), new("TULLY", new Spot(39.6, -41.2)), new("UMBRA", new Spot(38.9, -37.4)), new("YARRO", new Spot(43.3, -39.6)),
    ];

    public static Waypoint Of(string ident) => All.First(fix => fix.Ident == ident);

    public static SheetTable Sheet() => SheetTable.Of(
        "Fixes",
        [new("Ident", 8), new("Latitude", 11, CellFormat.Degrees), new("Longitude", 11, CellFormat.Degrees), new("Kind", 10), new("Name", 16),
            new("Frequency", 11)],
        All.Select(fix => new object?[] { fix.Ident, fix.Spot.LatDeg, fix.Spot.LonDeg, fix.Kind, fix.Name, fix.Frequency }));

    private static Waypoint Aid(string ident, Spot spot, string kind, string name, string frequency) => new(ident, spot.Rounded, kind, name, frequency);

    private static Spot OnMain(double alongNm, double acrossNm) => IslandFrame.Vellmere.At(alongNm, acrossNm).Rounded;
}
