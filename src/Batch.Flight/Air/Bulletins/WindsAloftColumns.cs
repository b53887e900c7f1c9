using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>The heads of a bulletin of winds aloft: which altitude stands under which columns of characters.</summary>
internal sealed partial class WindsAloftColumns
{
    private readonly Feet[] _altitudes;
    private readonly int[] _ends;

    private WindsAloftColumns(Feet[] altitudes, int[] ends) => (_altitudes, _ends) = (altitudes, ends);

    /// <summary>The columns of a line of heads such as <c>FT  3000    6000</c>; null for another line.</summary>
    public static WindsAloftColumns? Heads(string line)
    {
        if (!HeadLine().IsMatch(line)) return null;
        var heads = Group().Matches(line).Skip(1).ToArray();
        return new WindsAloftColumns(
            [.. heads.Select(h => new Feet(int.Parse(h.Value, CultureInfo.InvariantCulture)))],
            [.. heads.Select(h => h.Index + h.Length)]);
    }

    /// <summary>
    /// A station's line. Each head ends where a full cell under it ends, so a group belongs to the first head that does not end before the group starts.
    /// A line whose blanks were lost is still read when it has a group for every head.
    /// </summary>
    /// <returns>The station, or null for a line that is none.</returns>
    public WindsAloftStation? Station(string line, List<UnreadGroup> unread)
    {
        var groups = Group().Matches(line);
        if (groups.Count == 1) return null; // NNNN and the like end a bulletin
        if (!StationName().IsMatch(groups[0].Value))
        {
            unread.Add(new UnreadGroup(line.Trim(), "a station of three or four letters or digits and its winds were expected"));
            return null;
        }

        var name = groups[0].Value;
        var cells = new List<WindsAloftCell>();
        var isFull = groups.Count - 1 == _altitudes.Length;
        var last = -1;
        for (var i = 1; i < groups.Count; i++)
        {
            var column = isFull ? i - 1 : Array.FindIndex(_ends, end => groups[i].Index < end);
            if (column <= last || (!isFull && column >= 0 && groups[i].Index + groups[i].Length > _ends[column]))
            {
                unread.Add(new UnreadGroup($"{name} {groups[i].Value}", "stands under no altitude"));
                continue;
            }

            last = column;
            if (WindsAloftCell.Decode(groups[i].Value, _altitudes[column], out var why) is { } cell) cells.Add(cell);
            else unread.Add(new UnreadGroup($"{name} {groups[i].Value}", why));
        }

        return new WindsAloftStation(name, [.. cells]);
    }

    [GeneratedRegex("^\\s*FT(\\s+[0-9]{4,5})+$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex HeadLine();

    [GeneratedRegex("\\S+", RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Group();

    [GeneratedRegex("^[A-Z0-9]{3,4}$", RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex StationName();
}
