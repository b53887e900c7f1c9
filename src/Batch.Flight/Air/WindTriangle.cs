using System.Runtime.CompilerServices;
using Batch.Flight.Earth;

namespace Batch.Flight.Air;

/// <summary>The triangle of air speed, wind and ground speed, solved exactly in the plane (FAA-H-8083-25C, chapter 16).</summary>
public static class WindTriangle
{
    /// <summary>
    /// The heading that holds a course, and the ground speed. Not flyable: no airspeed, a crosswind above the airspeed, or a ground speed of zero or less.
    /// Calm wind gives the course and the airspeed themselves.
    /// </summary>
    /// <param name="course">True course [deg].</param>
    /// <param name="trueAirspeed">True airspeed [kt].</param>
    /// <param name="windFrom">Direction the wind blows from [deg], true.</param>
    /// <param name="windSpeed">Wind speed [kt], zero or more.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static WindSolution Solve(TrueDegrees course, Knots trueAirspeed, TrueDegrees windFrom, Knots windSpeed)
    {
        var (sin, cos) = Angle.SinCosDeg(windFrom.Value - course.Value);
        var headwindKt = 0 + windSpeed.Value * cos;
        var crosswindKt = 0 + windSpeed.Value * sin;
        var airspeedKt = trueAirspeed.Value;
        if (!(airspeedKt > 0) || Math.Abs(crosswindKt) > airspeedKt)
            return new WindSolution(false, 0, course, Knots.Zero, new Knots(headwindKt), new Knots(crosswindKt));

        var correctionDeg = Math.Asin(crosswindKt / airspeedKt) * Angle.DegreesPerRadian;
        var groundSpeedKt = Math.Sqrt((airspeedKt - crosswindKt) * (airspeedKt + crosswindKt)) - headwindKt;
        return new WindSolution(
            groundSpeedKt > 0,
            correctionDeg,
            TrueDegrees.Of(course.Value + correctionDeg),
            new Knots(groundSpeedKt),
            new Knots(headwindKt),
            new Knots(crosswindKt));
    }

    /// <summary>The wind that explains a track and ground speed made good on a heading at an airspeed. No difference is a calm from 0 degrees.</summary>
    /// <param name="track">True track made good [deg].</param>
    /// <param name="heading">True heading [deg].</param>
    /// <param name="trueAirspeed">True airspeed [kt].</param>
    /// <param name="groundSpeed">Ground speed [kt].</param>
    public static Wind FindWind(TrueDegrees track, TrueDegrees heading, Knots trueAirspeed, Knots groundSpeed)
    {
        var (sinHeading, cosHeading) = Angle.SinCosDeg(heading.Value);
        var (sinTrack, cosTrack) = Angle.SinCosDeg(track.Value);
        // The wind blows from where the air would have put the aircraft, seen from where the ground did.
        var east = trueAirspeed.Value * sinHeading - groundSpeed.Value * sinTrack;
        var north = trueAirspeed.Value * cosHeading - groundSpeed.Value * cosTrack;
        var speedKt = Math.Sqrt(east * east + north * north);
        return new Wind(speedKt > 0 ? TrueDegrees.Of(Angle.Atan2Deg(east, north)) : TrueDegrees.Of(0), new Knots(speedKt));
    }
}
