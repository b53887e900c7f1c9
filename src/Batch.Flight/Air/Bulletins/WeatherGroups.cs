using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>
/// Reads the groups that METAR, SPECI and TAF have in common (WMO-No. 306, volume I.1, FM 15, 16 and 51; FMH-1 for statute miles and inches).
/// </summary>
internal sealed partial class WeatherGroups
{
    private const RegexOptions Options = RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant;
    private const int Limit = 20_000; // milliseconds

    private SurfaceWind? _wind;
    private bool _isCavok;
    private Visibility? _visibility;
    private Hectopascals? _setting;
    private readonly List<string> _weather = [];
    private readonly List<CloudLayer> _clouds = [];

    /// <summary>What was read so far.</summary>
    public WeatherConditions Conditions => new()
    {
        Wind = _wind,
        IsCavok = _isCavok,
        Visibility = _visibility,
        Weather = [.. _weather],
        Clouds = [.. _clouds],
        AltimeterSetting = _setting,
    };

    /// <summary>The visibility group was there but held no value (////).</summary>
    public bool IsVisibilityMissing { get; private set; }

    /// <summary>The altimeter setting in inches of mercury [inHg], where it was given so.</summary>
    public double? SettingInches { get; private set; }

    /// <summary>Takes the group at a place, or the two groups of a mixed fraction; moves the place behind them.</summary>
    /// <returns>Whether the group was one of the common ones.</returns>
    public bool TryTake(IReadOnlyList<string> groups, ref int at)
    {
        var group = groups[at];
        if (at + 1 < groups.Count
            && WholeMiles().Match(group) is { Success: true } whole
            && FractionOfMile().Match(groups[at + 1]) is { Success: true } fraction
            && _visibility is null && fraction.Groups["limit"].Length == 0)
        {
            if (!Miles($"{group} {groups[at + 1]}", LimitOf(whole.Groups["limit"].Value), Number(whole, "miles"), Number(fraction, "above"),
                Number(fraction, "below"))) return false;
            at += 2;
            return true;
        }

        if (!TryWind(group) && !TryVisibility(group) && !TryCloud(group) && !TrySetting(group) && !TryWeather(group)) return false;
        at++;
        return true;
    }

    /// <summary>Takes a visibility in one direction, such as 3000E, as the visibility, where there is no other: the safe side.</summary>
    public bool TryTakeDirectional(string group)
    {
        if (_visibility is not null || DirectionalVisibility().Match(group) is not { Success: true } match) return false;
        _visibility = new Visibility { Text = group, Metres = Number(match, "metres") };
        return true;
    }

    /// <summary>Why a group that stands for nothing known was left out: a wind without its unit may be knots or metres a second, and is not guessed.</summary>
    /// <param name="group">The group.</param>
    /// <param name="read">What was read of the report.</param>
    /// <param name="otherwise">The reason where it is nothing of the kind.</param>
    public static string WhyUnread(string group, WeatherConditions read, string otherwise) =>
        read.Wind is null && WindWithoutUnit().IsMatch(group) ? "a wind without its unit (KT, MPS or KMH), so it is not used" : otherwise;

    private bool TryWind(string group)
    {
        if (_wind is { VariesFromDeg: null } wind && Variation().Match(group) is { Success: true } varies)
        {
            var (from, to) = (Number(varies, "from"), Number(varies, "to"));
            if (from > 360 || to > 360) return false;
            _wind = wind with { VariesFromDeg = from, VariesToDeg = to };
            return true;
        }

        if (_wind is not null || Wind().Match(group) is not { Success: true } match) return false;
        if (match.Groups["speed"].Value is "//") return true; // not observed
        var direction = match.Groups["direction"].Value;
        int? directionDeg = direction is "VRB" or "///" ? null : int.Parse(direction, CultureInfo.InvariantCulture);
        if (directionDeg > 360) return false;
        _wind = new SurfaceWind
        {
            DirectionDeg = directionDeg,
            IsVariable = direction == "VRB",
            ReportedSpeed = Number(match, "speed"),
            ReportedGust = match.Groups["gust"].Value is "" or "//" ? null : Number(match, "gust"),
            SpeedAtLeast = match.Groups["above"].Length > 0,
            Unit = match.Groups["unit"].Value,
        };
        return true;
    }

    private bool TryVisibility(string group)
    {
        if (group == "CAVOK")
        {
            _isCavok = true;
            return true;
        }

        if (_visibility is not null) return false;
        if (group is "////" or "////NDV" or "////SM")
        {
            IsVisibilityMissing = true;
            return true;
        }

        if (MetreVisibility().Match(group) is { Success: true } metric)
        {
            var metres = Number(metric, "metres");
            _visibility = new Visibility
            {
                Text = group,
                Metres = metres == 9999 ? 10000 : metres,
                Limit = metres == 9999 ? VisibilityLimit.AtLeast : LimitOf(metric.Groups["limit"].Value),
                NoDirectionalVariation = metric.Groups["ndv"].Success,
            };
            return true;
        }

        if (KilometreVisibility().Match(group) is { Success: true } kilometres)
        {
            _visibility = new Visibility { Text = group, Metres = Number(kilometres, "km") * 1000.0 };
            return true;
        }

        if (FractionOfMile().Match(group) is { Success: true } fraction)
        {
            var (above, below) = (Number(fraction, "above"), Number(fraction, "below"));
            // Canadian forecasts print 1 1/2SM as 11/2SM: a fraction of a mile is always a proper one.
            var whole = above >= below ? above / 10 : 0;
            return Miles(group, LimitOf(fraction.Groups["limit"].Value), whole, above - 10 * whole, below);
        }

        if (MileVisibility().Match(group) is not { Success: true } miles) return false;
        _visibility = new Visibility
        {
            Text = group,
            Metres = Number(miles, "miles") * Visibility.MetresPerStatuteMile,
            IsInMiles = true,
            Limit = LimitOf(miles.Groups["limit"].Value),
        };
        return true;
    }

    private bool Miles(string text, VisibilityLimit limit, int whole, int above, int below)
    {
        if (above >= below) return false;
        _visibility = new Visibility
        {
            Text = text,
            Metres = (whole + (double)above / below) * Visibility.MetresPerStatuteMile,
            IsInMiles = true,
            Limit = limit,
        };
        return true;
    }

    private bool TryCloud(string group)
    {
        CloudAmount? word = group switch
        {
            "SKC" => CloudAmount.SkyClear,
            "CLR" => CloudAmount.Clear,
            "NSC" => CloudAmount.NoneSignificant,
            "NCD" => CloudAmount.NoneDetected,
            _ => null,
        };
        if (word is { } whole)
        {
            _clouds.Add(new CloudLayer(whole, null, ""));
            return true;
        }

        if (group is "CB" or "TCU" && _clouds is [.., { Height: not null, Kind: "" } last])
        {
            _clouds[^1] = last with { Kind = group }; // FEW050 CB, for FEW050CB
            return true;
        }

        if (Cloud().Match(group) is not { Success: true } match || group.Trim('/').Length == 0) return false;
        var amount = match.Groups["amount"].Value switch
        {
            "FEW" => CloudAmount.Few,
            "SCT" => CloudAmount.Scattered,
            "BKN" => CloudAmount.Broken,
            "OVC" => CloudAmount.Overcast,
            "VV" => CloudAmount.VerticalVisibility,
            _ => CloudAmount.Unknown,
        };
        Feet? height = match.Groups["height"].Value == "///" ? null : new Feet(Number(match, "height") * 100);
        _clouds.Add(new CloudLayer(amount, height, match.Groups["kind"].Value.Trim('/')));
        return true;
    }

    private bool TrySetting(string group)
    {
        if (Setting().Match(group) is not { Success: true } match) return false;
        if (match.Groups["hpa"].Success)
        {
            if (match.Groups["hpa"].Value != "////") _setting = new Hectopascals(Number(match, "hpa"));
        }
        else if (match.Groups["inches"].Value != "////")
        {
            SettingInches = Number(match, "inches") / 100.0;
            _setting ??= new Hectopascals(SettingInches.Value * Hectopascals.HectopascalsPerInchOfMercury);
        }

        return true;
    }

    private bool TryWeather(string group)
    {
        // Weather at times joined by a stroke: HZ/-RA.
        var words = group.Split('/');
        if (group != "NSW" && !words.All(IsWeather)) return false;
        _weather.AddRange(words);
        return true;
    }

    // A description alone says nothing, but for TS and SH.
    private static bool IsWeather(string word) =>
        Weather().Match(word) is { Success: true } match
            && match.Groups["code"].Captures.Any(c => c.Value is not ("MI" or "PR" or "BC" or "DR" or "BL" or "FZ" or "VC"));

    private static int Number(Match match, string name) => int.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture);

    private static VisibilityLimit LimitOf(string letter) => letter switch
    {
        "P" => VisibilityLimit.MoreThan,
        "M" => VisibilityLimit.LessThan,
        _ => VisibilityLimit.Exact,
    };

    [GeneratedRegex("^(?<direction>[0-9]{3}|VRB|///)(?<above>P|ABV)?(?<speed>[0-9]{2,3}|//)(G(P|ABV)?(?<gust>[0-9]{2,3}|//))?(?<unit>KT|MPS|KMH)S?$", Options,
        Limit)]
    internal static partial Regex Wind();

    [GeneratedRegex("^([0-9]{3}|VRB)P?[0-9]{2}(GP?[0-9]{2,3})?$", Options, Limit)]
    private static partial Regex WindWithoutUnit();

    [GeneratedRegex("^(?<from>[0-9]{3})V(?<to>[0-9]{3})$", Options, Limit)]
    private static partial Regex Variation();

    [GeneratedRegex("^(?<limit>[PM])?(?<metres>[0-9]{4})(?<ndv>NDV)?$", Options, Limit)]
    private static partial Regex MetreVisibility();

    [GeneratedRegex("^(?<metres>[0-9]{4})(N|NE|E|SE|S|SW|W|NW)$", Options, Limit)]
    private static partial Regex DirectionalVisibility();

    [GeneratedRegex("^(?<km>[0-9]{1,2})KM$", Options, Limit)]
    private static partial Regex KilometreVisibility();

    [GeneratedRegex("^(?<limit>[PM])?(?<miles>[0-9]{1,3})SM$", Options, Limit)]
    private static partial Regex MileVisibility();

    [GeneratedRegex("^(?<limit>[PM])?(?<above>[0-9]{1,2})/(?<below>[0-9]{1,2})SM$", Options, Limit)]
    private static partial Regex FractionOfMile();

    [GeneratedRegex("^(?<limit>[PM])?(?<miles>[0-9]{1,2})$", Options, Limit)]
    private static partial Regex WholeMiles();

    [GeneratedRegex("^(?<amount>FEW|SCT|BKN|OVC|VV|///)(?<height>[0-9]{3}|///)(?<kind>CB|TCU|///)?$", Options, Limit)]
    private static partial Regex Cloud();

    [GeneratedRegex("^(Q(?<hpa>[0-9]{4}|////)|A(?<inches>[0-9]{4}|////)|QNH(?<inches>[0-9]{4})INS)$", Options, Limit)]
    private static partial Regex Setting();

    [GeneratedRegex("^[+-]?(?<code>VC|MI|PR|BC|DR|BL|SH|TS|FZ|DZ|RA|SN|SG|IC|PL|GR|GS|UP|BR|FG|FU|VA|DU|SA|HZ|PY|PO|SQ|FC|SS|DS){1,6}$", Options, Limit)]
    private static partial Regex Weather();
}
