using System.Globalization;
using System.Runtime.CompilerServices;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// The descent, flown backward from the destination by the differences of the cumulative descent table, in slices of at most 1,000 ft that end at route points.
/// </summary>
internal sealed class ProfileDescent(ProfileTrack track, PerformanceTable table, ProfileTableEdges edges, double burnFactor)
{
    /// <summary>Altitude below which the table stands still [ft]: sea level, or where it begins below that.</summary>
    public double FloorFt { get; } = Math.Min(0, table.Lowest(0));

    /// <summary>Time [h] and still-air distance [NM] of a descent by the table alone.</summary>
    /// <returns>What is wrong, as a sentence; null where it has both.</returns>
    public string? StillAir(double fromFt, double toFt, out double hours, out double nm)
    {
        (hours, nm) = (0, 0);
        Span<double> high = stackalloc double[3];
        Span<double> low = stackalloc double[3];
        if (edges.Read(table, 0, [fromFt], high) is { } wrongHigh) return wrongHigh;
        if (edges.Read(table, 0, [toFt], low) is { } wrongLow) return wrongLow;
        (hours, nm) = ((high[0] - low[0]) / 60, high[2] - low[2]);
        return null;
    }

    /// <summary>
    /// Finds the descent that ends at the destination at a time; the first segment's line goes on before the departure, so that a descent too long for the
    /// route has a length.
    /// </summary>
    /// <param name="fromFt">Altitude at its start [ft].</param>
    /// <param name="toFt">Altitude at its end [ft].</param>
    /// <param name="endHours">Time since takeoff at its end, for the winds [h].</param>
    /// <param name="slices">Filled with the slices, the last flown first.</param>
    /// <returns>What stopped it; null where it reached its start.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ProfileTrouble? Fly(double fromFt, double toFt, double endHours, List<ProfileSlice> slices)
    {
        Span<double> below = stackalloc double[3];
        Span<double> above = stackalloc double[3];
        var segment = track.Last;
        var alongNm = track.LengthNm;
        var lowFt = toFt;
        if (lowFt < fromFt && edges.Read(table, 0, [lowFt], below) is { } wrongLow) return Stopped(wrongLow, segment, alongNm, lowFt);
        for (var slice = 1; lowFt < fromFt; slice++)
        {
            var highFt = Math.Min(toFt + slice * ProfileClimb.SliceFt, fromFt);
            if (edges.Read(table, 0, [highFt], above) is { } wrongHigh) return Stopped(wrongHigh, segment, alongNm, highFt);
            var (minutes, lb, nm) = (above[0] - below[0], above[1] - below[1], above[2] - below[2]);
            above.CopyTo(below);
            if (!(minutes > 0 && lb >= 0 && nm >= 0))
                return Stopped(string.Create(CultureInfo.InvariantCulture, $"{table.Name} does not rise from {lowFt:#,##0} to {highFt:#,##0} ft."), segment,
                    alongNm, highFt);

            // The table has no deviation or weight: within a slice every foot takes the same. What lies beyond a route point is turned along its own segment.
            var heightFt = highFt - lowFt;
            var (hoursPerFt, lbPerFt, milesPerFt) = (minutes / 60 / heightFt, lb * burnFactor / heightFt, nm / heightFt);
            while (lowFt < highFt)
            {
                var startNm = segment == 0 ? double.NegativeInfinity : track.StartNm(segment);
                var expectedNm = milesPerFt * (highFt - lowFt);
                var half = (alongNm - expectedNm < startNm ? (alongNm - startNm) / expectedNm : 1) / 2;
                var middleFt = lowFt + (highFt - lowFt) * half;
                var middle = track.At(segment, alongNm - expectedNm * half);
                var hours = hoursPerFt * (highFt - lowFt);
                var whole = new ProfileSlice
                {
                    Phase = FlightPhase.Descent,
                    Segment = segment,
                    StartNm = alongNm,
                    EndNm = alongNm,
                    StartFt = highFt,
                    EndFt = lowFt,
                    Hours = hours,
                    BurnLb = lbPerFt * (highFt - lowFt),
                    AirNm = expectedNm,
                    Air = track.Air(middle, middleFt, Math.Max(0, endHours - hours * half)),
                    TrueAirspeedKt = milesPerFt / hoursPerFt,
                    GroundSpeedKt = 0,
                    TrueCourseDeg = middle.AzimuthDeg,
                    TrueHeadingDeg = middle.AzimuthDeg,
                };
                if (track.Steer(ref whole) is { } wind) return wind;

                var groundNm = whole.GroundSpeedKt * hours;
                var isCut = alongNm - groundNm < startNm - ProfileTrack.SamePlaceNm;
                var share = isCut ? (alongNm - startNm) / groundNm : 1;
                var reachedNm = isCut || alongNm - groundNm < startNm + ProfileTrack.SamePlaceNm ? startNm : alongNm - groundNm;
                var reachedFt = isCut ? lowFt + (highFt - lowFt) * share : highFt;
                slices.Add(whole with
                {
                    StartNm = reachedNm,
                    StartFt = reachedFt,
                    Hours = hours * share,
                    BurnLb = whole.BurnLb * share,
                    AirNm = expectedNm * share,
                });
                alongNm = reachedNm;
                endHours -= hours * share;
                if (reachedNm <= startNm) segment--;
                lowFt = reachedFt;
            }
        }

        return null;
    }

    private ProfileTrouble Stopped(string why, int segment, double alongNm, double altitudeFt) => new(why, track.Where(segment, alongNm, altitudeFt));
}
