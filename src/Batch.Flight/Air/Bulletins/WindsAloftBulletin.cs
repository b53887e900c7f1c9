using System.Text.RegularExpressions;
using Batch.Flight.Earth;

namespace Batch.Flight.Air.Bulletins;

/// <summary>
/// A United States bulletin of winds and temperatures aloft (FB; AC 00-45H, chapter 5; AIM 7-1). The columns are found by their position under the heads,
/// since a station high above the sea leaves its low columns blank. A cell that cannot be read is named in <see cref="Unread"/> and the rest is used.
/// </summary>
public sealed partial record WindsAloftBulletin
{
    /// <summary>The time of the data the forecast is based on; null where not given.</summary>
    public Instant? BasedOn { get; private init; }

    /// <summary>The time the forecast is valid for; null where not given.</summary>
    public Instant? Valid { get; private init; }

    /// <summary>Start of the period of use; null where not given.</summary>
    public Instant? UseFrom { get; private init; }

    /// <summary>End of the period of use, exclusive; null where not given.</summary>
    public Instant? UseTo { get; private init; }

    /// <summary>The stations in their order; one may stand twice, in a low and a high part.</summary>
    public ImmutableArray<WindsAloftStation> Stations { get; private init; } = [];

    /// <summary>Lines and cells that could not be read.</summary>
    public ImmutableArray<UnreadGroup> Unread { get; private init; } = [];

    /// <summary>
    /// Reads a bulletin: lines DATA BASED ON, VALID with FOR USE, FT with the altitudes, then stations. Other lines are passed over up to the first FT.
    /// </summary>
    /// <param name="text">The bulletin with its line ends and blanks.</param>
    /// <param name="received">When it was received, within two weeks: it tells the month.</param>
    public static WindsAloftBulletin Parse(string text, Instant received)
    {
        var bulletin = new WindsAloftBulletin();
        var (stations, unread) = (new List<WindsAloftStation>(), new List<UnreadGroup>());
        WindsAloftColumns? columns = null;
        var hasHeads = false;
        foreach (var raw in text.ToUpperInvariant().Split('\n'))
        {
            var line = raw.Replace('\u00a0', ' ').TrimEnd();
            if (line.Length == 0) continue;
            var data = DataLine().Match(line);
            if (data.Success) bulletin = bulletin with { BasedOn = BulletinTime.OfDigits(data.Groups["time"].Value, received) };
            var valid = ValidLine().Match(line);
            if (valid.Success)
            {
                var next = bulletin.WithPeriod(valid, received);
                if (next.Valid is null)
                {
                    unread.Add(new UnreadGroup(line.Trim(), "no such day and time"));
                }
                else if (bulletin.Valid is not null && (next.Valid, next.UseFrom, next.UseTo) != (bulletin.Valid, bulletin.UseFrom, bulletin.UseTo))
                {
                    unread.Add(new UnreadGroup(line.Trim(), "begins a second bulletin, which is not read: give each its own row"));
                    break;
                }

                bulletin = next;
            }

            if (data.Success || valid.Success) continue;
            var heads = WindsAloftColumns.Heads(line);
            if (heads is not null)
            {
                (columns, hasHeads) = (heads, true);
                continue;
            }

            if (columns?.Station(line, unread) is { } station) stations.Add(station);
        }

        if (!hasHeads) unread.Add(new UnreadGroup("FT", "a line of altitudes such as 'FT  3000    6000    9000' was expected"));
        if (bulletin.Valid is null) unread.Add(
            new UnreadGroup("VALID", "a line such as 'VALID 180600Z   FOR USE 0200-0900Z' was expected; without it the winds have no time and are not used"));
        else if (bulletin.UseFrom is null)
            unread.Add(new UnreadGroup("FOR USE", "a period such as 0200-0900Z was expected; three hours before and after the valid time are taken"));
        return bulletin with { Stations = [.. stations], Unread = [.. unread] };
    }

    /// <summary>
    /// The bulletin as reports of the air, valid in its period of use. Light and variable is a calm. A bulletin without a valid time gives none: its Unread
    /// says so.
    /// </summary>
    /// <param name="placeOf">The place of a station; null where it is not known.</param>
    /// <param name="unplaced">The stations whose place is not known, in order; their winds are not used.</param>
    public ImmutableArray<AirReport> ToAirReports(Func<string, GeoPoint?> placeOf, out ImmutableArray<string> unplaced)
    {
        var missing = new List<string>();
        var reports = ImmutableArray.CreateBuilder<AirReport>();
        foreach (var station in Stations)
        {
            if (placeOf(station.Station) is not { } place)
            {
                if (!missing.Contains(station.Station)) missing.Add(station.Station);
                continue;
            }

            if (Valid is not { } valid) continue;
            foreach (var cell in station.Cells)
            {
                reports.Add(new AirReport
                {
                    Place = place,
                    From = UseFrom ?? valid - Duration.FromHours(3),
                    To = UseTo ?? valid + Duration.FromHours(3),
                    Altitude = cell.Altitude,
                    WindFrom = cell.Wind?.From ?? TrueDegrees.Of(0),
                    WindSpeed = cell.Wind?.Speed ?? Knots.Zero,
                    Temperature = cell.Temperature,
                });
            }
        }

        unplaced = [.. missing];
        return reports.ToImmutable();
    }

    // FOR USE 2100-0600Z around a valid time: from the last 21:00 not after it to the first 06:00 after that.
    private WindsAloftBulletin WithPeriod(Match line, Instant received)
    {
        var valid = BulletinTime.OfDigits(line.Groups["time"].Value, received);
        if (valid is not { } moment || !line.Groups["from"].Success) return this with { Valid = valid, UseFrom = null, UseTo = null };
        var midnight = moment.InUtc().Date.AtMidnight().InUtc().ToInstant();
        var from = midnight + Clock(line.Groups["from"].Value);
        if (from > moment) from -= Duration.FromDays(1);
        var to = midnight - Duration.FromDays(1) + Clock(line.Groups["to"].Value);
        while (to <= from || to < moment) to += Duration.FromDays(1);
        return this with { Valid = valid, UseFrom = from, UseTo = to };
    }

    private static Duration Clock(string digits) => Duration.FromMinutes(BulletinTime.Two(digits, 0) * 60 + BulletinTime.Two(digits, 2));

    [GeneratedRegex("DATA BASED ON (?<time>[0-9]{6})Z?", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex DataLine();

    [GeneratedRegex("VALID\\s+(?<time>[0-9]{6})Z?(\\s+FOR\\s+USE\\s+(?<from>[0-9]{4})\\s*-\\s*(?<to>[0-9]{4})Z?)?",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex ValidLine();
}
