namespace Batch.Sheets.Pictures;

/// <summary>Places labels so that none covers another.</summary>
internal static class LabelPlaces
{
    /// <summary>Places in one column, each as near to its wish as the distance between neighbours allows, all within the column where they fit.</summary>
    /// <param name="wishes">Wished places, rising.</param>
    /// <param name="step">Least distance between neighbours.</param>
    /// <param name="first">Start of the column.</param>
    /// <param name="last">Last place in the column.</param>
    public static double[] Spread(double[] wishes, double step, double first, double last)
    {
        var places = (double[])wishes.Clone();
        for (var k = 0; k < places.Length; k++)
            places[k] = Math.Max(places[k], k == 0 ? first : places[k - 1] + step);
        for (var k = places.Length - 1; k >= 0; k--)
            places[k] = Math.Min(places[k], k == places.Length - 1 ? last : places[k + 1] - step);
        return places;
    }

    /// <summary>The row of each label along an axis: the first row where it does not touch the label before it.</summary>
    /// <param name="labels">Middle and width of each label, by rising middle.</param>
    /// <param name="gap">Least distance between neighbours in a row.</param>
    public static int[] Rows(IReadOnlyList<(double Middle, double Width)> labels, double gap)
    {
        var ends = new List<double>();
        var rows = new int[labels.Count];
        for (var k = 0; k < labels.Count; k++)
        {
            var start = labels[k].Middle - (labels[k].Width / 2);
            var row = ends.FindIndex(end => start >= end + gap);
            if (row < 0)
            {
                row = ends.Count;
                ends.Add(0);
            }
            ends[row] = labels[k].Middle + (labels[k].Width / 2);
            rows[k] = row;
        }
        return rows;
    }

    /// <summary>The middle of a label moved so that the label stands between two edges; halfway between them where it is wider.</summary>
    /// <param name="middle">Middle [units of the picture].</param>
    /// <param name="width">Width of the label.</param>
    /// <param name="left">Left edge.</param>
    /// <param name="right">Right edge.</param>
    public static double Within(double middle, double width, double left, double right) =>
        width >= right - left ? (left + right) / 2 : Math.Clamp(middle, left + (width / 2), right - (width / 2));
}
