namespace Batch.SampleMaker.Land;

/// <summary>An island with an irregular shore around an ellipse.</summary>
/// <param name="Name">Name.</param>
/// <param name="Frame">Its frame.</param>
/// <param name="HalfLengthNm">Half its length [NM].</param>
/// <param name="HalfWidthNm">Half its width [NM].</param>
/// <param name="Vertices">Number of shore points.</param>
/// <param name="Turn">Turns the irregularity, so that no two shores look alike [rad].</param>
public sealed record Island(string Name, IslandFrame Frame, double HalfLengthNm, double HalfWidthNm, int Vertices, double Turn)
{
    /// <summary>All land.</summary>
    public static ImmutableArray<Island> All { get; } =
    [
        new("Vellmere", IslandFrame.Vellmere, 125, 34, 48, 0.4),
        new("Kelda", new IslandFrame(IslandFrame.Vellmere.At(-70, 52), 40), 11, 8, 14, 1.9),
        new("Wester Rill", new IslandFrame(new Spot(41.63, -43.88), 50), 17, 10, 18, 2.6),
        new("Ostrane", new IslandFrame(new Spot(38.6, -38.15), 65), 27, 13, 22, 3.3),
        new("Quill", new IslandFrame(new Spot(43.6, -36.0), 100), 8, 5, 12, 4.1),
        new("Roan", new IslandFrame(new Spot(45.28, -43.68), 145), 16, 9, 16, 5.2),
    ];

    /// <summary>The shore, once around.</summary>
    public IEnumerable<Spot> Shore() => Enumerable.Range(0, Vertices).Select(i =>
    {
        var angle = 2 * Math.PI * i / Vertices;
        var reach = 1 + (0.07 * Math.Sin((3 * angle) + Turn)) + (0.05 * Math.Sin((7 * angle) + (2 * Turn))) + (0.03 * Math.Cos((11 * angle) - Turn));
        return Frame.At(HalfLengthNm * reach * Math.Cos(angle), HalfWidthNm * reach * Math.Sin(angle)).Rounded;
    });
}
