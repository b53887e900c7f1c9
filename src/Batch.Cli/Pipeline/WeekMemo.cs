using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Cli.Pipeline;

/// <summary>
/// The week of the run before, while a book is watched: plans and remedies are taken over where nothing has changed that they were made from. The result is
/// that of a run without it.
/// </summary>
public sealed class WeekMemo
{
    private OperatorWeek? _week;
    private WeekPlanner? _planner;
    private Forecasts? _forecasts;
    private RemedyMemo? _remedies;

    /// <summary>A week as it was read, with the objects of the run before wherever they say the same.</summary>
    /// <param name="week">The week.</param>
    internal OperatorWeek Known(OperatorWeek week) => _week is { } before ? SameRows.Of(week, before) : week;

    /// <summary>A planner that takes over what was planned; null where there is nothing to take over.</summary>
    /// <param name="week">A week of <see cref="Known"/>.</param>
    internal WeekPlanner? Planner(OperatorWeek week) => _planner?.After(week);

    /// <summary>The forecasts of the run before, where its weather is that of a planner; null for others.</summary>
    /// <param name="planner">The planner.</param>
    internal Forecasts? Forecasts(WeekPlanner planner) => ReferenceEquals(planner.Weather, _planner?.Weather) ? _forecasts : null;

    /// <summary>The remedies of the run before; null for none.</summary>
    internal RemedyMemo? Remedies => _remedies;

    /// <summary>Keeps a run for the next one.</summary>
    /// <param name="week">The week.</param>
    /// <param name="planner">Its planner.</param>
    /// <param name="forecasts">Its forecasts.</param>
    /// <param name="remedies">Its remedies; null where none were looked for.</param>
    internal void Keep(OperatorWeek week, WeekPlanner planner, Forecasts forecasts, RemedyMemo? remedies) =>
        (_week, _planner, _forecasts, _remedies) = (week, planner, forecasts, remedies);

    /// <summary>Forgets everything: after a fault of the program nothing is taken over.</summary>
    internal void Forget() => (_week, _planner, _forecasts, _remedies) = (null, null, null, null);
}
