using Batch.SampleMaker.Land;

namespace Batch.SampleMaker.Network;

/// <summary>The airports. Runway numbers are magnetic; the variation of the region is some 14 degrees west.</summary>
public static class Sites
{
    private const string SouthZone = "America/Noronha";
    private const string WestZone = "America/St_Johns";

    public static ImmutableArray<Site> All { get; } =
    [
        OnMain("XAND", "Andrel City", -20, -18, 120) with
        {
            Fuel = "Jet A-1, Avgas", FuelPrice = 6.10, Lighting = "yes", Clearance = "121.65", Tower = "118.30", Handler = "Andrel Ground Services",
            Customs = "24 h",
            Approach = "ILS 200 ft 800 m", TakeoffVisibility = "800 m",
            Strips = [new Strip(10, 86, 7200, "paved", true, 0.1, 400), new Strip(5, 36, 4600, "paved", true, -0.2)],
        },
        OnMain("XBEL", "Bellhaven", 98, 4, 60) with
        {
            Fuel = "Jet A-1, Avgas", FuelPrice = 6.90, Lighting = "yes", Clearance = "121.80", Tower = "119.10", Handler = "Bellhaven Apron",
            Customs = "on request 4 h",
            Approach = "ILS 220 ft 900 m", TakeoffVisibility = "900 m", Strips = [new Strip(9, 77, 5600, "paved", true, 0.3)],
        },
        OnMain("XCOR", "Corrin Bay", -105, -3, 35) with
        {
            Fuel = "Jet A-1", FuelPrice = 7.20, Lighting = "yes", Tower = "118.95", Handler = "Corrin Bay Handling", Customs = "on request 12 h",
            Approach = "RNP 380 ft 1500 m", Strips = [new Strip(11, 98, 5000, "paved", true, -0.2, 0, 300)],
        },
        OnMain("XDUN", "Dunmoor", 35, 14, 4000) with
        {
            Fuel = "Jet A-1", FuelPrice = 7.85, Lighting = "on request", Tower = "122.85", Handler = "Dunmoor Hill Station", Approach = "RNP 520 ft 2400 m",
            Strips = [new Strip(8, 68, 6000, "paved", true, 0.8)],
        },
        OnMain("XELM", "Elmsey", -60, 20, 90) with
        {
            Fuel = "Avgas", FuelPrice = 7.40, Opens = new LocalTime(7, 0), Closes = new LocalTime(19, 0), Lighting = "on request", Tower = "123.05",
            Handler = "Elmsey Flying Co-op",
            Approach = "RNP 450 ft 1600 m", Strips = [new Strip(10, 84, 3900, "paved", true, 0.2)],
        },
        OnMain("XFEN", "Fenwater", 60, -22, 25) with
        {
            Fuel = "Jet A-1, Avgas", FuelPrice = 6.45, QuietHours = "22:00-06:00", Lighting = "yes", Tower = "118.55", Handler = "Fenwater Quay Handling",
            Approach = "ILS 200 ft 800 m", Strips = [new Strip(10, 88, 4600, "paved", true)],
        },
        OnMain("XGRA", "Grassmere", 10, -24, 210) with
        {
            Tower = "123.45", Handler = "Grassmere Estate", Strips = [new Strip(10, 84, 2300, "grass", false, 0.4)],
        },
        OnMain("XHOL", "Holt Cross", -85, 12, 640) with
        {
            Lighting = "on request", Tower = "122.70", Handler = "Holt Cross Parish", Approach = "RNP 480 ft 1800 m",
            Strips = [new Strip(9, 79, 3000, "paved", true, -0.6)],
        },
        OnMain("XIVE", "Ivelet", 75, 16, 480) with
        {
            Tower = "123.25", Handler = "Ivelet Lodge", Strips = [new Strip(8, 70, 3300, "grass", false, 0.5)],
        },
        OnMain("XJUN", "Juniper Flat", -40, -4, 1450) with
        {
            Tower = "123.15", Handler = "Juniper Flat Mine", Strips = [new Strip(10, 88, 4200, "gravel", false, -0.7)],
        },
        OnMain("XKEL", "Kelda Harbour", -70, 52, 45) with
        {
            Fuel = "Jet A-1", FuelPrice = 8.10, Lighting = "on request", Tower = "122.95", Handler = "Kelda Harbour Office", Approach = "RNP 410 ft 1500 m",
            Strips = [new Strip(10, 85, 4000, "paved", true)],
        },
        Outer("XMAR", "Rillmouth", 41.55, -44.0, 75, WestZone) with
        {
            Fuel = "Jet A-1, Avgas", FuelPrice = 8.30, Lighting = "yes", Clearance = "121.90", Tower = "118.70", Handler = "Rillmouth Air Centre",
            Customs = "06:00-20:00",
            Approach = "ILS 250 ft 1000 m", Strips = [new Strip(11, 92, 5500, "paved", true, 0.1)],
        },
        Outer("XNOR", "North Rill", 41.74, -43.72, 140, WestZone) with
        {
            Fuel = "Avgas", FuelPrice = 8.60, Opens = new LocalTime(6, 30), Closes = new LocalTime(20, 0), Lighting = "yes", Tower = "123.35",
            Handler = "North Rill Flying Club",
            Approach = "RNP 430 ft 1600 m", Strips = [new Strip(10, 82, 3900, "paved", true, -0.3)],
        },
        Outer("XOST", "Ostrane", 38.58, -38.25, 55, SouthZone) with
        {
            Fuel = "Jet A-1", FuelPrice = 7.05, Lighting = "yes", Clearance = "121.75", Tower = "119.35", Handler = "Ostrane Station", Customs = "24 h",
            Approach = "ILS 200 ft 800 m", Strips = [new Strip(9, 76, 6500, "paved", true, 0, 300)],
        },
        Outer("XPEL", "Pell Sands", 38.49, -38.47, 30, SouthZone) with
        {
            Tower = "123.55", Handler = "Pell Sands Camp", Strips = [new Strip(8, 66, 2600, "grass", false)],
        },
        Outer("XUMB", "Umbra Point", 38.72, -37.82, 110, SouthZone) with
        {
            Fuel = "Jet A-1, Avgas", FuelPrice = 7.95, Lighting = "yes", Tower = "122.65", Handler = "Umbra Point Flying Services",
            Approach = "RNP 400 ft 1500 m",
            Strips = [new Strip(9, 74, 4500, "paved", true, 0.4)],
        },
        Outer("XQUI", "Quill", 43.6, -36.0, 85, "Atlantic/Azores") with
        {
            Lighting = "on request", Tower = "122.75", Handler = "Quill Weather Station", Approach = "RNP 420 ft 1500 m",
            Strips = [new Strip(10, 84, 4200, "paved", true, 0.3)],
        },
        Outer("XROA", "Roan", 45.36, -43.76, 95, WestZone) with
        {
            Fuel = "Jet A-1, Avgas", FuelPrice = 9.40, Lighting = "yes", Tower = "118.15", Handler = "Roan Port Authority", Customs = "08:00-18:00",
            Approach = "RNP 390 ft 1500 m", Strips = [new Strip(11, 93, 4800, "paved", true, 0.2)],
        },
        Outer("XSTA", "Staver Sound", 45.17, -43.58, 40, WestZone) with
        {
            Fuel = "Jet A-1", FuelPrice = 9.70, Lighting = "on request", Tower = "123.65", Handler = "Staver Sound Handling", Approach = "RNP 460 ft 1600 m",
            Strips = [new Strip(10, 86, 4200, "paved", true)],
        },
    ];

    public static Site Of(string ident) => All.First(site => site.Ident == ident);

    public static DateTimeZone ZoneOf(string ident) => DateTimeZoneProviders.Tzdb[Of(ident).Zone];

    private static Site OnMain(string ident, string name, double alongNm, double acrossNm, int elevationFt) => new()
    {
        Ident = ident,
        Name = name,
        Spot = IslandFrame.Vellmere.At(alongNm, acrossNm).Rounded,
        ElevationFt = elevationFt,
        Strips = [],
    };

    private static Site Outer(string ident, string name, double latDeg, double lonDeg, int elevationFt, string zone) => new()
    {
        Ident = ident,
        Name = name,
        Spot = new Spot(latDeg, lonDeg),
        ElevationFt = elevationFt,
        Zone = zone,
        Country = zone == WestZone ? "Westreach" : "Vellmere",
        Strips = [],
    };
}
