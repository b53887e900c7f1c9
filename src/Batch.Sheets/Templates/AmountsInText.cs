using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Sheets.Figures;

namespace Batch.Sheets.Templates;

/// <summary>Amounts and days inside an English text, written in kilograms and in the manner of a language.</summary>
internal static partial class AmountsInText
{
    private const string Digits = @"[0-9][0-9,]*(?:\.[0-9]+)?";

    /// <summary>What an amount looks like in a text of the program: 1,240 lb, 12.5%, 8 h 05 min.</summary>
    public const string Amount = "(?:less than a minute|-?" + Digits
        + "(?:%| (?:lb/USG|lb/h|lb|kg|ft|NM|in|kt|SM|km|min|m|°C|K|h(?: [0-9]+ min)?|persons|person|days|day|rests|rest)|))";

    /// <summary>The text with its pounds as kilograms, and its amounts and days as a language writes them; what is no amount stays as it is.</summary>
    /// <param name="text">The text, with numbers as in 1,240.5 and days as in 7 Dec 2026.</param>
    /// <param name="culture">How numbers and days are written.</param>
    /// <param name="figures">The limit and figure that the text holds, so that it agrees with them as they are printed by themselves; null for none.</param>
    public static string Rewritten(string text, CultureInfo culture, HeldFigure? figures = null) =>
        IsNumber().IsMatch(text)
            ? Figure(text, 1, culture)
            : Days().Replace(Amounts().Replace(text, amount => Written(text, amount, culture, figures)), day => Day(day.Value, culture));

    private static string Written(string text, Match amount, CultureInfo culture, HeldFigure? figures)
    {
        var before = amount.Index == 0 ? ' ' : text[amount.Index - 1];
        var end = amount.Index + amount.Length;
        var after = end == text.Length ? ' ' : text[end];
        if (!(char.IsWhiteSpace(before) || before == '(') || char.IsLetterOrDigit(after) || after == '/')
            return amount.Value; // part of a name, a paragraph or a cell
        var digits = amount.Groups["number"].Value;
        return amount.Groups["unit"].Value switch
        {
            " lb" => (Held(digits, figures, culture) ?? Figure(digits, Pounds.KilogramsPerPound, culture)) + " kg",
            " lb/h" => Figure(digits, Pounds.KilogramsPerPound, culture) + " kg/h",
            " lb/USG" => Figure(digits, UnitFunctions.KilogramsPerLitre, culture, 3) + " kg/L",
            var unit => Figure(digits, 1, culture) + (unit == "%" && !culture.Equals(CultureInfo.InvariantCulture) ? " %" : unit),
        };
    }

    /// <summary>Kilograms of a number of pounds that is the limit, the figure or their difference, as they are printed; null for any other.</summary>
    private static string? Held(string digits, HeldFigure? figures, CultureInfo culture)
    {
        if (figures is null)
            return null;
        foreach (var part in Enum.GetValues<HeldPart>())
        {
            var held = figures with { Part = part };
            if (Math.Abs(held.Printed(1, 0)) == Number(digits))
                return Quantity.Text(Math.Abs(held.Printed(Pounds.KilogramsPerPound, 0)), 0, false, culture);
        }
        return null;
    }

    private static string Figure(string digits, double factor, CultureInfo culture, int? decimals = null)
    {
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        if (point < 0 && factor == 1 && !digits.Contains(',', StringComparison.Ordinal))
            return digits;
        var number = Number(digits) * factor;
        var places = decimals ?? (point < 0 ? 0 : Math.Min(6, digits.Length - point - 1));
        if (Rounded(number, places) == 0 && number != 0)
            places++; // a pound is half a kilogram, not none
        return Quantity.Text(Rounded(number, places), places, false, culture);
    }

    private static double Number(string digits) => double.Parse(digits, NumberStyles.Number, CultureInfo.InvariantCulture);

    private static double Rounded(double number, int places) => Math.Round(number, places, MidpointRounding.AwayFromZero);

    private static string Day(string day, CultureInfo culture) =>
        !culture.Equals(CultureInfo.InvariantCulture)
            && DateTime.TryParseExact(day, "d MMM yyyy", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            ? date.ToString("d. MMM yyyy", culture)
            : day;

    [GeneratedRegex("^-?" + Digits + "$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex IsNumber();

    [GeneratedRegex("(?<number>" + Digits + ")(?<unit>%| (?:lb/USG|lb/h|lb|kg|ft|NM|in|kt|SM|km|min|m|h|°C))",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Amounts();

    [GeneratedRegex("[0-9]+ (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) [0-9]{4}", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Days();
}
