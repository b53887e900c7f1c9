namespace Batch.Sheets.Pictures;

/// <summary>The field of a sketch: one scale both ways, as large as the room allows, its content in the middle.</summary>
/// <param name="PixelsPerNm">The scale.</param>
/// <param name="Height">Height of the field.</param>
/// <param name="MiddleX">Place of the content's middle.</param>
/// <param name="MiddleEast">East of the content's middle [NM].</param>
/// <param name="MiddleNorth">North of the content's middle [NM].</param>
internal readonly record struct SketchField(double PixelsPerNm, double Height, double MiddleX, double MiddleEast, double MiddleNorth)
{
    /// <summary>A field that holds some points.</summary>
    /// <param name="points">East and north [NM]; at least one.</param>
    /// <param name="left">Left edge of the room.</param>
    /// <param name="right">Right edge of the room.</param>
    /// <param name="lowest">Least height.</param>
    /// <param name="greatest">Greatest height.</param>
    /// <param name="edge">Room above and below.</param>
    /// <param name="leastNm">Least extent [NM], so that points close together are not torn apart.</param>
    public static SketchField Around(
        (double East, double North)[] points, double left, double right, double lowest, double greatest, double edge, double leastNm)
    {
        var (west, east) = (points.Min(point => point.East), points.Max(point => point.East));
        var (south, north) = (points.Min(point => point.North), points.Max(point => point.North));
        var scale = Math.Min((right - left) / Math.Max(east - west, leastNm), (greatest - (2 * edge)) / Math.Max(north - south, leastNm / 2));
        var height = Math.Clamp(((north - south) * scale) + (2 * edge), lowest, greatest);
        return new SketchField(scale, height, (left + right) / 2, (west + east) / 2, (south + north) / 2);
    }

    /// <summary>Where a point is drawn.</summary>
    /// <param name="point">East and north [NM].</param>
    public (double X, double Y) At((double East, double North) point) =>
        (MiddleX + ((point.East - MiddleEast) * PixelsPerNm), (Height / 2) - ((point.North - MiddleNorth) * PixelsPerNm));
}
