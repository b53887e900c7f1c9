using System.Collections.Concurrent;
using Batch.Books;
using Batch.Checks;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Cli.Pipeline;

/// <summary>The way from books to a checked week; no files are written, nothing is printed.</summary>
public static class WeekReading
{
    private const string UsualRuleSet = "us-charter";

    /// <summary>Reads, plans and checks.</summary>
    /// <param name="books">Workbooks and folders.</param>
    /// <param name="jobs">Aircraft planned at once, 1 or more; the result does not depend on it.</param>
    /// <param name="findsRemedies">Whether changes that make failed checks pass are looked for.</param>
    /// <param name="progress">Told how far it has come.</param>
    /// <param name="cancel">Stops between legs.</param>
    /// <param name="overrides">Why legs are flown although they fail, by leg, such as <c>T101/2</c>; null for what the books say.</param>
    /// <param name="memo">The run before, of which what did not change is taken over; null for none.</param>
    /// <exception cref="InputException">The books cannot be used.</exception>
    public static WeekResult Read(IReadOnlyList<string> books, int jobs, bool findsRemedies, IProgress<RunProgress> progress, CancellationToken cancel,
        IReadOnlyDictionary<string, string>? overrides = null, WeekMemo? memo = null)
    {
        return Of(Books(books, progress, overrides), jobs, findsRemedies, progress, cancel, memo);
    }

    /// <summary>Plans and checks a week that was read.</summary>
    /// <param name="week">The week.</param>
    /// <param name="jobs">Aircraft planned at once, 1 or more; the result does not depend on it.</param>
    /// <param name="findsRemedies">Whether changes that make failed checks pass are looked for.</param>
    /// <param name="progress">Told how far it has come.</param>
    /// <param name="cancel">Stops between legs.</param>
    /// <param name="memo">The run before, of which what did not change is taken over; null for none.</param>
    /// <exception cref="InputException">The rule set is not known.</exception>
    public static WeekResult Of(OperatorWeek week, int jobs, bool findsRemedies, IProgress<RunProgress> progress, CancellationToken cancel,
        WeekMemo? memo = null) =>
        Plan(memo?.Known(week) ?? week, Scenario.AsPlanned, jobs, findsRemedies, progress, cancel, memo);

    /// <summary>Reads, plans and checks, then again under scenarios, without remedies.</summary>
    /// <param name="books">Workbooks and folders.</param>
    /// <param name="scenarios">The scenarios, given the operator of the books.</param>
    /// <param name="jobs">Aircraft planned at once, 1 or more; the result does not depend on it.</param>
    /// <param name="progress">Told how far it has come.</param>
    /// <param name="cancel">Stops between legs.</param>
    /// <returns>The week as planned, first, then under each scenario.</returns>
    /// <exception cref="InputException">The books cannot be used.</exception>
    public static ImmutableArray<(Scenario Scenario, WeekResult Result)> Stress(IReadOnlyList<string> books, Func<Operator, ImmutableArray<Scenario>> scenarios,
        int jobs, IProgress<RunProgress> progress, CancellationToken cancel)
    {
        var week = Books(books, progress, null);
        return [.. scenarios(week.Operator).Prepend(Scenario.AsPlanned)
            .Select(scenario => (scenario, Plan(week, scenario, jobs, findsRemedies: false, progress, cancel)))];
    }

    private static OperatorWeek Books(IReadOnlyList<string> books, IProgress<RunProgress> progress, IReadOnlyDictionary<string, string>? overrides)
    {
        progress.Report(new RunProgress("reading", 0, books.Count));
        try
        {
            var week = Overridden.With(BookReader.Read(books), overrides ?? ImmutableDictionary<string, string>.Empty);
            progress.Report(new RunProgress("reading", books.Count, books.Count));
            return week;
        }
        catch (BookException error)
        {
            throw new InputException(error.Message, error);
        }
    }

    private static WeekResult Plan(OperatorWeek week, Scenario scenario, int jobs, bool findsRemedies, IProgress<RunProgress> progress,
        CancellationToken cancel, WeekMemo? memo = null)
    {
        var rules = Rules(week);
        var guard = new LegGuard();
        var planner = memo?.Planner(week) ?? new WeekPlanner(week, (leg, type) => rules.For(leg, type, week.Operator), scenario);
        var chains = new ImmutableArray<LegPlan>[planner.Registrations.Length];
        var total = week.Legs.Length;
        var done = 0;
        progress.Report(new RunProgress("planning", 0, total));
        Parallel.ForEach(OneByOne(chains.Length), new ParallelOptions { MaxDegreeOfParallelism = jobs, CancellationToken = cancel }, i =>
        {
            chains[i] = planner.PlanChain(planner.Registrations[i], (leg, plan) =>
            {
                cancel.ThrowIfCancellationRequested();
                return guard.Run(leg.Key.ToString(), plan, error => Broken(leg, error));
            });
            progress.Report(new RunProgress("planning", Interlocked.Add(ref done, chains[i].Length), total));
        });
        var planned = planner.Gather(chains.SelectMany(chain => chain));
        planned = planned with { Input = planner.Week with { Problems = week.Problems.AddRange(planner.Problems) } };
        var forecasts = memo?.Forecasts(planner) ?? ForecastReading.Of(planner.Weather.Forecasts, planner.Weather.BulletinOf);
        var answered = WeekChecker.Check(planned, rules, forecasts, jobs);
        RemedyFinder? finder = null;
        if (findsRemedies)
        {
            finder = new RemedyFinder(
                planner, answered, rules, forecasts, (leg, plan) => guard.Run(leg.Key.ToString(), plan, error => Broken(leg, error)), memo?.Remedies);
            answered = WithRemedies(answered, finder, jobs, progress, cancel);
        }

        if (guard.Faults.IsEmpty) memo?.Keep(week, planner, forecasts, finder?.Memo);
        else memo?.Forget();
        return new WeekResult(answered, guard.Faults);
    }

    // Taken up in order by whoever is free: chains are long and of unequal length.
    private static OrderablePartitioner<int> OneByOne(int count) => Partitioner.Create(Enumerable.Range(0, count), EnumerablePartitionerOptions.NoBuffering);

    private static CheckedWeek WithRemedies(CheckedWeek week, RemedyFinder finder, int jobs, IProgress<RunProgress> progress, CancellationToken cancel)
    {
        var failing = finder.Failing;
        if (failing.IsEmpty) return week;
        var found = new CheckedLeg[failing.Length];
        var done = 0;
        progress.Report(new RunProgress("remedies", 0, failing.Length));
        Parallel.ForEach(OneByOne(failing.Length), new ParallelOptions { MaxDegreeOfParallelism = jobs, CancellationToken = cancel }, i =>
        {
            found[i] = finder.Find(failing[i]);
            progress.Report(new RunProgress("remedies", Interlocked.Increment(ref done), failing.Length));
        });
        var next = 0;
        return week with { Legs = [.. week.Legs.Select(leg => next < failing.Length && ReferenceEquals(leg, failing[next]) ? found[next++] : leg)] };
    }

    private static RuleSet Rules(OperatorWeek week)
    {
        try
        {
            return RuleSet.Load(week.Operator.RuleSet.Length > 0 ? week.Operator.RuleSet : UsualRuleSet);
        }
        catch (UnknownRuleSetException error)
        {
            throw new InputException(error.Message, error);
        }
    }

    private static LegPlan.Unplanned Broken(Leg leg, Exception error) => new()
    {
        Leg = leg,
        Why = $"A fault of the program stopped the planning of this leg ({error.GetType().Name}: {error.Message}). Please report it.",
        Cells = [leg.Origin.Cell("")],
        IsFault = true,
    };
}
