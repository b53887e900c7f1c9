using Batch.Flight.Earth;

namespace Batch.Flight.Air;

/// <summary>A place with reports, and where it stands on the unit sphere.</summary>
internal sealed class AirStation
{
    private readonly AirReport[] _reports;

    /// <summary>Prepares a place.</summary>
    /// <param name="place">The place.</param>
    /// <param name="reports">All its reports, in the order listed.</param>
    public AirStation(GeoPoint place, AirReport[] reports)
    {
        (X, Y, Z) = OnUnitSphere(place);
        _reports = reports;
    }

    /// <summary>First coordinate of the unit vector, to latitude 0, longitude 0.</summary>
    public double X { get; }

    /// <summary>Second coordinate, to latitude 0, longitude 90 east.</summary>
    public double Y { get; }

    /// <summary>Third coordinate, to the north pole.</summary>
    public double Z { get; }

    /// <summary>The unit vector of a place.</summary>
    public static (double X, double Y, double Z) OnUnitSphere(GeoPoint place)
    {
        var (sinLat, cosLat) = Angle.SinCosDeg(place.LatitudeDeg);
        var (sinLon, cosLon) = Angle.SinCosDeg(place.LongitudeDeg);
        return (cosLat * cosLon, cosLat * sinLon, sinLat);
    }

    /// <summary>The reports valid from a moment up to the next boundary, one an altitude; null where there is none.</summary>
    /// <param name="start">The moment; null: before all boundaries.</param>
    public AirColumn? ColumnFrom(Instant? start)
    {
        var levels = _reports
            .Select((report, listed) => (Report: report, Listed: listed))
            .Where(r => IsValid(r.Report, start))
            .GroupBy(r => r.Report.Altitude.Value)
            .Select(g => g
                .OrderBy(r => r.Report.From ?? Instant.MinValue)
                .ThenByDescending(r => r.Report.To ?? Instant.MaxValue)
                .ThenBy(r => r.Listed)
                .Last().Report)
            .OrderBy(r => r.Altitude.Value)
            .ToArray();
        return levels.Length > 0 ? new AirColumn(levels) : null;
    }

    private static bool IsValid(AirReport report, Instant? start) => start is { } moment
        ? (report.From ?? Instant.MinValue) <= moment && moment < (report.To ?? Instant.MaxValue)
        : report.From is null;
}
