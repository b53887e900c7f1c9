namespace Batch.SampleMaker.Land;

/// <summary>The height of the ground, and the safe altitudes that follow from it.</summary>
public static class Terrain
{
    private static readonly ImmutableArray<(Spot Top, double HeightFt, double ReachNm)> Hills =
    [
        (IslandFrame.Vellmere.At(42, 10), 6200, 17),
        (IslandFrame.Vellmere.At(18, 4), 3600, 16),
        (IslandFrame.Vellmere.At(-42, 3), 2900, 20),
        (IslandFrame.Vellmere.At(78, 4), 2200, 15),
        (IslandFrame.Vellmere.At(-88, 2), 1300, 15),
        (new Spot(41.63, -43.88), 1600, 8),
        (new Spot(38.6, -38.15), 2300, 11),
        (new Spot(45.28, -43.68), 2100, 8),
        (IslandFrame.Vellmere.At(-70, 52), 900, 6),
        (new Spot(43.6, -36.0), 500, 4),
    ];

    /// <summary>Height of the ground [ft], zero at sea.</summary>
    public static double HeightFt(Spot spot) => Hills.Sum(hill =>
    {
        var share = hill.Top.DistanceNm(spot) / hill.ReachNm;
        return hill.HeightFt * Math.Exp(-share * share);
    });

    /// <summary>Least altitude between two places [ft]: 2,000 ft above the ground within 5 NM, rounded up to 500 ft, at least 2,000 ft.</summary>
    public static int MinimumAltitudeFt(Spot from, Spot to)
    {
        var highest = Enumerable.Range(0, 41).Select(step => from.Toward(to, step / 40.0)).SelectMany(Around).Max(HeightFt);
        return Math.Max(2000, (int)Math.Ceiling((highest + 2000) / 500) * 500);
    }

    /// <summary>Safe altitude in a square [ft]: 2,000 ft above the highest ground in it and 2 NM around, rounded up to 100 ft.</summary>
    public static int SafeAltitudeFt(double southDeg, double westDeg, double sizeDeg)
    {
        var highest = 0.0;
        for (var row = -1; row <= 17; row++)
        {
            for (var column = -1; column <= 17; column++)
            {
                highest = Math.Max(highest, HeightFt(new Spot(southDeg + (sizeDeg * row / 16), westDeg + (sizeDeg * column / 16))));
            }
        }

        return (int)Math.Ceiling(((highest < 100 ? 0 : highest) + 2000) / 100) * 100;
    }

    private static IEnumerable<Spot> Around(Spot spot)
    {
        yield return spot;
        for (var k = 0; k < 8; k++)
        {
            var angle = k * Math.PI / 4;
            yield return new Spot(spot.LatDeg + (5 * Math.Cos(angle) / 60), spot.LonDeg + (5 * Math.Sin(angle) / 45));
        }
    }
}
