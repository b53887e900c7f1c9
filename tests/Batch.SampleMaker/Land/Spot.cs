namespace Batch.SampleMaker.Land;

/// <summary>A place.</summary>
/// <param name="LatDeg">Latitude [deg], north positive.</param>
/// <param name="LonDeg">Longitude [deg], east positive.</param>
public readonly record struct Spot(double LatDeg, double LonDeg)
{
    /// <summary>The place rounded to four decimals, as the books give it.</summary>
    public Spot Rounded => new(Math.Round(LatDeg, 4), Math.Round(LonDeg, 4));

    /// <summary>Distance to another place [NM] on a flat map, good to about one percent here.</summary>
    public double DistanceNm(Spot other)
    {
        var north = (other.LatDeg - LatDeg) * 60;
        var east = (other.LonDeg - LonDeg) * 60 * Math.Cos((LatDeg + other.LatDeg) / 2 * Math.PI / 180);
        return Math.Sqrt((north * north) + (east * east));
    }

    /// <summary>True course to another place [deg] on a flat map.</summary>
    public double CourseDeg(Spot other)
    {
        var north = (other.LatDeg - LatDeg) * 60;
        var east = (other.LonDeg - LonDeg) * 60 * Math.Cos((LatDeg + other.LatDeg) / 2 * Math.PI / 180);
        return ((Math.Atan2(east, north) * 180 / Math.PI) + 360) % 360;
    }

    /// <summary>The place a share of the way to another.</summary>
    public Spot Toward(Spot other, double share) => new(LatDeg + ((other.LatDeg - LatDeg) * share), LonDeg + ((other.LonDeg - LonDeg) * share));
}
