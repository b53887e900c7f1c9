namespace Batch.SampleMaker.Tables;

/// <summary>Flight of an invented airframe from first principles: a drag polar, power that falls with density, fuel flow linear in power.</summary>
public static class Performance
{
    private const double HpToWatt = 745.699872;
    private const double KtToMs = 1852.0 / 3600;
    private const double LbToNewton = 0.45359237 * 9.80665;
    private const double SeaLevelDensity = 1.225;
    private const double ClimbStepFt = 250;

    /// <summary>True airspeed [kt] and fuel flow [lb/h] in level cruise.</summary>
    public static (double TasKt, double FlowLbPerH) Cruise(Airframe airframe, double powerShare, double weightLb, double isaK, double altitudeFt)
    {
        var powerHp = powerShare * Power(airframe, altitudeFt, isaK);
        var watts = powerHp * HpToWatt * airframe.PropellerEfficiency;
        double slow = 110, fast = 420;
        for (var i = 0; i < 60; i++)
        {
            var middle = (slow + fast) / 2;
            if (Drag(airframe, middle, weightLb, isaK, altitudeFt) * middle * KtToMs < watts)
            {
                slow = middle;
            }
            else
            {
                fast = middle;
            }
        }

        return (slow, Flow(airframe, powerHp, altitudeFt));
    }

    /// <summary>Time [min], fuel [lb] and still-air distance [NM] of a climb from sea level to each of the altitudes [ft], rising.</summary>
    public static IEnumerable<(int AltitudeFt, double Minutes, double FuelLb, double DistanceNm)> Climb(Airframe airframe, double weightLb, double isaK,
        IEnumerable<int> altitudesFt)
    {
        double at = 0, minutes = 0, fuel = 0, distance = 0;
        foreach (var altitude in altitudesFt)
        {
            while (at < altitude - 1e-6)
            {
                var middle = at + (ClimbStepFt / 2);
                var tas = (airframe.ClimbSpeedKt - (middle / 1000)) / Math.Sqrt(Atmosphere.Sigma(middle, isaK));
                var powerHp = airframe.ClimbPowerShare * Power(airframe, middle, isaK);
                var excess = (powerHp * HpToWatt * airframe.PropellerEfficiency * 0.94) - (Drag(airframe, tas, weightLb - fuel, isaK, middle) * tas * KtToMs);
                var feetPerMinute = excess / ((weightLb - fuel) * LbToNewton) / 0.3048 * 60;
                if (feetPerMinute < 100)
                {
                    throw new InvalidOperationException(FormattableString.Invariant($"Cannot climb to {altitude} ft at {weightLb} lb."));
                }

                var step = ClimbStepFt / feetPerMinute;
                minutes += step;
                fuel += step / 60 * Flow(airframe, powerHp, middle);
                distance += step / 60 * tas;
                at += ClimbStepFt;
            }

            yield return (altitude, minutes, fuel, distance);
        }
    }

    /// <summary>Time [min], fuel [lb] and still-air distance [NM] of a descent to sea level from an altitude [ft].</summary>
    public static (double Minutes, double FuelLb, double DistanceNm) Descent(Airframe airframe, int altitudeFt)
    {
        var minutes = altitudeFt / airframe.DescentFtPerMin;
        double fuel = 0, distance = 0;
        const int Slices = 40;
        for (var i = 0; i < Slices; i++)
        {
            var at = altitudeFt * (i + 0.5) / Slices;
            fuel += minutes / Slices / 60 * Flow(airframe, airframe.DescentPowerShare * airframe.FlatPowerHp, at);
            distance += minutes / Slices / 60 * airframe.DescentSpeedKt / Math.Sqrt(Atmosphere.Sigma(at, 0));
        }

        return (minutes, fuel, distance);
    }

    /// <summary>Fuel flow [lb/h] of level flight at the holding speed.</summary>
    public static double Holding(Airframe airframe, double weightLb, double altitudeFt)
    {
        var tas = airframe.HoldingSpeedKt / Math.Sqrt(Atmosphere.Sigma(altitudeFt, 0));
        var powerHp = Drag(airframe, tas, weightLb, 0, altitudeFt) * tas * KtToMs / airframe.PropellerEfficiency / HpToWatt;
        return Flow(airframe, powerHp, altitudeFt);
    }

    /// <summary>Takeoff ground roll and distance over the obstacle [ft].</summary>
    public static (double RollFt, double OverFt) Takeoff(Airframe airframe, double weightLb, double altitudeFt, double temperatureC)
    {
        var sigma = Sigma(altitudeFt, temperatureC);
        var roll = airframe.TakeoffRollFt * Math.Pow(weightLb / airframe.RunwayWeightLb, 2.1) * Math.Pow(sigma, -1.8);
        return (roll, roll * (1.45 + (0.1 * weightLb / airframe.RunwayWeightLb)));
    }

    /// <summary>Landing ground roll and distance over the obstacle [ft].</summary>
    public static (double RollFt, double OverFt) Landing(Airframe airframe, double weightLb, double altitudeFt, double temperatureC)
    {
        var roll = airframe.LandingRollFt * Math.Pow(weightLb / airframe.RunwayWeightLb, 1.05) / Sigma(altitudeFt, temperatureC);
        return (roll, (roll * 1.12) + (850 / Math.Sqrt(Sigma(altitudeFt, temperatureC))));
    }

    private static double Sigma(double altitudeFt, double temperatureC) => Atmosphere.Delta(altitudeFt) * 288.15 / (temperatureC + 273.15);

    private static double Power(Airframe airframe, double altitudeFt, double isaK)
    {
        var thermal = airframe.ThermalPowerHp * Math.Pow(Atmosphere.Sigma(altitudeFt, 0), airframe.PowerFall) * (1 - (0.004 * isaK));
        return Math.Pow(Math.Pow(airframe.FlatPowerHp, -8) + Math.Pow(thermal, -8), -0.125);
    }

    private static double Flow(Airframe airframe, double powerHp, double altitudeFt) =>
        (airframe.IdleFlow * Math.Pow(Atmosphere.Delta(altitudeFt), 0.8)) + (airframe.FlowPerHp * powerHp);

    private static double Drag(Airframe airframe, double tasKt, double weightLb, double isaK, double altitudeFt)
    {
        var speed = tasKt * KtToMs;
        var pressure = 0.5 * SeaLevelDensity * Atmosphere.Sigma(altitudeFt, isaK) * speed * speed;
        var lift = weightLb * LbToNewton / (pressure * airframe.WingAreaM2);
        return pressure * airframe.WingAreaM2 * (airframe.ParasiteDrag + (airframe.InducedDrag * lift * lift));
    }
}
