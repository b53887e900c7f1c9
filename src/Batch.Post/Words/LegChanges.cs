using System.Globalization;

namespace Batch.Post.Words;

/// <summary>What changed on a leg, in words such as <c>passengers 3 to 4</c>.</summary>
internal static class LegChanges
{
    /// <summary>The changes from one set of facts to another, the most pressing first; empty where the two say the same.</summary>
    /// <param name="was">The facts that were told.</param>
    /// <param name="now">The facts now.</param>
    /// <param name="weights">How weights are written.</param>
    public static ImmutableArray<string> Between(LegFacts was, LegFacts now, PrintedWeight weights)
    {
        if (was == now) return [];
        ImmutableArray<string> said = [.. State(was, now), .. Journey(was, now), .. Load(was, now), .. Way(was, now), .. Weights(was, now, weights),
            .. Named("remarks", Quoted(was.Remarks), Quoted(now.Remarks))];
        return said.IsEmpty ? ["figures of the log, the winds, the runways or the notes"] : said;
    }

    private static IEnumerable<string> State(LegFacts was, LegFacts now)
    {
        var failing = now.Failing.Length > 0 ? $" ({now.Failing})" : "";
        if (was.State != now.State) yield return $"state {was.State} to {now.State}{failing}";
        else if (was.Failing != now.Failing) yield return $"failing checks {was.Failing} to {now.Failing}";
        if (was.Override != now.Override) yield return now.Override.Length > 0
            ? $"flown although it fails, because: {Quoted(now.Override)}"
            : "the reason to fly it although it fails is withdrawn";
    }

    private static IEnumerable<string> Journey(LegFacts was, LegFacts now) =>
    [
        .. Named("aircraft", was.Aircraft, now.Aircraft),
        .. Named("departure", was.From, now.From),
        .. Named("destination", was.To, now.To),
        .. Times("off blocks", was.OffBlocks, was.FromZone, now.OffBlocks, now.FromZone),
        .. Times("on blocks", was.OnBlocks, was.ToZone, now.OnBlocks, now.ToZone),
        .. Named("captain", was.Captain, now.Captain),
        .. Named("second pilot", was.SecondPilot, now.SecondPilot),
    ];

    private static IEnumerable<string> Load(LegFacts was, LegFacts now)
    {
        if (was.Passengers != now.Passengers) yield return string.Create(CultureInfo.InvariantCulture, $"passengers {was.Passengers} to {now.Passengers}");
        else if (was.Load != now.Load) yield return "names, weights, seats or notes in the manifest, or cargo";
    }

    private static IEnumerable<string> Way(LegFacts was, LegFacts now) =>
    [
        .. Named("route", was.Route.Length > 0 ? was.Route : "direct", now.Route.Length > 0 ? now.Route : "direct"),
        .. Numbers("level", was.LevelFt, now.LevelFt, "ft"),
        .. Named("alternate", was.Alternates, now.Alternates),
        .. Named("departure runway", was.DepartureRunway, now.DepartureRunway),
        .. Named("arrival runway", was.ArrivalRunway, now.ArrivalRunway),
    ];

    private static IEnumerable<string> Weights(LegFacts was, LegFacts now, PrintedWeight weights) =>
    [
        .. Weights("block fuel", was.BlockFuelLb, now.BlockFuelLb, weights),
        .. Weights("zero-fuel weight", was.ZeroFuelLb, now.ZeroFuelLb, weights),
        .. Weights("takeoff weight", was.TakeoffLb, now.TakeoffLb, weights),
        .. Weights("landing weight", was.LandingLb, now.LandingLb, weights),
    ];

    private static IEnumerable<string> Weights(string what, int wasLb, int nowLb, PrintedWeight weights) =>
        Numbers(what, weights.Whole(wasLb), weights.Whole(nowLb), weights.Unit);

    private static IEnumerable<string> Named(string what, string was, string now)
    {
        if (was == now) yield break;
        yield return was.Length == 0 ? $"{what} {now} added" : now.Length == 0 ? $"{what} {was} dropped" : $"{what} {was} to {now}";
    }

    private static IEnumerable<string> Numbers(string what, int was, int now, string unit)
    {
        if (was != now) yield return string.Create(CultureInfo.InvariantCulture, $"{what} {was:#,0} to {now:#,0} {unit}");
    }

    private static IEnumerable<string> Times(string what, Instant was, string wasZone, Instant now, string nowZone)
    {
        if (was == now && wasZone == nowZone) yield break;
        var (before, after) = (LocalTimes.At(was, wasZone), LocalTimes.At(now, nowZone));
        if (before == after && was == now) yield break;
        yield return before.Date == after.Date
            ? $"{what} {LocalTimes.Clock(before)} to {LocalTimes.Clock(after)}"
            : $"{what} {LocalTimes.DayAndClock(before)} to {LocalTimes.DayAndClock(after)}";
    }

    /// <summary>A text in quotation marks, none inside: they alone tell its commas from those between the changes.</summary>
    private static string Quoted(string text) => text.Length == 0 ? "" : $"\"{Shortened(text).Replace('"', '\'')}\"";

    private static string Shortened(string text)
    {
        const int Most = 120;
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= Most ? line : line[..Most] + "...";
    }
}
