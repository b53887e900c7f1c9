using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Route;

namespace Batch.Testing;

/// <summary>
/// Small invented things for tests. The airports lie in the open Atlantic: XAND in the west, XBEL some 180 NM east of it on the same parallel, XCOR near XAND,
/// XDUN in the south.
/// </summary>
public static partial class Some
{
    /// <summary>A summer day.</summary>
    public static readonly LocalDate Day = new(2026, 7, 14);

    /// <summary>Takeoff at noon UTC of <see cref="Day"/>.</summary>
    public static readonly Instant Noon = Instant.FromUtc(2026, 7, 14, 12, 0);

    /// <summary>XAND, 41 N 040 W, elevation 0.</summary>
    public static Airport Xand { get; } = Airport("XAND", 41, -40, 0);

    /// <summary>XBEL, 41 N 036 W, elevation 0.</summary>
    public static Airport Xbel { get; } = Airport("XBEL", 41, -36, 0);

    /// <summary>XCOR, 41 N 039.2 W, elevation 500 ft: 36 NM from XAND.</summary>
    public static Airport Xcor { get; } = Airport("XCOR", 41, -39.2, 500);

    /// <summary>XDUN, 38 N 037 W, elevation 2,000 ft.</summary>
    public static Airport Xdun { get; } = Airport("XDUN", 38, -37, 2000);

    /// <summary>An airport without runways.</summary>
    public static Airport Airport(string ident, double latDeg, double lonDeg, double elevationFt) => new()
    {
        Ident = ident,
        Name = ident + " field",
        Position = new GeoPoint(latDeg, lonDeg),
        Elevation = new Feet(elevationFt),
        Zone = DateTimeZone.Utc,
    };

    /// <summary>A fix.</summary>
    public static Fix Fix(string ident, double latDeg, double lonDeg, double? variationDeg = null) =>
        new() { Ident = ident, Position = new GeoPoint(latDeg, lonDeg), Kind = "waypoint", VariationDeg = variationDeg };

    /// <summary>
    /// The four airports; fixes NORRA, TIDES, OTTER and GULLS from west to east along V12, NOR (a VOR with declination 10 W) near XAND, LN and ATSIX; TWINS at
    /// two places; V12 (5,000, 6,000 and 4,000 ft), one-way V20 from TIDES to LN by TWINS, and the airway B7 that crosses V12 at OTTER; a grid of 1 degree
    /// squares from 40 N 041 W to 42 N 035 W at 2,000 ft with one of 8,000 ft at 41 N 038 W and a coarse one in the south at 3,000 ft.
    /// </summary>
    public static NavigationBook Book() => new([Xand, Xbel, Xcor, Xdun], Fixes, Airways, Grid());

    /// <summary>The fixes of <see cref="Book"/>.</summary>
    public static ImmutableArray<Fix> Fixes { get; } =
    [
        Fix("NORRA", 41.25, -39.5),
        Fix("TIDES", 41.5, -38.5),
        Fix("OTTER", 41.5, -37.5),
        Fix("GULLS", 41.25, -36.5),
        Fix("NOR", 41, -39.9, -10) with { Kind = "VOR", Frequency = "113.7" },
        Fix("LN", 40.25, -38),
        Fix("ATSIX", 39.5, -38),
        Fix("TWINS", 41, -38.2),
        Fix("TWINS", 10, 100),
    ];

    /// <summary>The airways of <see cref="Book"/>.</summary>
    public static ImmutableArray<Airway> Airways { get; } =
    [
        Airway("V12", ("NORRA", 5000, AirwayDirection.Both), ("TIDES", 6000, AirwayDirection.Both), ("OTTER", 4000, AirwayDirection.Both),
            ("GULLS", null, AirwayDirection.Both)),
        Airway("V20", ("TIDES", 7000, AirwayDirection.Forward), ("TWINS", null, AirwayDirection.Forward), ("LN", null, AirwayDirection.Both)),
        Airway("B7", ("ATSIX", 3000, AirwayDirection.Both), ("LN", 3500, AirwayDirection.Backward), ("OTTER", null, AirwayDirection.Both)),
    ];

    private static Airway Airway(string name, params (string Fix, double? MinimumFt, AirwayDirection Direction)[] points) => new()
    {
        Name = name,
        Points = [.. points.Select(point => new AirwayPoint(point.Fix, point.MinimumFt is { } feet ? new Feet(feet) : null, point.Direction, Origin.None))],
    };

    private static ImmutableArray<SafeAltitudeCell> Grid()
    {
        var cells = ImmutableArray.CreateBuilder<SafeAltitudeCell>();
        for (var south = 40; south < 42; south++)
            for (var west = -41; west < -35; west++)
                cells.Add(new SafeAltitudeCell(south, west, 1, new Feet(south == 41 && west == -38 ? 8000 : 2000), Origin.None));
        cells.Add(new SafeAltitudeCell(37, -40, 3, new Feet(3000), Origin.None));
        return cells.ToImmutable();
    }
}
