namespace Batch.Flight.Earth;

/// <summary>Trigonometry in degrees that stays exact where the answer is exact: at multiples of 90 degrees and for tiny differences of longitude.</summary>
internal static class Angle
{
    /// <summary>Radians in a degree [rad/deg].</summary>
    public const double RadiansPerDegree = Math.PI / 180;

    /// <summary>Degrees in a radian [deg/rad].</summary>
    public const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>A longitude [deg] in -180 up to but not 180; 180 becomes -180.</summary>
    public static double NormalLongitudeDeg(double lonDeg)
    {
        if (lonDeg is >= -180 and < 180) return lonDeg;
        var turned = Math.IEEERemainder(lonDeg, 360);
        return turned >= 180 ? -180 : turned;
    }

    /// <summary>A direction [deg] in 0 up to but not 360.</summary>
    public static double NormalAzimuthDeg(double azimuthDeg)
    {
        var turned = azimuthDeg % 360;
        if (turned < 0) turned += 360;
        return turned >= 360 || turned == 0 ? 0 : turned;
    }

    /// <summary>Sine and cosine of an angle in degrees; exact at multiples of 90 degrees.</summary>
    public static (double Sin, double Cos) SinCosDeg(double deg)
    {
        if (Math.Abs(deg) <= 45) return Math.SinCos(deg * RadiansPerDegree);
        // In a few turns the difference is exact: both are whole multiples of the last bit of the angle.
        var turns = Math.Round(deg / 90);
        var rest = Math.Abs(deg) <= 720 ? deg - 90 * turns : Math.IEEERemainder(deg, 90);
        return Quadrant(Math.SinCos(rest * RadiansPerDegree), (long)Math.Round((deg - rest) / 90));
    }

    /// <summary>Sine and cosine of the sum of an angle and a rounding error left over by <see cref="DifferenceDeg"/>.</summary>
    public static (double Sin, double Cos) SinCosDeg(double deg, double errorDeg)
    {
        var rest = Math.IEEERemainder(deg, 90);
        return Quadrant(Math.SinCos((rest + errorDeg) * RadiansPerDegree), (long)Math.Round((deg - rest) / 90));
    }

    /// <summary>The angle [deg], -180 to 180, whose sine and cosine stand in the given ratio; exact on the axes.</summary>
    public static double Atan2Deg(double y, double x)
    {
        if (Math.Abs(y) > Math.Abs(x))
        {
            var fromAxis = Math.Atan2(x, Math.Abs(y)) * DegreesPerRadian;
            return y < 0 ? fromAxis - 90 : 90 - fromAxis;
        }

        if (x >= 0) return Math.Atan2(y, x) * DegreesPerRadian;
        var fromSouth = Math.Atan2(y, -x) * DegreesPerRadian;
        return (y < 0 ? -180 : 180) - fromSouth;
    }

    /// <summary>
    /// The difference of two longitudes [deg], -180 to 180, with the part lost in rounding: the true difference is the sum of both.
    /// Near antipodal points need it, where the last bit of the longitude moves the geodesic by metres.
    /// </summary>
    public static (double Deg, double ErrorDeg) DifferenceDeg(double fromDeg, double toDeg)
    {
        var (first, firstError) = ExactSum(Math.IEEERemainder(-fromDeg, 360), Math.IEEERemainder(toDeg, 360));
        var (second, secondError) = ExactSum(Math.IEEERemainder(first, 360), firstError);
        if (second is -180 && secondError <= 0) return (180, secondError);
        return second is 180 && secondError > 0 ? (-180, secondError) : (second, secondError);
    }

    private static (double Sum, double Error) ExactSum(double a, double b)
    {
        var sum = a + b;
        var partOfB = sum - a;
        var partOfA = sum - partOfB;
        return (sum, (a - partOfA) + (b - partOfB));
    }

    private static (double Sin, double Cos) Quadrant((double Sin, double Cos) rest, long quarterTurns) => (quarterTurns & 3) switch
    {
        0 => (rest.Sin, rest.Cos),
        1 => (rest.Cos, 0 - rest.Sin),
        2 => (0 - rest.Sin, 0 - rest.Cos),
        _ => (0 - rest.Cos, rest.Sin),
    };
}
