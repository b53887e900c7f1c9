using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// The flight from a point of the cruise direct to an airport after a failure: down to a level by the differences of the descent table, on at that level by a
/// cruise table, down to the airport, approach, and 15 minutes of holding at 1,500 ft above it in standard air. The wind of each part is that of its middle.
/// Where the two descents are longer than the way they are flown in full, circling.
/// </summary>
/// <param name="context">The week's context.</param>
/// <param name="setup">The leg.</param>
/// <param name="failure">What failed.</param>
/// <param name="cruise">The cruise table flown by afterwards.</param>
/// <param name="descent">The descent table.</param>
/// <param name="edges">Reads the tables.</param>
internal sealed class DiversionFlight(
    PlanningContext context, LegSetup setup, CriticalFailure failure, PerformanceTable cruise, PerformanceTable descent, ProfileTableEdges edges)
{
    private const double HoldingHeightFt = 1500;
    private const double HoldingHours = 0.25;

    /// <summary>Ground speed that no flight exceeds, as a multiple of its airspeed: a tailwind as strong as the airspeed.</summary>
    private const double GreatestSpeedFactor = 2;

    /// <summary>Flow that no weight and temperature on the way fall below, as a share of that at the point itself.</summary>
    private const double LeastFlowShare = 0.8;

    private readonly double _burnFactor = 1 + setup.Aircraft.BurnBias;

    /// <summary>Fuel below which no airport at a distance can be reached.</summary>
    /// <param name="point">Where it fails.</param>
    /// <param name="weightLb">Weight there [lb].</param>
    /// <param name="levelFt">Altitude flown on at [ft].</param>
    /// <param name="fixedLb">Fuel of any diversion from here, however near [lb].</param>
    /// <param name="freeNm">Distance that the descents cover at most [NM].</param>
    /// <param name="lbPerNm">Least fuel of every mile beyond [lb/NM].</param>
    /// <returns>What is wrong, as a sentence; null where it is known.</returns>
    public string? Bound(FailurePoint point, double weightLb, double levelFt, out double fixedLb, out double freeNm, out double lbPerNm)
    {
        (fixedLb, freeNm, lbPerNm) = (0, 0, 0);
        Span<double> high = stackalloc double[3];
        Span<double> low = stackalloc double[3];
        Span<double> values = stackalloc double[2];
        if ((edges.Read(descent, 0, [point.AltitudeFt], high) ?? edges.Read(descent, 0, [levelFt], low)) is { } wrong) return wrong;
        var air = Air(point.Position, levelFt, point.Hours);
        if (edges.Read(cruise, -1, [weightLb, StandardAtmosphere.DeviationK(air.Temperature, new Feet(levelFt)), levelFt], values) is { } outside)
            return outside;
        fixedLb = (high[1] - low[1] + ApproachLb) * _burnFactor;
        freeNm = GreatestSpeedFactor * high[2];
        lbPerNm = values[1] * _burnFactor * LeastFlowShare / (GreatestSpeedFactor * values[0]);
        return null;
    }

    /// <summary>Flies to an airport.</summary>
    /// <param name="point">Where it fails.</param>
    /// <param name="weightLb">Weight there [lb].</param>
    /// <param name="levelFt">Altitude flown on at [ft], not above that of the point.</param>
    /// <param name="leftLb">Left aboard there by the other items of the ladder [lb].</param>
    /// <param name="airport">The airport.</param>
    /// <param name="flown">The flight; null where the airport lies above the level, the wind is too strong or a table ends before.</param>
    /// <returns>Which table ends, as a sentence; null where none does.</returns>
    public string? Fly(FailurePoint point, double weightLb, double levelFt, double leftLb, Airport airport, out CriticalPoint? flown)
    {
        flown = null;
        var fieldFt = Math.Max(airport.Elevation.Value, Math.Min(0, descent.Lowest(0)));
        if (fieldFt > levelFt) return null;
        Span<double> high = stackalloc double[3];
        Span<double> level = stackalloc double[3];
        Span<double> field = stackalloc double[3];
        if ((edges.Read(descent, 0, [point.AltitudeFt], high)
            ?? edges.Read(descent, 0, [levelFt], level)
            ?? edges.Read(descent, 0, [fieldFt], field)) is { } wrong) return wrong;

        var path = new GeodesicPath(point.Position, airport.Position);
        var hours = point.Hours;
        if (DescentNm(path, 0, high, level, (point.AltitudeFt + levelFt) / 2, ref hours) is not { } firstNm) return null;
        var lastHours = hours;
        if (DescentNm(path, path.Length.Value, level, field, (levelFt + fieldFt) / 2, ref lastHours) is not { } lastNm) return null;
        var descentLb = (high[1] - level[1]) * _burnFactor;
        var cruiseNm = Math.Max(0, path.Length.Value - firstNm - lastNm);
        if (LevelLb(path, firstNm + cruiseNm / 2, cruiseNm, weightLb - descentLb, levelFt, ref hours, out var cruiseLb, out var flowLbPerHour) is { } outside)
            return outside;
        if (double.IsNaN(cruiseLb)) return null;

        var approachLb = (level[1] - field[1] + ApproachLb) * _burnFactor;
        Span<double> holding = stackalloc double[1];
        holding[0] = flowLbPerHour / _burnFactor;
        if (setup.Type.Tables.Holding is { } table
            && edges.Read(table, -1, [AtLeastZeroFuel(weightLb - descentLb - cruiseLb - approachLb), airport.Elevation.Value + HoldingHeightFt],
                holding) is { } noHolding) return noHolding;
        flown = new CriticalPoint
        {
            Failure = failure,
            Distance = new NauticalMiles(point.AlongNm),
            Elapsed = Duration.FromHours(point.Hours),
            Position = point.Position,
            Altitude = new Feet(point.AltitudeFt),
            Weight = new Pounds(weightLb),
            Airport = airport.Ident,
            AirportDistance = path.Length,
            Level = new Feet(levelFt),
            Descent = new Pounds(descentLb),
            Cruise = new Pounds(cruiseLb),
            Approach = new Pounds(approachLb),
            Holding = new Pounds(holding[0] * _burnFactor * HoldingHours),
            Left = new Pounds(leftLb),
        };
        return null;
    }

    // Where the way takes more than is aboard, what is missing will be carried: no part of it is flown below the zero-fuel weight.
    private double AtLeastZeroFuel(double weightLb) => Math.Max(weightLb, setup.Load.ZeroFuel.Weight.Value);

    private double ApproachLb => (setup.Type.ApproachFuel ?? Pounds.Zero).Value;

    // Ground distance of a descent, flown from or to an end of the path [NM]; null where the wind is too strong for it.
    private double? DescentNm(GeodesicPath path, double endNm, ReadOnlySpan<double> above, ReadOnlySpan<double> below, double middleFt, ref double hours)
    {
        var took = (above[0] - below[0]) / 60;
        var airNm = above[2] - below[2];
        if (!(took > 0 && airNm > 0)) return 0;
        var at = path.At(Math.Abs(endNm - Math.Min(airNm / 2, path.Length.Value)));
        var solution = Steer(at, airNm / took, middleFt, hours + took / 2);
        hours += took;
        return solution.IsFlyable ? solution.GroundSpeed.Value * took : null;
    }

    // Fuel of level flight [lb]; NaN where the wind is too strong. Once with the weight at its start, once with that of its middle.
    private string? LevelLb(GeodesicPath path, double middleNm, double lengthNm, double weightLb, double levelFt, ref double hours, out double burnLb,
        out double flowLbPerHour)
    {
        (burnLb, flowLbPerHour) = (0, 0);
        Span<double> values = stackalloc double[2];
        var at = path.At(Math.Min(middleNm, path.Length.Value));
        var deviationK = StandardAtmosphere.DeviationK(Air(at.Point, levelFt, hours).Temperature, new Feet(levelFt));
        double took = 0;
        for (var round = 0; round < 2; round++)
        {
            if (edges.Read(cruise, -1, [AtLeastZeroFuel(weightLb - burnLb / 2), deviationK, levelFt], values) is { } outside) return outside;
            flowLbPerHour = values[1] * _burnFactor;
            var solution = Steer(at, values[0], levelFt, hours + took / 2);
            took = lengthNm == 0 ? 0 : solution.IsFlyable ? lengthNm / solution.GroundSpeed.Value : double.NaN;
            burnLb = flowLbPerHour * took;
            if (double.IsNaN(burnLb)) return null;
        }

        hours += took;
        return null;
    }

    private WindSolution Steer(GeodesicEnd at, double airspeedKt, double altitudeFt, double hours)
    {
        var air = context.Air.Met(at, new Feet(altitudeFt), setup.Takeoff + Duration.FromHours(hours));
        return WindTriangle.Solve(TrueDegrees.Of(at.AzimuthDeg), new Knots(airspeedKt), air.WindFrom, air.WindSpeed);
    }

    private AirSample Air(GeoPoint point, double altitudeFt, double hours) =>
        context.Air.At(point, new Feet(altitudeFt), setup.Takeoff + Duration.FromHours(hours));
}
