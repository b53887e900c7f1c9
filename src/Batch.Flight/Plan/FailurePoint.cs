using Batch.Flight.Earth;

namespace Batch.Flight.Plan;

/// <summary>A point of the cruise at which something may fail.</summary>
/// <param name="AlongNm">Distance along the route [NM].</param>
/// <param name="Hours">Time since takeoff [h].</param>
/// <param name="Position">Position.</param>
/// <param name="AltitudeFt">Altitude [ft].</param>
/// <param name="BurnedLb">Burned since takeoff [lb].</param>
internal readonly record struct FailurePoint(double AlongNm, double Hours, GeoPoint Position, double AltitudeFt, double BurnedLb)
{
    /// <summary>The start of every step of cruise, and the end of the last.</summary>
    /// <param name="setup">The leg.</param>
    /// <param name="profile">Its flight.</param>
    public static IEnumerable<FailurePoint> Of(LegSetup setup, FlightProfile profile)
    {
        double hours = 0, burnedLb = 0;
        for (var index = 0; index < profile.Slices.Length; index++)
        {
            var slice = profile.Slices[index];
            if (slice.Phase == FlightPhase.Cruise) yield return At(setup, slice, slice.StartNm, hours, burnedLb);
            hours += slice.Hours;
            burnedLb += slice.BurnLb;
            var isLast = index + 1 == profile.Slices.Length || profile.Slices[index + 1].Phase != FlightPhase.Cruise;
            if (slice.Phase == FlightPhase.Cruise && isLast) yield return At(setup, slice, slice.EndNm, hours, burnedLb);
        }
    }

    private static FailurePoint At(LegSetup setup, ProfileSlice slice, double alongNm, double hours, double burnedLb)
    {
        var segment = setup.Route.Segments[slice.Segment];
        return new FailurePoint(alongNm, hours, segment.Path.At(alongNm - segment.Start.Value).Point, slice.StartFt, burnedLb);
    }
}
