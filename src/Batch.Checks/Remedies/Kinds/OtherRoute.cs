using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>The backup route, or direct, at the level filed or at the best one.</summary>
internal sealed class OtherRoute : IRemedyKind
{
    /// <inheritdoc/>
    public int Disruption => Disruptions.Way;

    /// <inheritdoc/>
    public bool Suits(Failure failure) =>
        failure.IsOneOf("ENR-", "FUEL-01", "FUEL-02", "FUEL-03", "FUEL-04", "FUEL-05", "FUEL-06", "FUEL-07", "FUEL-10", "CREW-01");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure.Leg), failure.Check);

    private static IEnumerable<WeekEdit> Edits(Leg leg)
    {
        var routes = new List<(string Route, string Text)>();
        if (leg.BackupRoute.Length > 0 && leg.BackupRoute != leg.Route)
        {
            routes.Add((leg.BackupRoute, $"Fly the backup route {leg.BackupRoute}"));
        }

        if (leg.Route.Length > 0)
        {
            routes.Add(("", "Fly direct"));
        }

        foreach (var (route, text) in routes)
        {
            yield return new WeekEdit(text, Disruptions.Way).With(leg, leg with { Route = route }, (nameof(Leg.Route), route));
            yield return new WeekEdit(text + " at the best level", Disruptions.Way)
                .With(leg, leg with { Route = route, Level = null, IsLevelAuto = true }, (nameof(Leg.Route), route), (nameof(Leg.Level), "auto"));
        }
    }
}
