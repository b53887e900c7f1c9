using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Sheets.Figures;

namespace Batch.Sheets.Templates;

/// <summary>Amounts and days inside an English text, written in kilograms and in the manner of a language.</summary>
internal static partial class AmountsInText
{
    private const double LitresPerUsGallon = 3.785411784; // exact (NIST SP 811)
    private const string Number = @"[0-9][0-9,]*(?:\.[0-9]+)?";

    /// <summary>What an amount looks like in a text of the program: 1,240 lb, 12.5%, 8 h 05 min.</summary>
    public const string Amount = "(?:less than a minute|-?" + Number + "(?:%| (?:lb/USG|lb/h|lb|kg|ft|NM|in|kt|SM|km|min|m|°C|h(?: [0-9]+ min)?|persons|person|days|day|rests|rest)|))";

    /// <summary>The text with its pounds as kilograms, and its amounts and days as a language writes them; what is no amount stays as it is.</summary>
    /// <param name="text">The text, with numbers as in 1,240.5 and days as in 7 Dec 2026.</param>
    /// <param name="culture">How numbers and days are written.</param>
    public static string Rewritten(string text, CultureInfo culture) =>
        IsNumber().IsMatch(text) ? Figure(text, 1, culture) : Days().Replace(Amounts().Replace(text, amount => Written(text, amount, culture)), day => Day(day.Value, culture));

    private static string Written(string text, Match amount, CultureInfo culture)
    {
        var before = amount.Index == 0 ? ' ' : text[amount.Index - 1];
        var end = amount.Index + amount.Length;
        var after = end == text.Length ? ' ' : text[end];
        if (!(char.IsWhiteSpace(before) || before == '(') || char.IsLetterOrDigit(after) || after == '/')
            return amount.Value; // part of a name, a paragraph or a cell
        var digits = amount.Groups["number"].Value;
        return amount.Groups["unit"].Value switch
        {
            " lb" => Figure(digits, Pounds.KilogramsPerPound, culture) + " kg",
            " lb/h" => Figure(digits, Pounds.KilogramsPerPound, culture) + " kg/h",
            " lb/USG" => Figure(digits, Pounds.KilogramsPerPound / LitresPerUsGallon, culture, 3) + " kg/L",
            var unit => Figure(digits, 1, culture) + (unit == "%" && !culture.Equals(CultureInfo.InvariantCulture) ? " %" : unit),
        };
    }

    private static string Figure(string digits, double factor, CultureInfo culture, int? decimals = null)
    {
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        return point < 0 && factor == 1 && !digits.Contains(',', StringComparison.Ordinal) ? digits
            : Quantity.Text(Math.Round(double.Parse(digits, NumberStyles.Number, CultureInfo.InvariantCulture) * factor, decimals ??= point < 0 ? 0 : Math.Min(6, digits.Length - point - 1), MidpointRounding.AwayFromZero), decimals.Value, false, culture);
    }

    private static string Day(string day, CultureInfo culture) =>
        !culture.Equals(CultureInfo.InvariantCulture) && DateTime.TryParseExact(day, "d MMM yyyy", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date.ToString("d. MMM yyyy", culture) : day;

    [GeneratedRegex("^-?" + Number + "$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex IsNumber();

    [GeneratedRegex("(?<number>" + Number + ")(?<unit>%| (?:lb/USG|lb/h|lb|kg|ft|NM|in|kt|SM|km|min|m|h|°C))", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Amounts();

    [GeneratedRegex("[0-9]+ (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) [0-9]{4}", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Days();
}
