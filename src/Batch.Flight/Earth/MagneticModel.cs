namespace Batch.Flight.Earth;

/// <summary>
/// The World Magnetic Model 2025 (NOAA NCEI and British Geological Survey, The US/UK World Magnetic Model for 2025-2030, technical report).
/// Reproduces the published test values to their last printed digit. Not for places within some kilometres of a magnetic pole, where a compass does not help.
/// </summary>
public static class MagneticModel
{
    private const double ReferenceRadiusKm = 6371.2; // geomagnetic reference radius of the model
    private const double EquatorialRadiusKm = Geodesic.EquatorialRadiusM / 1000;
    private const double EccentricitySquared = (2 - 1 / Geodesic.InverseFlattening) / Geodesic.InverseFlattening;

    private static readonly (double Diagonal, double Older, double Divisor)[] Factors = RecurrenceFactors();

    /// <summary>The field at a place.</summary>
    /// <param name="point">The place; at a pole north is the direction of the meridian of its longitude.</param>
    /// <param name="heightKm">Height above the WGS84 ellipsoid [km], -1 to 850.</param>
    /// <param name="decimalYear">The moment [decimal year]; the model is made for 2025.0 to
    /// 2030.0 and is carried on linearly beyond: see <see cref="IsValidOn"/>.</param>
    public static MagneticField FieldAt(GeoPoint point, double heightKm, double decimalYear)
    {
        var (sinLat, cosLat) = Angle.SinCosDeg(point.LatitudeDeg);
        var normalKm = EquatorialRadiusKm / Math.Sqrt(1 - EccentricitySquared * sinLat * sinLat);
        var axisKm = (normalKm + heightKm) * cosLat;
        var northKm = (normalKm * (1 - EccentricitySquared) + heightKm) * sinLat;
        var radiusKm = Math.Sqrt(axisKm * axisKm + northKm * northKm);
        // Spherical coordinates: colatitude theta, its cosine the sine of the geocentric latitude.
        var (cosTheta, sinTheta) = (northKm / radiusKm, axisKm / radiusKm);
        var sums = Sum(cosTheta, sinTheta, point.LongitudeDeg, ReferenceRadiusKm / radiusKm, decimalYear - MagneticCoefficients.Published.Epoch);

        // From geocentric back to geodetic axes: turned by the difference of the two latitudes.
        var sinTurn = cosTheta * cosLat - sinTheta * sinLat;
        var cosTurn = sinTheta * cosLat + cosTheta * sinLat;
        return new MagneticField(
            sums.North * cosTurn - sums.Down * sinTurn,
            sums.East,
            sums.North * sinTurn + sums.Down * cosTurn,
            sums.NorthRate * cosTurn - sums.DownRate * sinTurn,
            sums.EastRate,
            sums.NorthRate * sinTurn + sums.DownRate * cosTurn);
    }

    /// <summary>The magnetic variation [deg], east positive: true direction = magnetic direction + variation.</summary>
    /// <param name="point">The place.</param>
    /// <param name="altitude">Altitude above mean sea level; taken as height above the ellipsoid,
    /// which moves the result by less than 0.001 degree away from the magnetic poles.</param>
    /// <param name="date">The day.</param>
    public static double VariationDeg(GeoPoint point, Feet altitude, LocalDate date) =>
        FieldAt(point, altitude.Metres / 1000, DecimalYear(date)).DeclinationDeg;

    /// <summary>Whether the model is made for a day: 1 January 2025 up to and with 1 January 2030.</summary>
    public static bool IsValidOn(LocalDate date) => DecimalYear(date) is >= 2025 and <= 2030;

    /// <summary>The start of a day as a decimal year.</summary>
    public static double DecimalYear(LocalDate date) =>
        date.Year + (date.DayOfYear - 1.0) / date.Calendar.GetDaysInYear(date.Year);

    // Legendre functions, Schmidt quasi-normal, by recurrence in the degree (technical report, equations 4 to 16). For orders above 0 the functions are
    // kept divided by sin theta, so that the east component stays exact at the poles.
    private static Sums Sum(double cosTheta, double sinTheta, double lonDeg, double radiusRatio, double years)
    {
        const int Size = MagneticCoefficients.Degrees + 1;
        Span<double> sinOrder = stackalloc double[Size];
        Span<double> cosOrder = stackalloc double[Size];
        (sinOrder[0], cosOrder[0]) = (0, 1);
        var (sinLon, cosLon) = Angle.SinCosDeg(lonDeg);
        for (var m = 1; m < Size; m++)
        {
            sinOrder[m] = sinOrder[m - 1] * cosLon + cosOrder[m - 1] * sinLon;
            cosOrder[m] = cosOrder[m - 1] * cosLon - sinOrder[m - 1] * sinLon;
        }

        Span<double> powers = stackalloc double[Size];
        powers[0] = radiusRatio * radiusRatio;
        for (var n = 1; n < Size; n++) powers[n] = powers[n - 1] * radiusRatio;

        var terms = MagneticCoefficients.Published.Terms;
        var sums = default(Sums);
        var diagonal = 1.0; // P(m,m), for orders above 0 divided by sin theta
        var diagonalSlope = 0.0; // its derivative by theta, not divided
        for (var m = 0; m < Size; m++)
        {
            if (m > 0)
            {
                var factor = Factors[MagneticCoefficients.Place(m, m)].Diagonal;
                var full = m == 1 ? diagonal : diagonal * sinTheta;
                diagonalSlope = factor * (cosTheta * full + sinTheta * diagonalSlope);
                diagonal = factor * full;
            }

            var (older, newer, olderSlope, newerSlope) = (0.0, diagonal, 0.0, diagonalSlope);
            var toFull = m == 0 ? 1 : sinTheta;
            for (var n = m; n < Size; n++)
            {
                var place = MagneticCoefficients.Place(n, m);
                if (n > m)
                {
                    var (_, olderFactor, divisor) = Factors[place];
                    var twice = 2 * n - 1;
                    var next = (twice * cosTheta * newer - olderFactor * older) * divisor;
                    var nextSlope = (twice * (cosTheta * newerSlope - sinTheta * newer * toFull) - olderFactor * olderSlope) * divisor;
                    (older, newer, olderSlope, newerSlope) = (newer, next, newerSlope, nextSlope);
                }

                if (n > 0) sums.Add(terms[place], years, n, m, powers[n], sinOrder[m], cosOrder[m], newer, newer * toFull, newerSlope);
            }
        }

        return sums;
    }

    private static (double Diagonal, double Older, double Divisor)[] RecurrenceFactors()
    {
        var factors = new (double, double, double)[MagneticCoefficients.Count];
        for (var n = 1; n <= MagneticCoefficients.Degrees; n++)
        {
            for (var m = 0; m < n; m++)
                factors[MagneticCoefficients.Place(n, m)] = (0, Math.Sqrt(Math.Max(0, (n - 1) * (n - 1) - m * m)), 1 / Math.Sqrt(n * n - m * m));
            factors[MagneticCoefficients.Place(n, n)] = (n == 1 ? 1 : Math.Sqrt((2 * n - 1) / (2.0 * n)), 0, 0);
        }

        return factors;
    }

    private struct Sums
    {
        public double North, East, Down, NorthRate, EastRate, DownRate;

        public void Add(
            in MagneticCoefficients.Term term, double years, int degree, int order, double power, double sin, double cos, double divided, double full,
            double slope)
        {
            var g = term.G + years * term.GRate;
            var h = term.H + years * term.HRate;
            var along = power * (g * cos + h * sin);
            var alongRate = power * (term.GRate * cos + term.HRate * sin);
            North += along * slope;
            NorthRate += alongRate * slope;
            Down -= (degree + 1) * along * full;
            DownRate -= (degree + 1) * alongRate * full;
            if (order == 0) return;
            East += order * power * (g * sin - h * cos) * divided;
            EastRate += order * power * (term.GRate * sin - term.HRate * cos) * divided;
        }
    }
}
