using System.Buffers;
using System.Globalization;

namespace Batch.Books.Cells;

/// <summary>One cell as it came from the file, before anything is made of it.</summary>
/// <param name="Kind">What it holds.</param>
/// <param name="Text">The text, trimmed and without characters that are not seen; of a number its invariant form (a date as ISO 8601).</param>
/// <param name="Number">The number; dates as days since 1899-12-30 whatever the date system of the workbook.</param>
/// <param name="Look">How the number is shown.</param>
internal readonly record struct RawCell(CellKind Kind, string Text, double Number = 0, NumberLook Look = NumberLook.Plain)
{
    /// <summary>Day zero of <see cref="Number"/> where it is a date (the 1900 date system from 1 March 1900 on).</summary>
    public static readonly LocalDate DayZero = new(1899, 12, 30);

    /// <summary>A cell that holds nothing.</summary>
    public static RawCell Blank { get; } = new(CellKind.Blank, "");

    /// <summary>Whether it holds nothing.</summary>
    public bool IsBlank => Kind == CellKind.Blank;

    /// <summary>A cell of text; blank where only blanks are left; an error value where it is spelled like one.</summary>
    public static RawCell OfText(string text)
    {
        var trimmed = Trimmed(text);
        if (trimmed.Length == 0) return Blank;
        return new RawCell(trimmed[0] == '#' && ErrorWords.Contains(trimmed) ? CellKind.Error : CellKind.Text, trimmed);
    }

    /// <summary>A cell that holds a number.</summary>
    public static RawCell OfNumber(double number, NumberLook look = NumberLook.Plain) =>
        new(CellKind.Number, Shown(number, look), number, look);

    /// <summary>A cell that holds an error value.</summary>
    public static RawCell OfError(string word) => new(CellKind.Error, word);

    /// <summary>A cell that holds a truth value.</summary>
    public static RawCell OfBoolean(bool value) => new(CellKind.Boolean, value ? "TRUE" : "FALSE", value ? 1 : 0);

    private static readonly HashSet<string> ErrorWords =
        ["#N/A", "#REF!", "#VALUE!", "#DIV/0!", "#NAME?", "#NUM!", "#NULL!", "#SPILL!", "#CALC!", "#GETTING_DATA", "#FIELD!", "#BLOCKED!", "#UNKNOWN!",
            "#CONNECT!"];

    /// <summary>
    /// Characters that are not seen and change how others are shown or compared: zero-width ones, and those that turn the direction of what follows (Unicode
    /// Standard Annex 9).
    /// </summary>
    private static readonly SearchValues<char> Unseen = SearchValues.Create("\u00AD\u200B\u2060\uFEFF\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069");

    private static string Trimmed(string text) => Seen(text).Trim().Trim('\u00A0').Trim();

    private static string Seen(string text)
    {
        if (!text.AsSpan().ContainsAny(Unseen) && !text.Any(IsControl)) return text;
        return string.Concat(text.Where(letter => !Unseen.Contains(letter)).Select(letter => IsControl(letter) ? ' ' : letter));
    }

    private static bool IsControl(char letter) => char.IsControl(letter) && letter is not ('\t' or '\r' or '\n');

    private static string Shown(double number, NumberLook look)
    {
        if ((look & (NumberLook.Date | NumberLook.Clock)) != NumberLook.Plain && number >= 0 && number < 2_958_466)
        {
            var at = DayZero.AtMidnight().PlusSeconds((long)Math.Round(number * 86400));
            var time = at.TimeOfDay.Second == 0
                ? at.ToString("HH':'mm", CultureInfo.InvariantCulture)
                : at.ToString("HH':'mm':'ss", CultureInfo.InvariantCulture);
            if ((look & NumberLook.Date) == NumberLook.Plain) return number < 1 ? time : (number * 24).ToString("0.####", CultureInfo.InvariantCulture) + " h";
            var date = at.ToString("uuuu'-'MM'-'dd", CultureInfo.InvariantCulture);
            return at.TimeOfDay == LocalTime.Midnight ? date : date + "T" + time;
        }

        var plain = number.ToString("R", CultureInfo.InvariantCulture);
        return (look & NumberLook.Percent) != NumberLook.Plain ? (number * 100).ToString("0.##########", CultureInfo.InvariantCulture) + "%" : plain;
    }
}
