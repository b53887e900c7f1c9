using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Flight.Earth;

namespace Batch.Books.Cells;

/// <summary>Reads latitudes, longitudes and coordinates: decimal degrees, degrees-minutes(-seconds), or as ICAO Doc 4444 writes them.</summary>
internal static partial class AngleText
{
    /// <summary>Longest text that can mean an angle or a coordinate.</summary>
    private const int GreatestLength = 60;

    /// <summary>A latitude [deg], north positive.</summary>
    public static Reading<double> Latitude(RawCell cell, bool decimalComma) =>
        Read(cell, decimalComma, 'N', 'S', 90, "41.5, 41.5N, 41 30 00 N, 41°30'N or 4130N");

    /// <summary>A longitude [deg], east positive.</summary>
    public static Reading<double> Longitude(RawCell cell, bool decimalComma) =>
        Read(cell, decimalComma, 'E', 'W', 180, "-39.25, 39.25W, 39 15 00 W, 39°15'W or 03915W");

    /// <summary>A whole coordinate such as <c>4130N03915W</c>, <c>41N039W</c> or <c>41.5N 39.25W</c>; null where the text is none.</summary>
    public static GeoPoint? Coordinate(string text, bool decimalComma)
    {
        if (text.Length > GreatestLength) return null;
        var split = Split().Match(text.Trim());
        if (!split.Success) return null;
        var latitude = Latitude(RawCell.OfText(split.Groups["lat"].Value), decimalComma);
        var longitude = Longitude(RawCell.OfText(split.Groups["lon"].Value), decimalComma);
        return latitude.IsGood && longitude.IsGood ? new GeoPoint(latitude.Value, longitude.Value) : null;
    }

    private static Reading<double> Read(RawCell cell, bool decimalComma, char positive, char negative, double limit, string examples)
    {
        var expected = string.Create(CultureInfo.InvariantCulture, $"degrees from {-limit} to {limit}, such as {examples}");
        var degrees = cell.Kind == CellKind.Number ? QuantityReading.Plain(cell, default) : Degrees(cell.Text, decimalComma, positive, negative, limit);
        if (!degrees.IsGood) return Reading<double>.Bad(degrees.Complaint == "is not a number" ? "is not an angle" : degrees.Complaint,
            degrees.Expected.Contains(" or ", StringComparison.Ordinal) ? degrees.Expected : expected);
        return Math.Abs(degrees.Value) <= limit ? Reading<double>.Good(degrees.Value, degrees.Complaint) : Reading<double>.Bad("is out of range", expected);
    }

    private static Reading<double> Degrees(string text, bool decimalComma, char positive, char negative, double limit)
    {
        var bad = Reading<double>.Bad("is not an angle", "");
        if (text.Length > GreatestLength) return bad;
        var plain = text.Trim().ToUpperInvariant().Replace('\u2212', '-');
        var sign = 0;
        if (plain.Length > 1)
        {
            var letter = char.IsAsciiLetter(plain[^1]) ? plain[^1] : char.IsAsciiLetter(plain[0]) ? plain[0] : ' ';
            if (letter != ' ')
            {
                if (letter != positive && letter != negative) return bad;
                sign = letter == negative ? -1 : 1;
                plain = plain.Trim(letter).Trim();
                if (plain.Length == 0 || plain[0] is '-' or '+') return bad;
                var degreeDigits = limit > 90 ? 3 : 2;
                if (plain.Length > degreeDigits && plain.All(char.IsAsciiDigit)) return Compact(plain, degreeDigits, sign);
            }
        }

        if (sign == 0) sign = plain.StartsWith('-') ? -1 : 1;
        plain = plain.TrimStart('-', '+').TrimEnd('°', 'º').Trim();
        var parts = Marks().Split(plain).Where(part => part.Length > 0).ToArray();
        if (parts.Length is 0 or > 3) return bad;
        var sum = 0.0;
        for (var i = 0; i < parts.Length; i++)
        {
            var number = NumberText.Read(parts[i], decimalComma);
            if (!number.IsGood) return number;
            if (number.Value < 0 || (i > 0 && number.Value >= 60) || (i < parts.Length - 1 && !double.IsInteger(number.Value))) return bad;
            sum += number.Value / Math.Pow(60, i);
        }

        return Reading<double>.Good(sign * sum);
    }

    private static Reading<double> Compact(string digits, int degreeDigits, int sign)
    {
        var rest = digits[degreeDigits..];
        if (rest.Length is not (2 or 4)) return Reading<double>.Bad("is not an angle", "");
        var minutes = Number(rest[..2]);
        var seconds = rest.Length == 4 ? Number(rest[2..]) : 0;
        if (minutes >= 60 || seconds >= 60) return Reading<double>.Bad("is not an angle", "");
        return Reading<double>.Good(sign * (Number(digits[..degreeDigits]) + (minutes / 60.0) + (seconds / 3600.0)));
    }

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex("""[°º'′’"″”:\s]+|(?<=[0-9])-(?=[0-9])""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Marks();

    [GeneratedRegex(@"^(?<lat>.*?[NSns]|[-+]?[0-9]+(\.[0-9]+)?)[\s,;/]*(?<lon>.*[EWew]|[-+]?[0-9]+(\.[0-9]+)?)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.Singleline, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Split();
}
