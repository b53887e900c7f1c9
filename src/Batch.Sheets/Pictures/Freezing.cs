using Batch.Flight.Plan;

namespace Batch.Sheets.Pictures;

/// <summary>Where an aircraft flies through 0 °C.</summary>
internal static class Freezing
{
    /// <summary>
    /// Distance along the route [NM] and altitude [ft] of every place where the outside air passes 0 °C, in order; between the middles of the profile's steps
    /// linear.
    /// </summary>
    /// <param name="profile">The profile, with the air met on every step.</param>
    public static ImmutableArray<(double Nm, double AltitudeFt)> Crossings(FlightProfile profile)
    {
        var steps = profile.Slices.Select(
            slice => (Nm: (slice.StartNm + slice.EndNm) / 2, Ft: (slice.StartFt + slice.EndFt) / 2, Celsius: slice.Air.Temperature.Value)).ToArray();
        return
        [
            .. steps.Zip(steps.Skip(1)).Where(pair => pair.First.Celsius > 0 != pair.Second.Celsius > 0).Select(pair =>
            {
                var share = pair.First.Celsius / (pair.First.Celsius - pair.Second.Celsius);
                return (pair.First.Nm + (share * (pair.Second.Nm - pair.First.Nm)), pair.First.Ft + (share * (pair.Second.Ft - pair.First.Ft)));
            }),
        ];
    }
}
