using System.Globalization;
using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>Reads which legs of a trip a line is for: <c>all</c>, <c>1</c>, <c>1-3</c>, <c>1,3</c>.</summary>
internal static class LegsReading
{
    /// <summary>The selection.</summary>
    public static Reading<LegSelection> Read(RawCell cell)
    {
        if ((cell.Look & (NumberLook.Date | NumberLook.Clock)) != NumberLook.Plain) return ColumnKinds.BecameDate<LegSelection>();
        if (cell.Text.Equals("all", StringComparison.OrdinalIgnoreCase)) return Reading<LegSelection>.Good(LegSelection.All);
        var ranges = new List<(int First, int Last)>();
        foreach (var part in cell.Text.Replace('\u2013', '-').Split([',', ';', '+', '&'], StringSplitOptions.TrimEntries))
        {
            var ends = part.Split('-', StringSplitOptions.TrimEntries);
            if (ends.Length > 2 || !Number(ends[0], out var first)) return Bad;
            var last = first;
            if (ends.Length == 2 && !Number(ends[1], out last)) return Bad;
            if (last < first) return Bad;
            ranges.Add((first, last));
        }

        return Reading<LegSelection>.Good(LegSelection.Of(ranges));
    }

    private static Reading<LegSelection> Bad => Reading<LegSelection>.Bad("is not a choice of legs", "all, 1, 1-3 or 1,3");

    private static bool Number(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number is >= 1 and <= 9999;
}
