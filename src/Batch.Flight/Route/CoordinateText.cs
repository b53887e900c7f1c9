using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>Coordinates as flight plans write them: <c>41N039W</c> and <c>4130N03915W</c> (ICAO Doc 4444, appendix 2, item 15, significant points).</summary>
public static partial class CoordinateText
{
    /// <summary>Reads a coordinate. Case does not matter.</summary>
    /// <param name="text">Degrees, <c>ddNdddW</c>, or degrees and minutes, <c>ddmmNdddmmW</c>.</param>
    /// <returns>The position; null where the text is no valid coordinate.</returns>
    public static GeoPoint? Read(string text) => Understand(text).Point;

    /// <summary>Whether a text was meant as a coordinate: figures with a hemisphere letter of latitude, as no ident has them.</summary>
    /// <param name="text">The text.</param>
    public static bool LooksLikeOne(string text) => Loose().IsMatch(text);

    /// <summary>What is wrong with a text that looks like a coordinate; empty where nothing is.</summary>
    /// <param name="text">The text.</param>
    public static string Complaint(string text) => Understand(text).Complaint;

    /// <summary>Writes a position in degrees and minutes, rounded to the minute, such as <c>4130N03915W</c>.</summary>
    /// <param name="point">The position.</param>
    public static string Write(GeoPoint point)
    {
        var latMinutes = (int)Math.Round(Math.Abs(point.LatitudeDeg) * 60, MidpointRounding.AwayFromZero);
        var lonMinutes = (int)Math.Round(Math.Abs(point.LongitudeDeg) * 60, MidpointRounding.AwayFromZero);
        return string.Create(CultureInfo.InvariantCulture,
            $"{latMinutes / 60:00}{latMinutes % 60:00}{(point.LatitudeDeg < 0 ? 'S' : 'N')}{lonMinutes / 60:000}{lonMinutes % 60:00}{(point.LongitudeDeg < 0 ? 'W' : 'E')}");
    }

    private static (GeoPoint? Point, string Complaint) Understand(string text)
    {
        var match = Strict().Match(text);
        if (!match.Success) return (null, "a coordinate is written like 41N039W or 4130N03915W: two or four figures of latitude, three or five of longitude");
        var (latDeg, latOfMinutes) = Angle(match.Groups["lat"].ValueSpan, degreeFigures: 2);
        var (lonDeg, lonOfMinutes) = Angle(match.Groups["lon"].ValueSpan, degreeFigures: 3);
        if (latOfMinutes >= 60 || lonOfMinutes >= 60) return (null, "the minutes of a coordinate go from 00 to 59");
        if (latDeg > 90) return (null, "the latitude of a coordinate goes to 90");
        if (lonDeg > 180) return (null, "the longitude of a coordinate goes to 180");
        var isSouth = match.Groups["ns"].ValueSpan[0] is 'S' or 's';
        var isWest = match.Groups["ew"].ValueSpan[0] is 'W' or 'w';
        // Zero minus keeps a zero positive.
        return (new GeoPoint(isSouth ? 0 - latDeg : latDeg, isWest ? 0 - lonDeg : lonDeg), "");
    }

    private static (double Degrees, int Minutes) Angle(ReadOnlySpan<char> figures, int degreeFigures)
    {
        var degrees = int.Parse(figures[..degreeFigures], NumberStyles.None, CultureInfo.InvariantCulture);
        var minutes = figures.Length == degreeFigures ? 0 : int.Parse(figures[degreeFigures..], NumberStyles.None, CultureInfo.InvariantCulture);
        return (degrees + minutes / 60.0, minutes);
    }

    [GeneratedRegex("^(?:(?<lat>[0-9]{2})(?<ns>[NS])(?<lon>[0-9]{3})(?<ew>[EW])|(?<lat>[0-9]{4})(?<ns>[NS])(?<lon>[0-9]{5})(?<ew>[EW]))$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex Strict();

    [GeneratedRegex("^[0-9]{2,6}[NS][0-9]{1,7}[EW]?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Loose();
}
