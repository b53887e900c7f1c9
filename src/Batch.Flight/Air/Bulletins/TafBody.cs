using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>Reads the groups of a forecast behind its head.</summary>
internal sealed partial class TafBody
{
    private readonly Instant _near;
    private readonly Instant? _validTo;
    private readonly bool _isOld;
    private readonly List<UnreadGroup> _unread;

    /// <summary>Prepares reading.</summary>
    /// <param name="near">Start of validity, else when it was received.</param>
    /// <param name="validTo">End of validity.</param>
    /// <param name="isOld">Whether its validity has the form of before 2008, so that its change groups give hours without a day.</param>
    /// <param name="unread">Takes what cannot be read.</param>
    public TafBody(Instant near, Instant? validTo, bool isOld, List<UnreadGroup> unread) => (_near, _validTo, _isOld, _unread) = (near, validTo, isOld, unread);

    /// <summary>The groups read.</summary>
    public List<TafGroup> Groups { get; } = [];

    /// <summary>The temperatures read.</summary>
    public List<TafTemperature> Temperatures { get; } = [];

    /// <summary>Words to people inside the forecast, such as AMD NOT SKED.</summary>
    public List<string> Remarks { get; } = [];

    /// <summary>Reads from a place to the end.</summary>
    public void Read(List<string> groups, int at, Instant? validFrom)
    {
        var head = new TafGroup { Kind = TafGroupKind.Base, From = validFrom, To = _validTo, Conditions = new WeatherConditions() };
        while (true)
        {
            ReadOne(head, groups, ref at);
            if (at >= groups.Count) return;
            head = Head(groups, ref at, validFrom);
        }
    }

    // A group begins with FM241000, BECMG, TEMPO, INTER, PROB30 or PROB30 TEMPO.
    private static bool IsHead(string group) => group is "BECMG" or "TEMPO" or "INTER" || FromTime().IsMatch(group) || Probability().IsMatch(group);

    /// <summary>Where the next change begins, at or behind a place; the count of groups where none does.</summary>
    public static int NextHead(List<string> groups, int at) => groups.FindIndex(at, IsHead) is >= 0 and var next ? next : groups.Count;

    private TafGroup Head(List<string> groups, ref int at, Instant? validFrom)
    {
        var word = groups[at++];
        if (FromTime().Match(word) is { Success: true } match)
        {
            // A time that cannot be read still ends the group before: what follows must not be taken as part of that.
            var from = match.Groups["time"].Success ? BulletinTime.OfDigits(match.Groups["time"].Value, _near)
                : _isOld && OldTafTime.From().Match(word) is { Success: true } old ? OldTafTime.Moment(old.Groups["time"].Value, _near)
                : null;
            if (from is null) _unread.Add(new UnreadGroup(word, "no such day and time"));
            return new TafGroup { Kind = TafGroupKind.From, From = from, Conditions = new WeatherConditions() };
        }

        int? percent = null;
        var kind = KindOf(word);
        if (Probability().Match(word) is { Success: true } probability)
        {
            percent = int.Parse(probability.Groups["percent"].Value, CultureInfo.InvariantCulture);
            kind = TafGroupKind.Probable;
            if (at < groups.Count && groups[at] is "TEMPO" or "INTER") kind = KindOf(groups[at++]);
        }

        var (start, end) = (validFrom, _validTo);
        if (at < groups.Count && TafReport.Period().IsMatch(groups[at]))
        {
            (start, end) = TafReport.PeriodOf(groups[at], _near);
            if (start is null || end is null || end < start) _unread.Add(new UnreadGroup(groups[at], "no such period"));
            at++;
        }
        else if (_isOld && at < groups.Count && OldTafTime.HoursAlone().IsMatch(groups[at]))
        {
            (start, end) = OldTafTime.Hours(groups[at], _near);
            if (start is null || end is null) _unread.Add(new UnreadGroup(groups[at], "no such hours"));
            at++;
        }
        else
        {
            _unread.Add(new UnreadGroup(word, "a period such as 2806/2812 was expected behind it; the whole validity is taken"));
        }

        return new TafGroup { Kind = kind, ProbabilityPercent = percent, From = start, To = end, Conditions = new WeatherConditions() };
    }

    private void ReadOne(TafGroup head, List<string> groups, ref int at)
    {
        var common = new WeatherGroups();
        LowLevelWindShear? shear = null;
        var other = new List<string>();
        while (at < groups.Count && !IsHead(groups[at]))
        {
            if (TryRemark(groups, ref at) || common.TryTake(groups, ref at)) continue;
            var group = groups[at++];
            if (TafReport.Temperature().Match(group) is { Success: true } temperature)
            {
                Temperatures.Add(new TafTemperature(
                    temperature.Groups["kind"].Value == "X",
                    TafReport.Degrees(temperature.Groups["degrees"].Value),
                    BulletinTime.OfDigits(temperature.Groups["time"].Value, _near)));
            }
            else if (_isOld && OldTafTime.Temperature().Match(group) is { Success: true } old)
            {
                Temperatures.Add(new TafTemperature(old.Groups["kind"].Value == "X", TafReport.Degrees(old.Groups["degrees"].Value),
                    OldTafTime.Moment(old.Groups["time"].Value, _near)));
            }
            else if (shear is null && Shear().Match(group) is { Success: true } match)
            {
                shear = new LowLevelWindShear(new Feet(Number(match, "height") * 100), Number(match, "direction"), new Knots(Number(match, "speed")));
            }
            else if (common.TryTakeDirectional(group))
            {
                continue;
            }
            else
            {
                other.Add(group);
                if (!Ignored().IsMatch(group)) _unread.Add(new UnreadGroup(group, WeatherGroups.WhyUnread(group, common.Conditions, "no group of a TAF")));
            }
        }

        Groups.Add(head with { Conditions = common.Conditions, WindShear = shear, AltimeterInches = common.SettingInches, OtherGroups = [.. other] });
    }

    // AMD NOT SKED, AMD LTD TO CLD VIS AND WIND TIL 2419, LAST NO AMDS AFT 1215 NEXT 1709 run to the next head; WND 33009KT AFT 1315 is two or four words.
    // 2000FT WIND 25025KT and QNH MNM 1010 MAX 1020 stand at the end of New Zealand's: that wind is not the one at the ground. Their times and settings look
    // like visibilities.
    private bool TryRemark(List<string> groups, ref int at)
    {
        var end = at;
        if (groups[at] is "AMD" or "LAST" or "NO" or "NEXT" or "LIMITED") end = groups.FindIndex(at, g => IsHead(g) || TafReport.Temperature().IsMatch(g));
        else if (HeightInFeet().IsMatch(groups[at]) && at + 1 < groups.Count && groups[at + 1] == "WIND") end = at + 3;
        else if (groups[at] == "QNH" && at + 1 < groups.Count && groups[at + 1] is "MNM" or "MAX")
            end = at + (at + 3 < groups.Count && groups[at + 3] is "MNM" or "MAX" ? 5 : 3);
        else if (groups[at] == "WND") end = at + (at + 2 < groups.Count && groups[at + 2] is "AFT" or "TIL" ? 4 : 2);
        if (end < 0 || end > groups.Count) end = groups.Count;
        Remarks.AddRange(groups[at..end]);
        var hasTaken = end > at;
        at = end;
        return hasTaken;
    }

    private static TafGroupKind KindOf(string word) => word switch
    {
        "BECMG" => TafGroupKind.Becoming,
        "TEMPO" => TafGroupKind.Temporary,
        "INTER" => TafGroupKind.Intermittent,
        _ => TafGroupKind.Probable,
    };

    private static int Number(Match match, string name) => int.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture);

    private const RegexOptions Options = RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant;

    [GeneratedRegex("^FM((?<time>[0-9]{6})Z?|[0-9][0-9A-Z/]*)$", Options, 20_000)]
    private static partial Regex FromTime();

    [GeneratedRegex("^[0-9]{4,5}FT$", Options, 20_000)]
    private static partial Regex HeightInFeet();

    [GeneratedRegex("^PROB(?<percent>[0-9]{2})$", Options, 20_000)]
    private static partial Regex Probability();

    [GeneratedRegex("^WS(?<height>[0-9]{3})/(?<direction>[0-9]{3})(?<speed>[0-9]{2,3})KT$", Options, 20_000)]
    private static partial Regex Shear();

    // Icing (6) and turbulence (5) and temperatures of military forecasts, and wind shear without values: known, and not needed for planning.
    [GeneratedRegex("^([56][0-9]{5}|TM?[0-9]{2}/([0-9]{2}){1,2}Z?|WSCONDS)$", Options, 20_000)]
    private static partial Regex Ignored();
}
