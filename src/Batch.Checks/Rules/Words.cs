using System.Globalization;

namespace Batch.Checks.Rules;

/// <summary>Numbers as a dispatcher writes them, in the sentences of findings.</summary>
internal static class Words
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>A number with its unit, thousands separated; decimals only where the unit wants them or the number would print as nothing.</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">Unit; empty for none.</param>
    public static string Amount(double value, string unit)
    {
        var format = unit switch
        {
            "in" => "#,0.00",
            "lb/USG" => "0.0##",
            "h" or "%" or "SM" => "#,0.#",
            "" => "#,0.##",
            _ => "#,0",
        };
        var text = value.ToString(format, Plain);
        if (value != 0 && text.All(letter => letter is '0' or '.' or '-' or ','))
        {
            text = value.ToString("0.####", Plain);
        }

        return unit.Length == 0 || unit == "%" ? text + unit : text + " " + unit;
    }

    /// <summary>A weight.</summary>
    /// <param name="weight">The weight.</param>
    public static string Amount(Pounds weight) => Amount(weight.Value, "lb");

    /// <summary>A level as an altitude.</summary>
    /// <param name="altitude">Altitude [ft].</param>
    public static string Amount(Feet altitude) => Amount(altitude.Value, "ft");

    /// <summary>A time, in minutes below two hours, else in hours and minutes.</summary>
    /// <param name="time">The time.</param>
    public static string Time(Duration time)
    {
        var minutes = (long)Math.Round(time.TotalMinutes, MidpointRounding.AwayFromZero);
        return Math.Abs(minutes) < 120
            ? minutes.ToString(Plain) + " min"
            : (minutes / 60).ToString(Plain) + " h " + Math.Abs(minutes % 60).ToString("00", Plain) + " min";
    }

    /// <summary>A local time of day at an airport, such as <c>21:40</c>.</summary>
    /// <param name="time">The time.</param>
    public static string Clock(LocalTime time) => time.ToString("HH:mm", Plain);

    /// <summary>A date, such as <c>7 Dec 2026</c>.</summary>
    /// <param name="date">The date.</param>
    public static string Day(LocalDate date) => date.ToString("d MMM uuuu", Plain);

    /// <summary>A count with its noun.</summary>
    /// <param name="count">The count.</param>
    /// <param name="one">Noun for one.</param>
    /// <param name="many">Noun for none or several.</param>
    public static string Count(int count, string one, string many) => count.ToString(Plain) + " " + (count == 1 ? one : many);

    /// <summary>A list in a sentence: <c>a, b and c</c>.</summary>
    /// <param name="parts">The parts.</param>
    public static string List(IEnumerable<string> parts)
    {
        var all = parts.ToImmutableArray();
        return all.Length < 2 ? string.Concat(all) : string.Join(", ", all[..^1]) + " and " + all[^1];
    }

    /// <summary>With a capital first letter.</summary>
    /// <param name="text">The text.</param>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
