using Batch.Checks;
using Batch.Flight.Week;

namespace Batch.Cli.Watching;

/// <summary>What changed between two runs, in words: which book is gone, which legs fail now, which pass.</summary>
internal static class StateChanges
{
    private const int MostNamed = 5;

    /// <summary>The changes on one line, a book that is gone first, then legs, worst first; <c>no leg changed its state</c> without any.</summary>
    /// <param name="before">The week of the run before.</param>
    /// <param name="now">The week of this run.</param>
    public static string Of(CheckedWeek before, CheckedWeek now)
    {
        var old = ByKey(before);
        var legs = ByKey(now);
        string[] changes =
        [
            .. before.Plan.Input.Inputs.Select(book => book.Name).Except(now.Plan.Input.Inputs.Select(book => book.Name), StringComparer.OrdinalIgnoreCase)
                .Select(book => $"the book {book} is gone"),
            .. legs.Values.OrderByDescending(leg => leg.State).ThenBy(leg => leg.Plan.Key).Select(leg => Change(old.GetValueOrDefault(leg.Plan.Key), leg))
                .Where(change => change.Length > 0),
            .. old.Keys.Where(key => !legs.ContainsKey(key)).Order().Select(key => $"{key} is gone"),
        ];
        return changes.Length switch
        {
            0 => "no leg changed its state",
            <= MostNamed => string.Join("; ", changes),
            _ => string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"{string.Join("; ", changes.Take(MostNamed))}; and {changes.Length - MostNamed} more"),
        };
    }

    private static string Change(CheckedLeg? before, CheckedLeg now)
    {
        var key = now.Plan.Key;
        var fails = Fails(now);
        if (before is null) return $"{key} is new and {State(now.State, fails)}";
        var failed = Fails(before);
        var worse = fails.Except(failed, StringComparer.Ordinal).ToImmutableArray();
        var better = failed.Except(fails, StringComparer.Ordinal).ToImmutableArray();
        return (before.State, now.State) switch
        {
            (LegState.Fail, LegState.Fail) when worse.IsEmpty && better.IsEmpty => "",
            (LegState.Fail, LegState.Fail) when worse.IsEmpty => $"{key} no longer fails {string.Join(", ", better)}",
            (LegState.Fail, LegState.Fail) => $"{key} now fails {string.Join(", ", worse)}{(better.IsEmpty ? "" : $", no longer {string.Join(", ", better)}")}",
            var (then, after) when then == after => "",
            (_, var after) => $"{key} now {State(after, fails)}",
        };
    }

    private static string State(LegState state, ImmutableArray<string> fails) => state switch
    {
        LegState.Pass => "passes",
        LegState.Caution => "has cautions only",
        LegState.Fail => "fails " + string.Join(", ", fails),
        LegState.Unplanned => "cannot be planned",
    };

    private static ImmutableArray<string> Fails(CheckedLeg leg) =>
        [.. leg.Findings.Where(finding => finding.Verdict == Verdict.Fail).Select(finding => finding.Check).Distinct(StringComparer.Ordinal)];

    private static Dictionary<LegKey, CheckedLeg> ByKey(CheckedWeek week)
    {
        var legs = new Dictionary<LegKey, CheckedLeg>();
        foreach (var leg in week.Legs) legs.TryAdd(leg.Plan.Key, leg);
        return legs;
    }
}
