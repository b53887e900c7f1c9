using System.Globalization;
using System.Runtime.CompilerServices;
using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Climbs along the route by the differences of the cumulative climb table, in slices of at most 1,000 ft that end at route points.</summary>
internal sealed class ProfileClimb(ProfileTrack track, PerformanceTable table, ProfileTableEdges edges, double burnFactor)
{
    /// <summary>Greatest height of a slice [ft].</summary>
    public const double SliceFt = 1000;

    /// <summary>Axis of the altitude in the climb table.</summary>
    public const int AltitudeAxis = 2;

    /// <summary>Altitude below which the table stands still [ft]: sea level, or where it begins below that.</summary>
    public double FloorFt { get; } = Math.Min(0, table.Lowest(AltitudeAxis));

    /// <summary>
    /// Climbs on from where the state is; the last segment's line goes on beyond the destination, so that a climb too long for the route has a length.
    /// </summary>
    /// <param name="state">Where it begins; moved to where it ends.</param>
    /// <param name="fromFt">Altitude at the start [ft].</param>
    /// <param name="toFt">Altitude at the end [ft].</param>
    /// <param name="weightLb">Weight with which the table is read [lb].</param>
    /// <param name="slices">The slices are added here.</param>
    /// <returns>What stopped it; null where it reached its end.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ProfileTrouble? Fly(ref ProfileState state, double fromFt, double toFt, double weightLb, List<ProfileSlice> slices)
    {
        // What a foot of climb takes, from the slice before: only to find the middle of the next. The first slice is looked at where it starts.
        var start = track.At(state.Segment, state.AlongNm);
        var deviationK = StandardAtmosphere.DeviationK(track.Air(start, fromFt, state.Hours).Temperature, new Feet(fromFt));
        double hoursPerFt = 0, milesPerFt = 0;
        var lowFt = fromFt;
        for (var slice = 1; lowFt < toFt;)
        {
            var highFt = Math.Min(fromFt + slice * SliceFt, toFt);
            double minutes, lb, nm;
            if (hoursPerFt == 0)
            {
                if (Difference(weightLb, deviationK, lowFt, highFt, out minutes, out lb, out nm) is { } first) return Stopped(first, state, lowFt);
                (hoursPerFt, milesPerFt) = (minutes / 60 / (highFt - lowFt), nm / (highFt - lowFt));
            }

            // The middle of what lies before the next route point.
            var endNm = state.Segment == track.Last ? double.PositiveInfinity : track.EndNm(state.Segment);
            var expectedNm = milesPerFt * (highFt - lowFt);
            var half = (state.AlongNm + expectedNm > endNm ? (endNm - state.AlongNm) / expectedNm : 1) / 2;
            var middleFt = lowFt + (highFt - lowFt) * half;
            var middle = track.At(state.Segment, state.AlongNm + expectedNm * half);
            var air = track.Air(middle, middleFt, state.Hours + hoursPerFt * (highFt - lowFt) * half);
            deviationK = StandardAtmosphere.DeviationK(air.Temperature, new Feet(middleFt));

            if (Difference(weightLb, deviationK, lowFt, highFt, out minutes, out lb, out nm) is { } wrong) return Stopped(wrong, state, lowFt);
            var hours = minutes / 60;
            (hoursPerFt, milesPerFt) = (hours / (highFt - lowFt), nm / (highFt - lowFt));
            var whole = new ProfileSlice
            {
                Phase = FlightPhase.Climb,
                Segment = state.Segment,
                StartNm = state.AlongNm,
                EndNm = state.AlongNm,
                StartFt = lowFt,
                EndFt = highFt,
                Hours = hours,
                BurnLb = lb * burnFactor,
                AirNm = nm,
                Air = air,
                TrueAirspeedKt = nm / hours,
                GroundSpeedKt = 0,
                TrueCourseDeg = middle.AzimuthDeg,
                TrueHeadingDeg = middle.AzimuthDeg,
            };
            if (track.Steer(ref whole) is { } wind) return wind;

            var groundNm = whole.GroundSpeedKt * hours;
            var isCut = state.AlongNm + groundNm > endNm + ProfileTrack.SamePlaceNm;
            var share = isCut ? (endNm - state.AlongNm) / groundNm : 1;
            var reachedNm = isCut || state.AlongNm + groundNm > endNm - ProfileTrack.SamePlaceNm ? endNm : state.AlongNm + groundNm;
            var reachedFt = isCut ? lowFt + (highFt - lowFt) * share : highFt;
            slices.Add(whole with
            {
                EndNm = reachedNm,
                EndFt = reachedFt,
                Hours = hours * share,
                BurnLb = whole.BurnLb * share,
                AirNm = nm * share,
            });
            state.AlongNm = reachedNm;
            state.Hours += hours * share;
            state.WeightLb -= whole.BurnLb * share;
            if (reachedNm >= endNm) state.Segment++;
            lowFt = reachedFt;
            if (!isCut) slice++;
        }

        return null;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private string? Difference(double weightLb, double deviationK, double lowFt, double highFt, out double minutes, out double lb, out double nm)
    {
        Span<double> low = stackalloc double[3];
        Span<double> high = stackalloc double[3];
        (minutes, lb, nm) = (0, 0, 0);
        if (edges.Read(table, AltitudeAxis, [weightLb, deviationK, lowFt], low) is { } wrongLow) return wrongLow;
        if (edges.Read(table, AltitudeAxis, [weightLb, deviationK, highFt], high) is { } wrongHigh) return wrongHigh;
        (minutes, lb, nm) = (high[0] - low[0], high[1] - low[1], high[2] - low[2]);
        if (minutes > 0 && lb >= 0 && nm >= 0) return null;
        return string.Create(CultureInfo.InvariantCulture, $"{table.Name} does not rise from {lowFt:#,##0} to {highFt:#,##0} ft.");
    }

    private ProfileTrouble Stopped(string why, ProfileState state, double altitudeFt) => new(why, track.Where(state.Segment, state.AlongNm, altitudeFt));
}
