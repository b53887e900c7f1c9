using System.Runtime.CompilerServices;
using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// Level flight along the route in steps of at most 25 NM, the weight burning off; every step has the air, weight and table values of its middle.
/// </summary>
internal sealed class ProfileCruise(ProfileTrack track, PerformanceTable table, ProfileTableEdges edges, double burnFactor)
{
    /// <summary>Greatest length of a step [NM].</summary>
    public const double StepNm = 25;

    private double _lastDeviationK;

    /// <summary>True airspeed [kt] and fuel flow with the aircraft's bias [lb/h].</summary>
    /// <returns>What is wrong, as a sentence; null where both are known.</returns>
    public string? Read(double weightLb, double deviationK, double levelFt, out double airspeedKt, out double flowLbPerHour)
    {
        Span<double> values = stackalloc double[2];
        var wrong = edges.Read(table, -1, [weightLb, deviationK, levelFt], values);
        (airspeedKt, flowLbPerHour) = (values[0], values[1] * burnFactor);
        return wrong;
    }

    /// <summary>Fuel flow at the weight a state has, in the air of the last step flown [lb/h].</summary>
    /// <returns>What is wrong, as a sentence; null where it is known.</returns>
    public string? FlowAt(ProfileState state, double levelFt, out double flowLbPerHour) =>
        Read(state.WeightLb, _lastDeviationK, levelFt, out _, out flowLbPerHour);

    /// <summary>Flies on, level, to a distance along the route.</summary>
    /// <param name="state">Where it begins; moved to where it ends.</param>
    /// <param name="toNm">Distance along the route at the end [NM].</param>
    /// <param name="levelFt">Level [ft].</param>
    /// <param name="slices">The steps are added here.</param>
    /// <returns>What stopped it; null where it reached its end.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ProfileTrouble? Fly(ref ProfileState state, double toNm, double levelFt, List<ProfileSlice> slices)
    {
        double groundSpeedKt = 0, flowLbPerHour = 0;
        while (state.AlongNm < toNm - ProfileTrack.SamePlaceNm)
        {
            var endNm = Math.Min(track.EndNm(state.Segment), toNm);
            var isRest = endNm - state.AlongNm <= StepNm + ProfileTrack.SamePlaceNm;
            var reachedNm = isRest ? endNm : state.AlongNm + StepNm;
            var lengthNm = reachedNm - state.AlongNm;
            var middle = track.At(state.Segment, state.AlongNm + lengthNm / 2);

            // The first step of a level is looked at from its start; the others from the speed and flow of the step before.
            if (groundSpeedKt == 0)
            {
                var first = track.Air(middle, levelFt, state.Hours);
                if (Read(state.WeightLb, StandardAtmosphere.DeviationK(first.Temperature, new Feet(levelFt)), levelFt, out groundSpeedKt,
                    out flowLbPerHour) is { } wrong)
                    return Stopped(wrong, state, levelFt);
            }

            var air = track.Air(middle, levelFt, state.Hours + (groundSpeedKt > 0 ? lengthNm / groundSpeedKt / 2 : 0));
            var deviationK = StandardAtmosphere.DeviationK(air.Temperature, new Feet(levelFt));
            ProfileSlice step = default;
            // Once with the flow of the step before for the weight in the middle, once with its own.
            for (var round = 0; round < 2; round++)
            {
                var middleLb = state.WeightLb - (groundSpeedKt > 0 ? flowLbPerHour * lengthNm / groundSpeedKt / 2 : 0);
                if (Read(middleLb, deviationK, levelFt, out var airspeedKt, out flowLbPerHour) is { } wrong) return Stopped(wrong, state, levelFt);
                step = new ProfileSlice
                {
                    Phase = FlightPhase.Cruise,
                    Segment = state.Segment,
                    StartNm = state.AlongNm,
                    EndNm = reachedNm,
                    StartFt = levelFt,
                    EndFt = levelFt,
                    Hours = 0,
                    BurnLb = 0,
                    AirNm = 0,
                    Air = air,
                    TrueAirspeedKt = airspeedKt,
                    GroundSpeedKt = 0,
                    TrueCourseDeg = middle.AzimuthDeg,
                    TrueHeadingDeg = middle.AzimuthDeg,
                };
                if (track.Steer(ref step) is { } wind) return wind;
                groundSpeedKt = step.GroundSpeedKt;
            }

            var hours = lengthNm / groundSpeedKt;
            slices.Add(step with { Hours = hours, BurnLb = flowLbPerHour * hours, AirNm = step.TrueAirspeedKt * hours });
            _lastDeviationK = deviationK;
            state.AlongNm = reachedNm;
            state.Hours += hours;
            state.WeightLb -= flowLbPerHour * hours;
            if (reachedNm >= track.EndNm(state.Segment) && state.Segment < track.Last) state.Segment++;
        }

        return null;
    }

    private ProfileTrouble Stopped(string why, ProfileState state, double levelFt) => new(why, track.Where(state.Segment, state.AlongNm, levelFt));
}
