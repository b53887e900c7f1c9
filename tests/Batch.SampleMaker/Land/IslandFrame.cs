namespace Batch.SampleMaker.Land;

/// <summary>A flat frame laid on an island: miles along its axis and miles across, left positive.</summary>
/// <param name="Centre">Middle of the island.</param>
/// <param name="AxisDeg">True direction of the axis [deg].</param>
public sealed record IslandFrame(Spot Centre, double AxisDeg)
{
    /// <summary>The frame of the main island.</summary>
    public static IslandFrame Vellmere { get; } = new(new Spot(41.0, -39.0), 70);

    /// <summary>The place so many miles along and across.</summary>
    public Spot At(double alongNm, double acrossNm)
    {
        var axis = AxisDeg * Math.PI / 180;
        var east = (alongNm * Math.Sin(axis)) - (acrossNm * Math.Cos(axis));
        var north = (alongNm * Math.Cos(axis)) + (acrossNm * Math.Sin(axis));
        var lat = Centre.LatDeg + (north / 60);
        return new Spot(lat, Centre.LonDeg + (east / (60 * Math.Cos(lat * Math.PI / 180))));
    }

    /// <summary>Miles along and across of a place.</summary>
    public (double AlongNm, double AcrossNm) Of(Spot spot)
    {
        var axis = AxisDeg * Math.PI / 180;
        var north = (spot.LatDeg - Centre.LatDeg) * 60;
        var east = (spot.LonDeg - Centre.LonDeg) * 60 * Math.Cos(spot.LatDeg * Math.PI / 180);
        return ((east * Math.Sin(axis)) + (north * Math.Cos(axis)), (north * Math.Sin(axis)) - (east * Math.Cos(axis)));
    }
}
