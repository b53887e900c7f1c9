using System.Globalization;
using NodaTime.Text;

namespace Batch.Checks.Remedies;

/// <summary>Values as a dispatcher would type them into a cell; each carries its unit, so that the defaults of the book do not matter.</summary>
internal static class Typed
{
    private static readonly LocalTimePattern HourMinute = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>A weight, such as <c>1465 lb</c>.</summary>
    /// <param name="pounds">The weight.</param>
    public static string Weight(Pounds pounds) => pounds.Value.ToString("0.##", CultureInfo.InvariantCulture) + " lb";

    /// <summary>A level, such as <c>FL190</c> or <c>9000 ft</c>; flight levels from 18,000 ft.</summary>
    /// <param name="level">The level.</param>
    public static string Level(Feet level) => level.Value >= 18_000 && level.Value % 500 == 0
        ? string.Create(CultureInfo.InvariantCulture, $"FL{level.Value / 100:000}")
        : string.Create(CultureInfo.InvariantCulture, $"{level.Value:0} ft");

    /// <summary>A date, such as <c>2026-12-09</c>.</summary>
    /// <param name="date">The date.</param>
    public static string Date(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>A time of day, such as <c>09:30</c>.</summary>
    /// <param name="time">The time.</param>
    public static string Time(LocalTime time) => HourMinute.Format(time);
}
