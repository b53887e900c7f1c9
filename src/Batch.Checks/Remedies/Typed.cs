using System.Globalization;
using NodaTime.Text;

namespace Batch.Checks.Remedies;

/// <summary>Values as a dispatcher would type them into a cell; each carries its unit, so that the defaults of the book do not matter.</summary>
internal static class Typed
{
    private static readonly LocalTimePattern HourMinute = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>A weight, such as <c>1465 lb</c>.</summary>
    /// <param name="weight">The weight.</param>
    /// <param name="unit">The operator's unit.</param>
    public static string Weight(Pounds weight, WeightUnit unit) => unit.Of(weight).ToString("0.##", CultureInfo.InvariantCulture) + " " + unit.Name;

    /// <summary>What is left of a weight that was given in another unit, rounded down to what is typed, so that no less is taken off than was tried.</summary>
    /// <param name="weight">The weight.</param>
    /// <param name="unit">The operator's unit.</param>
    public static Pounds Rest(Pounds weight, WeightUnit unit) => unit.Weight(Math.Floor((unit.Of(weight) * 100) + 1e-6) / 100);

    /// <summary>
    /// The step in which weights are sought, 5 lb or 2 kg: whole numbers of the operator's unit, so that a weight is typed as it was tried and its sentence,
    /// in whole pounds, still gives the same kilograms.
    /// </summary>
    /// <param name="unit">The operator's unit.</param>
    public static Pounds Step(WeightUnit unit) => unit.Weight(unit == WeightUnit.Kilograms ? 2 : 5);

    /// <summary>
    /// A level, such as <c>FL190</c> or <c>9000 ft</c>; flight levels from 18,000 ft. Sentences have the thousands parted: <see cref="Rules.Words.Level"/>.
    /// </summary>
    /// <param name="level">The level.</param>
    public static string Level(Feet level) => Rules.Words.Level(level).Replace(",", "", StringComparison.Ordinal);

    /// <summary>A date, such as <c>2026-12-09</c>.</summary>
    /// <param name="date">The date.</param>
    public static string Date(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>A time of day, such as <c>09:30</c>.</summary>
    /// <param name="time">The time.</param>
    public static string Time(LocalTime time) => HourMinute.Format(time);
}
