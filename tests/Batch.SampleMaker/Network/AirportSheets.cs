using System.Globalization;
using Batch.SampleMaker.Books;

namespace Batch.SampleMaker.Network;

/// <summary>The sheets of airports and runways.</summary>
public static class AirportSheets
{
    public static SheetTable Airports() => SheetTable.Of(
        "Airports",
        [
            new("Ident", 8), new("Name", 18), new("Latitude", 11, CellFormat.Degrees), new("Longitude", 11, CellFormat.Degrees),
            new("Elevation [ft]", 10, CellFormat.Whole),
            new("Time zone", 18), new("Fuel", 16), new("Fuel price [/USG]", 10, CellFormat.Hundredths), new("Opens", 8, CellFormat.Time),
            new("Closes", 8, CellFormat.Time),
            new("Quiet hours", 13), new("Lighting", 12), new("Clearance frequency", 11), new("Tower or CTAF frequency", 12), new("Handler", 28),
            new("Handler mail", 30), new("Customs", 16),
            new("Instrument approach", 20), new("Takeoff visibility", 11), new("Airspace", 9), new("Country", 12),
        ],
        Sites.All.Select(site => new object?[]
        {
            site.Ident, site.Name, site.Spot.LatDeg, site.Spot.LonDeg, site.ElevationFt, site.Zone, site.Fuel, site.FuelPrice, site.Opens, site.Closes,
            site.QuietHours, site.Lighting,
            site.Clearance, site.Tower, site.Handler, $"ramp@{site.Name.ToLowerInvariant().Replace(' ', '-')}.example", site.Customs, site.Approach,
            site.TakeoffVisibility, site.Airspace, site.Country,
        }));

    public static SheetTable Runways() => SheetTable.Of(
        "Runways",
        [
            new("Airport", 9), new("Runway", 9), new("True bearing [deg]", 10, CellFormat.Tenths), new("TORA [ft]", 9, CellFormat.Whole),
            new("TODA [ft]", 9, CellFormat.Whole),
            new("ASDA [ft]", 9, CellFormat.Whole), new("LDA [ft]", 9, CellFormat.Whole), new("Threshold elevation [ft]", 11, CellFormat.Whole),
            new("Slope [%]", 8, CellFormat.Tenths),
            new("Surface", 10), new("Lighted", 9),
        ],
        Sites.All.SelectMany(site => site.Strips.SelectMany(strip => Directions(site, strip))));

    private static IEnumerable<object?[]> Directions(Site site, Strip strip)
    {
        var rise = strip.SlopePercent / 100 * strip.LengthFt;
        yield return Row(site, strip, strip.Number, strip.BearingDeg, strip.LengthFt - strip.DisplacedFt, strip.SlopePercent, -rise / 2);
        yield return Row(site, strip, strip.Number + 18, (strip.BearingDeg + 180) % 360, strip.LengthFt, -strip.SlopePercent, rise / 2);
    }

    private static object?[] Row(Site site, Strip strip, int number, double bearingDeg, int landingFt, double slopePercent, double aboveFt) =>
    [
        site.Ident, number.ToString("00", CultureInfo.InvariantCulture), bearingDeg, strip.LengthFt, strip.LengthFt
            + strip.ClearwayFt, strip.LengthFt, landingFt,
        (int)Math.Round(site.ElevationFt + aboveFt), slopePercent, strip.Surface, strip.Lighted ? "yes" : "no",
    ];
}
