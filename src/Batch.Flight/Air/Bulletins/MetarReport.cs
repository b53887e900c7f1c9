using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>
/// A routine or special report of the weather at an aerodrome (WMO-No. 306, FM 15 METAR and FM 16 SPECI; FMH-1 in the United States).
/// Any group may be missing. A group that cannot be read is named in <see cref="Unread"/> and the rest is used.
/// </summary>
public sealed partial record MetarReport
{
    /// <summary>METAR or SPECI; METAR where the report does not say.</summary>
    public string Kind { get; private init; } = "METAR";

    /// <summary>The station; empty where it could not be read.</summary>
    public string Station { get; private init; } = "";

    /// <summary>When it was observed; null where it could not be read.</summary>
    public Instant? Observed { get; private init; }

    /// <summary>Made without a person (AUTO).</summary>
    public bool IsAutomatic { get; private init; }

    /// <summary>Corrects an earlier one (COR, CCA ...).</summary>
    public bool IsCorrected { get; private init; }

    /// <summary>The station sent no report (NIL).</summary>
    public bool IsMissing { get; private init; }

    /// <summary>Wind, visibility, weather, cloud and altimeter setting.</summary>
    public WeatherConditions Conditions { get; private init; } = new();

    /// <summary>The visibility group was there without a value.</summary>
    public bool IsVisibilityMissing { get; private init; }

    /// <summary>The least visibility with its direction, as written, such as 1100SE; empty where not reported.</summary>
    public string LeastVisibility { get; private init; } = "";

    /// <summary>Visual ranges of runways.</summary>
    public ImmutableArray<RunwayVisualRange> RunwayRanges { get; private init; } = [];

    /// <summary>Recent weather, as written, such as RERA.</summary>
    public ImmutableArray<string> RecentWeather { get; private init; } = [];

    /// <summary>Air temperature.</summary>
    public Celsius? Temperature { get; private init; }

    /// <summary>Dew point.</summary>
    public Celsius? DewPoint { get; private init; }

    /// <summary>The altimeter setting in inches of mercury [inHg], where it was given so.</summary>
    public double? AltimeterInches { get; private init; }

    /// <summary>Warnings of wind shear, as written, such as WS RWY36.</summary>
    public string WindShear { get; private init; } = "";

    /// <summary>The trend for the next two hours, as written.</summary>
    public string Trend { get; private init; } = "";

    /// <summary>The remarks, as written.</summary>
    public string Remarks { get; private init; } = "";

    /// <summary>Groups not decoded here, in their order: state of runways and sea, colour states, and the unread ones.</summary>
    public ImmutableArray<string> OtherGroups { get; private init; } = [];

    /// <summary>Groups that could not be read.</summary>
    public ImmutableArray<UnreadGroup> Unread { get; private init; } = [];

    /// <summary>Reads a report.</summary>
    /// <param name="text">The report; line ends and a closing equals sign do not matter.</param>
    /// <param name="received">When it was received, within two weeks: it tells the month.</param>
    public static MetarReport Parse(string text, Instant received)
    {
        var groups = BulletinText.Groups(text);
        var remarksAt = groups.IndexOf("RMK");
        var remarks = remarksAt < 0 ? "" : BulletinText.AsWritten(text, (remarksAt + 1)..);
        if (remarksAt >= 0) groups = groups[..remarksAt];
        var trendAt = groups.FindIndex(g => g is "NOSIG" or "TEMPO" or "BECMG");
        var trend = trendAt < 0 ? "" : string.Join(' ', groups.Skip(trendAt));
        if (trendAt >= 0) groups = groups[..trendAt];
        var report = new MetarReport { Remarks = remarks, Trend = trend };

        var at = 0;
        while (at < groups.Count && groups[at] is "METAR" or "SPECI" or "COR")
        {
            report = groups[at] == "COR" ? report with { IsCorrected = true } : report with { Kind = groups[at] };
            at++;
        }

        var unread = new List<UnreadGroup>();
        if (at < groups.Count && BulletinText.Station().IsMatch(groups[at])) report = report with { Station = groups[at++] };
        else unread.Add(new UnreadGroup(at < groups.Count ? groups[at] : "", "a station of four letters or digits was expected"));
        if (at < groups.Count && BulletinText.IssueTime().IsMatch(groups[at]))
        {
            report = report with { Observed = BulletinTime.OfDigits(groups[at], received) };
            if (report.Observed is null) unread.Add(new UnreadGroup(groups[at], "no such day and time"));
            at++;
        }
        else
        {
            unread.Add(new UnreadGroup(at < groups.Count ? groups[at] : "", "a day and time such as 251853Z was expected"));
        }

        return report.WithBody(groups, at, unread);
    }

    private MetarReport WithBody(List<string> groups, int at, List<UnreadGroup> unread)
    {
        var report = this;
        var common = new WeatherGroups();
        var (ranges, recent, shear, other) = (new List<RunwayVisualRange>(), new List<string>(), new List<string>(), new List<string>());
        while (at < groups.Count)
        {
            var group = groups[at];
            if (group == "AUTO") report = report with { IsAutomatic = true };
            else if (group == "COR" || Correction().IsMatch(group)) report = report with { IsCorrected = true };
            else if (group is "NIL" or "FINO") report = report with { IsMissing = true };
            else if (group == "WS") shear.Add(Shear(groups, ref at));
            else if (common.TryTake(groups, ref at)) continue;
            else if (RunwayRange(group) is { } range) ranges.Add(range);
            else if (Recent().IsMatch(group)) recent.Add(group);
            else if (report.LeastVisibility.Length == 0 && LeastVisibilityGroup().IsMatch(group)) report = report with { LeastVisibility = group };
            else if (report.Temperature is null && Temperatures().Match(group) is { Success: true } match)
            {
                report = report with { Temperature = Degrees(match.Groups["air"].Value), DewPoint = Degrees(match.Groups["dew"].Value) };
            }
            else
            {
                other.Add(group);
                if (!Ignored().IsMatch(group)) unread.Add(new UnreadGroup(group, WeatherGroups.WhyUnread(group, common.Conditions, "no group of a METAR")));
            }

            at++;
        }

        return report with
        {
            Conditions = common.Conditions,
            IsVisibilityMissing = common.IsVisibilityMissing,
            AltimeterInches = common.SettingInches,
            RunwayRanges = [.. ranges],
            RecentWeather = [.. recent],
            WindShear = string.Join("; ", shear),
            OtherGroups = [.. other],
            Unread = [.. unread],
        };
    }

    // WS RWY36, WS R36, WS ALL RWY: stops at the last group that belongs to it.
    private static string Shear(List<string> groups, ref int at)
    {
        var words = new List<string> { groups[at] };
        while (at + 1 < groups.Count && ShearPart().IsMatch(groups[at + 1])) words.Add(groups[++at]);
        return string.Join(' ', words);
    }

    private static RunwayVisualRange? RunwayRange(string group)
    {
        if (Range().Match(group) is not { Success: true } match) return null;
        return new RunwayVisualRange
        {
            Runway = match.Groups["runway"].Value,
            Value = int.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture),
            Limit = LimitOf(match.Groups["limit"].Value),
            UpTo = match.Groups["to"].Success ? int.Parse(match.Groups["to"].Value, CultureInfo.InvariantCulture) : null,
            UpToLimit = LimitOf(match.Groups["toLimit"].Value),
            IsInFeet = match.Groups["feet"].Success,
            Tendency = match.Groups["tendency"].Value,
        };
    }

    private static VisibilityLimit LimitOf(string letter) => letter switch
    {
        "P" => VisibilityLimit.MoreThan,
        "M" => VisibilityLimit.LessThan,
        _ => VisibilityLimit.Exact,
    };

    private static Celsius? Degrees(string text) => text.Trim('/', 'X').Length == 0
        ? null
        : new Celsius(text[0] == 'M' ? 0 - int.Parse(text[1..], CultureInfo.InvariantCulture) : int.Parse(text, CultureInfo.InvariantCulture));

    private const RegexOptions Options = RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant;

    [GeneratedRegex("^CC[A-Z]$", Options, 20_000)]
    private static partial Regex Correction();

    [GeneratedRegex("^R(?<runway>[0-9]{2}[LCR]{0,2})/(?<limit>[PM])?(?<value>[0-9]{4})(V(?<toLimit>[PM])?(?<to>[0-9]{4}))?(?<feet>FT)?/?(?<tendency>[UDN])?$",
        Options, 20_000)]
    private static partial Regex Range();

    [GeneratedRegex("^RE(MI|PR|BC|DR|BL|SH|TS|FZ)*(DZ|RA|SN|SG|IC|PL|GR|GS|UP|BR|FG|FU|VA|DU|SA|HZ|PO|SQ|FC|SS|DS)*$", Options, 20_000)]
    private static partial Regex Recent();

    // Without a direction behind a prevailing one: the direction of the least visibility was not to be had.
    [GeneratedRegex("^[0-9]{4}(N|NE|E|SE|S|SW|W|NW)?$", Options, 20_000)]
    private static partial Regex LeastVisibilityGroup();

    [GeneratedRegex("^(?<air>M?[0-9]{2}|//|XX)/(?<dew>M?[0-9]{2}|//|XX|)$", Options, 20_000)]
    private static partial Regex Temperatures();

    [GeneratedRegex("^(ALL|RWY|RWY?[0-9]{2}[LCR]?|R[0-9]{2}[LCR]?|TKOF|LDG)$", Options, 20_000)]
    private static partial Regex ShearPart();

    // Runway state (R27/090060, before 2008 eight digits), sea state, colour states, rain fallen (Australia), delayed (RTD), and groups of slashes: known, and
    // not needed for planning.
    [GeneratedRegex("^(R[0-9]{2}[LCR]?/((CLRD)?[0-9/]{2,6}[DNU]?|SNOCLO)|(R/)?SNOCLO|W(M?[0-9]{2}|//)/(S[0-9/]|H[0-9/]+)|(BLACK)?(BLU\\+?|WHT|GRN|YLO[12]?|AMB|RED)|BLACK|RF[0-9./]+|[0-9]{8}|RE//|RTD|/+|//////(CB|TCU|///))$", Options, 20_000)]
    private static partial Regex Ignored();
}
