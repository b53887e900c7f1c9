using System.Globalization;
using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>Where and when magnetic courses are not to be trusted.</summary>
internal static class CompassCaution
{
    /// <summary>Horizontal field below which a compass may be wrong [nT] (World Magnetic Model 2025, technical report: caution zone).</summary>
    private const double WeakNt = 6000;

    /// <summary>Horizontal field below which a compass is of no use [nT] (World Magnetic Model 2025, technical report: blackout zone).</summary>
    private const double TooWeakNt = 2000;

    /// <summary>Sentences about a route; none where the model holds and the field is strong everywhere.</summary>
    /// <param name="stops">Its stops, one place each.</param>
    /// <param name="date">Day of the flight.</param>
    public static IEnumerable<string> Of(IReadOnlyList<RouteStop> stops, LocalDate date)
    {
        var byModel = stops.Take(stops.Count - 1).Where(stop => stop.Choices[0].VariationDeg is null).ToArray();
        if (byModel.Length > 0 && !MagneticModel.IsValidOn(date)) yield return Outside(date);
        var fields = stops.Select(stop => HorizontalNt(stop, date)).ToArray();
        if (fields.Min() >= WeakNt) yield break;
        foreach (var (limitNt, aboveNt, words) in new[] { (TooWeakNt, 0.0, "is of no use"), (WeakNt, TooWeakNt, "may be wrong") })
        {
            var weak = stops.Where((_, i) => fields[i] < limitNt && fields[i] >= aboveNt).Select(stop => stop.Ident).Distinct(StringComparer.Ordinal).ToArray();
            if (weak.Length > 0) yield return string.Create(CultureInfo.InvariantCulture,
                $"Close to a magnetic pole (horizontal field below {limitNt:#,##0} nT) at {string.Join(", ", weak)}: a compass {words}, use the true courses.");
        }
    }

    /// <summary>The sentence about a day that the model is not made for.</summary>
    /// <param name="date">The day.</param>
    public static string Outside(LocalDate date) =>
        string.Create(CultureInfo.InvariantCulture,
            $"The World Magnetic Model 2025 is made for 2025 to 2030: the variation on {date:uuuu-MM-dd} is carried on from it.");

    private static double HorizontalNt(RouteStop stop, LocalDate date) =>
        MagneticModel.FieldAt(stop.Choices[0].Point.Position, 0, MagneticModel.DecimalYear(date)).HorizontalNt;
}
