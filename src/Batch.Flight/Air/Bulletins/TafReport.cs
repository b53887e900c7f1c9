using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>
/// A forecast for an aerodrome (WMO-No. 306, FM 51 TAF; in the United States with statute miles).
/// A group that cannot be read is named in <see cref="Unread"/> and the rest is used.
/// </summary>
public sealed partial record TafReport
{
    /// <summary>The station; empty where it could not be read.</summary>
    public string Station { get; private init; } = "";

    /// <summary>Amends (AMD) or corrects (COR) an earlier one; empty else.</summary>
    public string Amendment { get; private init; } = "";

    /// <summary>When it was issued; null where not given.</summary>
    public Instant? Issued { get; private init; }

    /// <summary>Valid from; null where it could not be read.</summary>
    public Instant? ValidFrom { get; private init; }

    /// <summary>Valid to, exclusive; null where it could not be read.</summary>
    public Instant? ValidTo { get; private init; }

    /// <summary>It was cancelled (CNL) or not made (NIL, FCST NOT AVBL).</summary>
    public bool IsCancelled { get; private init; }

    /// <summary>The groups in their order; the first is the base.</summary>
    public ImmutableArray<TafGroup> Groups { get; private init; } = [];

    /// <summary>Highest and lowest temperatures, in their order.</summary>
    public ImmutableArray<TafTemperature> Temperatures { get; private init; } = [];

    /// <summary>The remarks, as written.</summary>
    public string Remarks { get; private init; } = "";

    /// <summary>Groups that could not be read.</summary>
    public ImmutableArray<UnreadGroup> Unread { get; private init; } = [];

    /// <summary>Whether a moment lies in its validity, cancelled or not; no where that could not be read.</summary>
    /// <param name="moment">The moment.</param>
    public bool Covers(Instant moment) => moment >= ValidFrom && moment < ValidTo;

    /// <summary>
    /// What it says of a moment; null outside its validity, and where that could not be read. FM replaces everything from its time on; BECMG replaces the
    /// elements it gives from the end of its period on (WMO-No. 306, FM 51, 51.8 and 51.9), whatever the order in which they are written.
    /// </summary>
    /// <param name="moment">The moment.</param>
    public TafConditions? At(Instant moment)
    {
        if (IsCancelled || Groups.IsEmpty || !Covers(moment)) return null;
        var fresh = Groups.Where(g => g.Kind == TafGroupKind.From && g.From <= moment).MaxBy(g => g.From);
        var (start, startAt) = fresh is null ? (Groups[0], 0) : (fresh, Groups.IndexOf(fresh));
        // A change written before the FM belongs to what the FM ended, also where it would have been complete only later.
        var prevailing = Groups
            .Where((g, i) => g.Kind == TafGroupKind.Becoming && g.To <= moment && (fresh is null || (i > startAt ? g.To : g.From) >= fresh.From))
            .OrderBy(g => g.To)
            .Aggregate(new WeatherConditions().ChangedBy(start.Conditions), (conditions, change) => conditions.ChangedBy(change.Conditions));
        return new TafConditions(
            prevailing,
            [.. Groups.Where(g => g.Kind is not (TafGroupKind.Base or TafGroupKind.From) && g.From <= moment && moment < g.To)]);
    }

    /// <summary>
    /// What it says of a span of time, such as an hour before to an hour after an arrival: the conditions at its start and after each change inside it.
    /// Moments outside the validity are left out; nothing where none of the span is covered.
    /// </summary>
    /// <param name="from">Start of the span.</param>
    /// <param name="to">End of the span, inclusive.</param>
    public ImmutableArray<TafConditions> During(Instant from, Instant to) =>
    [
        .. Groups.SelectMany(g => new[] { g.From, g.To }).OfType<Instant>().Append(from).Append(ValidFrom ?? from)
            .Where(moment => from <= moment && moment <= to).Distinct().Order()
            .Select(At).OfType<TafConditions>(),
    ];

    /// <summary>Reads a forecast.</summary>
    /// <param name="text">The forecast; line ends and a closing equals sign do not matter.</param>
    /// <param name="received">When it was received, within two weeks: it tells the month.</param>
    public static TafReport Parse(string text, Instant received)
    {
        var groups = BulletinText.Groups(text);
        var report = new TafReport();
        // Remarks stand at the end, but where a change follows them on a line of its own it is forecast all the same.
        if (groups.IndexOf("RMK") is >= 0 and var remarksAt)
        {
            var end = TafBody.NextHead(groups, remarksAt);
            report = report with { Remarks = BulletinText.AsWritten(text, (remarksAt + 1)..end) };
            groups.RemoveRange(remarksAt, end - remarksAt);
        }

        var unread = new List<UnreadGroup>();

        var (at, isOld) = (0, false);
        for (; at < groups.Count && groups[at] is "TAF" or "AMD" or "COR"; at++)
        {
            if (groups[at] != "TAF") report = report with { Amendment = groups[at] };
        }

        if (at < groups.Count && BulletinText.Station().IsMatch(groups[at])) report = report with { Station = groups[at++] };
        else unread.Add(new UnreadGroup(at < groups.Count ? groups[at] : "", "a station of four letters or digits was expected"));
        for (; at < groups.Count && groups[at] is "AMD" or "COR"; at++) report = report with { Amendment = groups[at] };
        // Six digits without a Z and without a period behind them are an old validity, and the time of issue was left out.
        if (at < groups.Count && BulletinText.IssueTime().IsMatch(groups[at]) && !(OldTafTime.DayAndHours().IsMatch(groups[at])
            && !IsValidity(groups, at + 1)
            && OldTafTime.Validity(groups[at], null, received) is (not null, not null)))
        {
            report = report with { Issued = BulletinTime.OfDigits(groups[at], received) };
            if (report.Issued is null) unread.Add(new UnreadGroup(groups[at], "no such day and time"));
            at++;
        }

        if (at < groups.Count && groups[at] == "NIL") return report with { IsCancelled = true, Unread = [.. unread] };
        if (at < groups.Count && Period().IsMatch(groups[at]))
        {
            var near = report.Issued ?? received;
            var (from, to) = PeriodOf(groups[at], near);
            report = report with { ValidFrom = from, ValidTo = to };
            if (from is null || to is null || to <= from) unread.Add(new UnreadGroup(groups[at], "no such period"));
            at++;
        }
        else if (IsValidity(groups, at))
        {
            var (from, to) = OldTafTime.Validity(groups[at], report.Issued, received);
            report = report with { ValidFrom = from, ValidTo = to };
            isOld = from is not null && to is not null;
            if (!isOld) unread.Add(new UnreadGroup(groups[at], "no such period"));
            at++;
        }
        else
        {
            unread.Add(new UnreadGroup(at < groups.Count ? groups[at] : "", "a period of validity such as 2806/2912 was expected"));
        }

        if (at < groups.Count && groups[at] == "CNL") return report with { IsCancelled = true, Unread = [.. unread] };
        if (groups[at..] is ["FCST", "NOT", ..]) return report with { IsCancelled = true, Unread = [.. unread] };
        var body = new TafBody(report.ValidFrom ?? received, report.ValidTo, isOld, unread);
        body.Read(groups, at, report.ValidFrom);
        return report with
        {
            Groups = [.. body.Groups],
            Temperatures = [.. body.Temperatures],
            Remarks = string.Join(' ', body.Remarks.Append(report.Remarks)).Trim(),
            Unread = [.. unread],
        };
    }

    // A validity as it is now or was; hours alone only where no visibility can be meant: before a wind.
    private static bool IsValidity(List<string> groups, int at) =>
        at < groups.Count && (Period().IsMatch(groups[at]) || OldTafTime.DayAndHours().IsMatch(groups[at])
            || (OldTafTime.HoursAlone().IsMatch(groups[at]) && at + 1 < groups.Count && (groups[at + 1] is "CNL" or "NIL"
                || WeatherGroups.Wind().IsMatch(groups[at + 1]))));

    /// <summary>Start and end of a period such as 2806/2912; the end is the first such moment after the start.</summary>
    internal static (Instant? From, Instant? To) PeriodOf(string group, Instant near)
    {
        var from = BulletinTime.OfDigits(group[..4], near);
        return (from, BulletinTime.OfDigits(group[5..9], from ?? near));
    }

    /// <summary>A period such as 2806/2912.</summary>
    [GeneratedRegex("^[0-9]{4}/[0-9]{4}$", RegexOptions.CultureInvariant, 20_000)]
    internal static partial Regex Period();

    /// <summary>Forecast temperature such as TXM01/2407Z.</summary>
    [GeneratedRegex("^T(?<kind>[XN])(?<degrees>M?[0-9]{2})/(?<time>[0-9]{4})Z?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    internal static partial Regex Temperature();

    /// <summary>The number of a temperature with M for minus.</summary>
    internal static Celsius Degrees(string text) =>
        new(text[0] == 'M' ? 0 - int.Parse(text[1..], CultureInfo.InvariantCulture) : int.Parse(text, CultureInfo.InvariantCulture));
}
