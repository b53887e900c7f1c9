using Batch.Flight.Week;

namespace Batch.Cli.Pipeline;

/// <summary>
/// Puts the objects of a week read before in the place of those that say the same, so that what is the same is known by being the same object.
/// </summary>
internal static class SameRows
{
    /// <summary>The week with the objects of another wherever they say the same.</summary>
    /// <param name="week">The week as it was read now.</param>
    /// <param name="before">The week read before.</param>
    public static OperatorWeek Of(OperatorWeek week, OperatorWeek before) => week with
    {
        Operator = SameValue.Is(before.Operator, week.Operator) ? before.Operator : week.Operator,
        Types = Register(week.Types, before.Types),
        Fleet = Register(week.Fleet, before.Fleet),
        Airports = Register(week.Airports, before.Airports),
        Airways = Register(week.Airways, before.Airways),
        Crew = Register(week.Crew, before.Crew),
        Fixes = Whole(week.Fixes, before.Fixes),
        Land = Whole(week.Land, before.Land),
        AltitudeGrid = Whole(week.AltitudeGrid, before.AltitudeGrid),
        Logged = Whole(week.Logged, before.Logged),
        CheckSettings = Whole(week.CheckSettings, before.CheckSettings),
        Winds = Whole(week.Winds, before.Winds),
        Bulletins = Whole(week.Bulletins, before.Bulletins),
        Notices = Whole(week.Notices, before.Notices),
        Legs = Rows(week.Legs, before.Legs, leg => leg.Origin),
        BrokenLegs = Rows(week.BrokenLegs, before.BrokenLegs, leg => leg.Origin),
        Manifest = Rows(week.Manifest, before.Manifest, line => line.Origin),
        Cargo = Rows(week.Cargo, before.Cargo, line => line.Origin),
    };

    private static ImmutableSortedDictionary<string, T> Register<T>(ImmutableSortedDictionary<string, T> now, ImmutableSortedDictionary<string, T> before)
        where T : class
    {
        var kept = now.Select(pair =>
            KeyValuePair.Create(pair.Key, before.TryGetValue(pair.Key, out var was) && SameValue.Is(was, pair.Value) ? was : pair.Value)).ToArray();
        return now.Count == before.Count && kept.Zip(before).All(pair => pair.First.Key == pair.Second.Key
            && ReferenceEquals(pair.First.Value, pair.Second.Value)) ? before : now.SetItems(kept);
    }

    private static ImmutableArray<T> Whole<T>(ImmutableArray<T> now, ImmutableArray<T> before) => SameValue.Is(now, before) ? before : now;

    private static ImmutableArray<T> Rows<T>(ImmutableArray<T> now, ImmutableArray<T> before, Func<T, Origin> place)
        where T : class
    {
        var known = before.ToLookup(row => place(row).ToString(), StringComparer.Ordinal);
        ImmutableArray<T> kept = [.. now.Select(row => known[place(row).ToString()].FirstOrDefault(was => SameValue.Is(was, row)) ?? row)];
        return kept.Length == before.Length && kept.Zip(before).All(pair => ReferenceEquals(pair.First, pair.Second)) ? before : kept;
    }
}
