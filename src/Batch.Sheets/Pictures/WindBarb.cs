namespace Batch.Sheets.Pictures;

/// <summary>
/// A wind in the manner of a weather chart: a shaft toward where the wind comes from, north up, with a pennant for 50 kt, a feather for 10 kt and half a
/// feather for 5 kt at its outer end; a ring for calm.
/// </summary>
/// <remarks>
/// Speeds are drawn to the nearest 5 kt (Glossary of Meteorology, American Meteorological Society, "Five-and-ten system"). Feathers stand on the side of the
/// lower pressure: clockwise from the shaft north of the equator, anticlockwise south of it (WMO-No. 485, graphical representation of winds, from memory; the
/// same for the north in the Matplotlib documentation of <c>barbs</c>).
/// </remarks>
/// <param name="Pennants">Pennants of 50 kt.</param>
/// <param name="Feathers">Feathers of 10 kt.</param>
/// <param name="HasHalf">Whether half a feather of 5 kt follows.</param>
internal readonly record struct WindBarb(int Pennants, int Feathers, bool HasHalf)
{
    /// <summary>Half the room that a barb takes in any direction, up to 95 kt.</summary>
    public const double Radius = 18;

    private const double ShaftLength = 24;
    private const double Step = 3.4;
    private const double PennantStep = 5;
    private const double FeatherReach = 9;
    private const double FeatherLean = 3;

    /// <summary>Whether it is drawn as a ring.</summary>
    public bool IsCalm => Pennants == 0 && Feathers == 0 && !HasHalf;

    /// <summary>The parts for a wind speed.</summary>
    /// <param name="speed">Wind speed, not negative.</param>
    public static WindBarb Of(Knots speed)
    {
        var fives = (int)Math.Round(speed.Value / 5, MidpointRounding.AwayFromZero);
        return new WindBarb(fives / 10, fives % 10 / 2, fives % 2 == 1);
    }

    /// <summary>Draws a wind with the middle of its shaft at a place.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="x">The place.</param>
    /// <param name="y">The place.</param>
    /// <param name="from">Where the wind comes from, true.</param>
    /// <param name="isSouthern">Whether the place lies south of the equator.</param>
    public void Draw(Drawing drawing, double x, double y, TrueDegrees from, bool isSouthern)
    {
        if (IsCalm)
        {
            drawing.Circle(x, y, 4.5, "none", Ink.Black, 1.2);
            return;
        }
        var (outX, outY) = (Math.Sin(from.Value * Math.PI / 180), -Math.Cos(from.Value * Math.PI / 180));
        var (sideX, sideY) = isSouthern ? (outY, -outX) : (-outY, outX);
        var length = Math.Max(ShaftLength, (Pennants * PennantStep) + ((Feathers + 1) * Step) + Step);
        (double X, double Y) At(double along, double aside) =>
            (x + (outX * (along - (length / 2))) + (sideX * aside), y + (outY * (along - (length / 2))) + (sideY * aside));
        void Feather(double along, double share) => Stroke(drawing, At(along, 0), At(along + (FeatherLean * share), FeatherReach * share));

        Stroke(drawing, At(0, 0), At(length, 0));
        drawing.Circle(At(0, 0).X, At(0, 0).Y, 1.6, Ink.Black);
        var place = length;
        for (var k = 0; k < Pennants; k++, place -= PennantStep)
            drawing.Polygon([At(place, 0), At(place + (FeatherLean / 2) - (PennantStep / 2), FeatherReach), At(place - PennantStep, 0)], Ink.Black, Ink.Black,
                0.6);
        if (Pennants > 0)
            place -= Step / 2;
        for (var k = 0; k < Feathers; k++, place -= Step)
            Feather(place, 1);
        if (HasHalf)
            Feather(Pennants + Feathers == 0 ? place - Step : place, 0.5); // a half feather alone stands off the end, so that it is not taken for a whole one
    }

    private static void Stroke(Drawing drawing, (double X, double Y) from, (double X, double Y) to) => drawing.Line(from.X, from.Y, to.X, to.Y, Ink.Black, 1.1);
}
