using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>The nearest usable cruise level that passes.</summary>
internal sealed class OtherLevel : IRemedyKind
{
    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("ENR-", "FUEL-01", "FUEL-02", "FUEL-03", "FUEL-04", "FUEL-05", "FUEL-06", "FUEL-07", "FUEL-10");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials)
    {
        var plan = failure.Plan;
        var ceiling = new[] { plan.Type.Ceiling, plan.Aircraft.Ceiling }.OfType<Feet>().Select(one => (Feet?)one).Min();
        var surface = Feet.Max(plan.From.Elevation, plan.To.Elevation);
        var now = plan.Profile.Level;
        var levels = LevelCandidates.Of(plan.Route, plan.Rules, plan.Type, plan.Profile.Setting, ceiling, surface)
            .Where(level => level != now)
            .OrderBy(level => Math.Abs(level.Value - now.Value));
        return trials.First(levels.Select(level => Edit(failure, level)), failure.Check);
    }

    private static WeekEdit Edit(Failure failure, Feet level) =>
        new WeekEdit($"Fly at {Words.Level(level)} instead of {Words.Level(failure.Plan.Profile.Level)}", Disruptions.Paper)
            .With(failure.Leg, failure.Leg with { Level = level, IsLevelAuto = false }, (nameof(Leg.Level), Typed.Level(level)));
}
