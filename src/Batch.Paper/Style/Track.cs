namespace Batch.Paper.Style;

/// <summary>One grid column: a share (fr), a length, or neither for `auto`. <paramref name="MinZero"/> is `minmax(0, ...)`.</summary>
internal readonly record struct Track(double Share, Length Size, bool MinZero)
{
    /// <summary>Reads `grid-template-columns`; null when a part of it is not promised.</summary>
    public static ImmutableArray<Track>? Parse(string text, double em, double rem)
    {
        if (text.Trim() == "none") return [];
        var tracks = ImmutableArray.CreateBuilder<Track>();
        foreach (var part in CssScanner.Split(text, ' '))
        {
            if (part.StartsWith("repeat(", StringComparison.Ordinal) && part.EndsWith(')'))
            {
                var comma = part.IndexOf(',', StringComparison.Ordinal);
                if (comma < 0 || !Length.TryNumber(part[7..comma], out var count) || count is < 1 or > 100) return null;
                if (Parse(part[(comma + 1)..^1], em, rem) is not { } repeated) return null;
                for (var i = 0; i < (int)count; i++) tracks.AddRange(repeated);
            }
            else if (One(part, em, rem) is { } track) tracks.Add(track);
            else return null;
        }

        return tracks.ToImmutable();
    }

    private static Track? One(string part, double em, double rem)
    {
        if (part.StartsWith("minmax(0,", StringComparison.Ordinal) && part.EndsWith(')')) return One(part[9..^1].Trim(), em, rem) is { } inner ? inner with { MinZero = true } : null;
        if (part.EndsWith("fr", StringComparison.Ordinal)) return Length.TryNumber(part[..^2], out var share) && share >= 0 ? new Track(share, Length.Auto, MinZero: false) : null;
        return part != "none" && Length.Parse(part, em, rem) is { } length ? new Track(0, length, MinZero: false) : null;
    }
}
