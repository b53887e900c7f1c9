using Batch.Flight.Plan;

namespace Batch.Checks.Enroute;

/// <summary>Time of a profile between altitudes.</summary>
internal static class TimeAbove
{
    /// <summary>Time above one altitude and up to another; a slice that crosses an altitude counts in proportion.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="aboveFt">Lower altitude, not included [ft].</param>
    /// <param name="toFt">Upper altitude, included [ft].</param>
    public static Duration Between(FlightProfile profile, double aboveFt, double toFt) =>
        Duration.FromHours(
            profile.Slices.Sum(slice => slice.Hours * Share(Math.Min(slice.StartFt, slice.EndFt), Math.Max(slice.StartFt, slice.EndFt), aboveFt, toFt)));

    private static double Share(double lowFt, double highFt, double aboveFt, double toFt) => lowFt == highFt
        ? lowFt > aboveFt && lowFt <= toFt ? 1 : 0
        : Math.Max(Math.Min(highFt, toFt) - Math.Max(lowFt, aboveFt), 0) / (highFt - lowFt);
}
