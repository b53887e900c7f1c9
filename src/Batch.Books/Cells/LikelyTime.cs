using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Books.Cells;

/// <summary>Names the time of day that was likely meant by a cell that is too unsure to be taken.</summary>
internal static partial class LikelyTime
{
    /// <summary>The likely time, to stand as what was expected; what is understood in general where there is none.</summary>
    /// <param name="text">Text that <see cref="TimeText"/> does not read.</param>
    public static string Of(string text)
    {
        if (text.Trim().Equals("noon", StringComparison.OrdinalIgnoreCase)) return "12:00";
        var isNumber = double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite,
            CultureInfo.InvariantCulture, out var number);
        if (isNumber && number is > 0 and < 1) return Clock(number * 24) ?? TimeText.Expected;
        if (Written().Match(text.Trim()) is not { Success: true } match) return isNumber ? Of(number) : TimeText.Expected;
        var half = match.Groups["half"].Value;
        var plain = $"{match.Groups["h"].Value}:{(match.Groups["m"].Success ? match.Groups["m"].Value : "00")}";
        if (plain == "24:00") return "00:00, with the date of the next day";
        return TimeText.TimeOfDay(half.Length > 0 ? $"{plain} {half[0]}m" : plain) is { } time ? Text(time) : TimeText.Expected;
    }

    /// <summary>
    /// The likely times of a number: hours and minutes with a point between, or hours with decimals; of a small whole number the full hour or the minutes after
    /// midnight.
    /// </summary>
    /// <param name="number">Number of a cell that is shown as neither a date nor a time.</param>
    public static string Of(double number)
    {
        if (number is < 1 or > 24) return TimeText.Expected;
        if (double.IsInteger(number)) return string.Join(" or ", new[] { Clock(number), Text(new LocalTime(0, (int)number)) }.OfType<string>());
        var hundredths = (int)Math.Round(100 * (number - Math.Floor(number)));
        var pointed = hundredths < 60 ? Text(new LocalTime((int)number, hundredths)) : null;
        var decimals = Clock(number);
        return string.Join(" or ", new[] { pointed, decimals }.OfType<string>().Distinct(StringComparer.Ordinal));
    }

    private static string? Clock(double hours) =>
        (int)Math.Round(hours * 60) is var minutes && minutes < 24 * 60 ? Text(new LocalTime(minutes / 60, minutes % 60)) : null;

    private static string Text(LocalTime time) => time.ToString("HH':'mm", CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^(?<h>[0-9]{1,2})(\s*[:.,h]\s*|(?=[0-9]{2}))((?<m>[0-9]{2})(:[0-9]{2})?)?\s*((?<half>[ap])(\.?m)?\.?|h|hrs?|hours|uhr|l|lt|local)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Written();
}
