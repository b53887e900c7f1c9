using System.Globalization;

namespace Batch.Sheets.Figures;

/// <summary>Positions as a navigator takes them: degrees and minutes to a tenth.</summary>
internal static class Coordinate
{
    /// <summary>Such as <c>N41°30.0′</c>.</summary>
    public static string Latitude(double degrees) => Text(degrees, 'N', 'S', "00");

    /// <summary>Such as <c>W039°15.0′</c>.</summary>
    public static string Longitude(double degrees) => Text(degrees, 'E', 'W', "000");

    private static string Text(double degrees, char positive, char negative, string width)
    {
        var tenths = (long)Math.Round(Math.Abs(degrees) * 600, MidpointRounding.AwayFromZero);
        var whole = (tenths / 600).ToString(width, CultureInfo.InvariantCulture);
        var minutes = (tenths % 600 / 10.0).ToString("00.0", CultureInfo.InvariantCulture);
        return (degrees < 0 && tenths > 0 ? negative : positive) + whole + "°" + minutes + "′";
    }
}
