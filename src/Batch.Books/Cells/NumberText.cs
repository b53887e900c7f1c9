using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Books.Cells;

/// <summary>
/// Reads numbers written as text, with thousands separators and either decimal sign; what could mean two numbers is never decided in silence.
/// </summary>
internal static partial class NumberText
{
    /// <summary>Numbers further from zero than this stand in no book; they would not stay finite in reckoning.</summary>
    public const double Greatest = 1e12;

    /// <summary>Begins the caution about a comma taken for the decimal sign.</summary>
    public const string DecimalComma = "is read with a decimal comma: ";

    /// <summary>Splits <c>1,200 lb</c> into its number and what follows it.</summary>
    public static (string Number, string Unit) Split(string text)
    {
        var end = 0;
        if (end < text.Length && text[end] is '+' or '-' or '\u2212') end++;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or ',' or ' ' or '\u00A0' or '\u202F' or '\u2009')) end++;
        var number = text[..end].TrimEnd();
        return (number, text[end..].Trim());
    }

    /// <summary>The number a text means.</summary>
    /// <param name="text">The text, nothing after the number.</param>
    /// <param name="decimalComma">Whether a comma is the decimal sign in this file.</param>
    public static Reading<double> Read(string text, bool decimalComma)
    {
        if (text.Length > 60) return NotANumber;
        var plain = Spaces().Replace(text.Trim().Replace('\u2212', '-'), " ");
        if (plain.Contains(' ', StringComparison.Ordinal))
        {
            if (!GroupedBySpaces().IsMatch(plain)) return NotANumber;
            plain = plain.Replace(" ", "", StringComparison.Ordinal);
        }

        var (mark, other) = decimalComma ? (',', '.') : ('.', ',');
        var caution = "";
        if (plain.Contains(other, StringComparison.Ordinal))
        {
            var grouped = decimalComma ? GroupedByPoints() : GroupedByCommas();
            if (grouped.IsMatch(plain))
            {
                // 1.200 in a file with decimal commas may be twelve hundred or one point two; 1,200 beside decimal points is twelve hundred.
                if (decimalComma && !plain.Contains(mark, StringComparison.Ordinal) && plain.Count(c => c == other) == 1)
                {
                    var thousands = plain.Replace(".", "", StringComparison.Ordinal);
                    return Reading<double>.Bad("could be two different numbers", thousands + " or " + plain.Replace('.', ','));
                }

                plain = plain.Replace(other.ToString(), "", StringComparison.Ordinal);
            }
            else if (plain.Count(c => c == other) == 1
                && (!plain.Contains(mark, StringComparison.Ordinal) || (!decimalComma && GroupedByPoints().IsMatch(plain))))
            {
                // Points before the comma part thousands: 1.380,5 means one number only.
                plain = plain.Replace(mark.ToString(), "", StringComparison.Ordinal).Replace(other, mark);
                if (!decimalComma) caution = DecimalComma + plain;
            }
            else
            {
                return NotANumber;
            }
        }

        if (mark == ',') plain = plain.Replace(',', '.');
        return double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && Math.Abs(number) <= Greatest
            ? Reading<double>.Good(number, caution)
            : NotANumber;
    }

    private static Reading<double> NotANumber => Reading<double>.Bad("is not a number", "a number");

    [GeneratedRegex(@"[\u00A0\u202F\u2009 ]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^[+-]?\d{1,3}( \d{3})+([.,]\d+)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex GroupedBySpaces();

    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d+)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex GroupedByCommas();

    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2}(\.\d{3})+(,\d+)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex GroupedByPoints();
}
