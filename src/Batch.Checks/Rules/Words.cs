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
        if (unit == "h" && Math.Abs(value) < ClockHours)
        {
            return Hours(value);
        }

        var format = unit switch
        {
            "in" => "#,0.00",
            "lb/USG" => "0.0##",
            "h" or "%" => "#,0.#",
            "SM" => "#,0.##",
            "" => "#,0.##",
            _ => "#,0",
        };
        var text = value.ToString(format, Plain);
        if (value != 0 && text.All(letter => letter is '0' or '.' or '-' or ','))
        {
            text = value.ToString("0.####", Plain);
        }

        return unit.Length == 0 || unit == "%" ? text + unit : text + " " + (value == 1 && unit is ("days" or "persons" or "rests" or "approaches") ? unit[..^(unit == "approaches" ? 2 : 1)] : unit);
    }

    /// <summary>Hours as they are said: up to two days on the clock in hours and minutes, longer ones (experience, an airframe) in hours.</summary>
    internal const double ClockHours = 48;

    private static string Hours(double value)
    {
        var minutes = (long)Math.Round(Math.Abs(value) * 60, MidpointRounding.AwayFromZero);
        var sign = value < 0 && minutes > 0 ? "-" : "";
        return minutes == 0 ? value == 0 ? "0 h" : "less than a minute"
            : minutes < 60 ? $"{sign}{minutes.ToString(Plain)} min"
            : minutes % 60 == 0 ? $"{sign}{(minutes / 60).ToString(Plain)} h"
            : $"{sign}{(minutes / 60).ToString(Plain)} h {(minutes % 60).ToString("00", Plain)} min";
    }

    /// <summary>
    /// A visibility as people read it: in statute miles where it is a whole number of quarters of one (it was written in miles), else in metres.
    /// </summary>
    /// <param name="metres">The visibility [m].</param>
    public static string Visibility(double metres)
    {
        var quarters = Math.Round(metres / Alternates.Visibilities.MetresPerStatuteMile * 4);
        return quarters > 0 && Math.Abs((metres / Alternates.Visibilities.MetresPerStatuteMile * 4) - quarters) < 0.004 ? Amount(quarters / 4, "SM")
            : metres >= 9999 ? "10 km or more"
            : Amount(metres, "m");
    }

    /// <summary>A weight.</summary>
    /// <param name="weight">The weight.</param>
    public static string Amount(Pounds weight) => Amount(weight.Value, "lb");

    /// <summary>A level as an altitude.</summary>
    /// <param name="altitude">Altitude [ft].</param>
    public static string Amount(Feet altitude) => Amount(altitude.Value, "ft");

    /// <summary>A level, such as <c>FL190</c> or <c>9,000 ft</c>; flight levels from 18,000 ft.</summary>
    /// <param name="level">The level.</param>
    public static string Level(Feet level) =>
        level.Value >= 18_000 && level.Value % 500 == 0 ? string.Create(Plain, $"FL{level.Value / 100:000}") : Amount(level);

    /// <summary>A time, in minutes below two hours, else in hours and minutes.</summary>
    /// <param name="time">The time.</param>
    public static string Time(Duration time)
    {
        var minutes = (long)Math.Round(time.TotalMinutes, MidpointRounding.AwayFromZero);
        return Math.Abs(minutes) < 120
            ? minutes.ToString(Plain) + " min"
            : (minutes / 60).ToString(Plain) + " h " + Math.Abs(minutes % 60).ToString("00", Plain) + " min";
    }

    /// <summary>A time at an airport as its own clocks show it, said to be so: <c>21:40 local</c>.</summary>
    /// <param name="at">The instant.</param>
    /// <param name="zone">Zone of the airport.</param>
    public static string Local(Instant at, DateTimeZone zone) => Clock(at.InZone(zone).TimeOfDay) + " local";

    /// <summary>The same with its day: <c>21:40 local on 7 Dec 2026</c>.</summary>
    /// <param name="at">The instant.</param>
    /// <param name="zone">Zone of the airport.</param>
    public static string LocalDay(Instant at, DateTimeZone zone) => $"{Local(at, zone)} on {Day(at.InZone(zone).Date)}";

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
