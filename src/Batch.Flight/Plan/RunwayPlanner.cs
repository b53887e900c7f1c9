namespace Batch.Flight.Plan;

/// <summary>Takeoff and landing distances, the best runway, and how much room there is.</summary>
public static class RunwayPlanner
{
    /// <summary>
    /// The takeoff: distance over the obstacle against the takeoff distance available, ground roll against the takeoff run available, and the accelerate-stop
    /// distance, where tabled, against that available. Without a named runway the one with the most headwind among those that fit is taken, then the one with
    /// the most room; where none fits, the one that lacks least.
    /// </summary>
    /// <param name="request">The request.</param>
    public static RunwayResult Takeoff(RunwayRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Plan(request, RunwayCase.Takeoff(request));
    }

    /// <summary>The landing: distance over the obstacle against the landing distance available; the runway is chosen as for <see cref="Takeoff"/>.</summary>
    /// <param name="request">The request.</param>
    public static RunwayResult Landing(RunwayRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Plan(request, RunwayCase.Landing(request));
    }

    private static RunwayResult Plan(RunwayRequest request, RunwayCase runwayCase)
    {
        if (runwayCase.Tables.IsEmpty) return new RunwayResult.NotComputed($"The book gives no {runwayCase.Word} table of {request.Type.Name}.");
        var choice = RunwayChoice.Of(request);
        if (choice.Why is { } why) return new RunwayResult.NotComputed(PlainSentence.Of(why));

        var results = choice.Runways.Select(runway => RunwayTrial.On(request, runwayCase, runway, choice.Assumptions)).ToArray();
        var uses = results.OfType<RunwayResult.Computed>().Select(computed => computed.Use).ToArray();
        if (uses.Length == 0) return results[0];
        var fitting = uses.Where(use => use.Fits).ToArray();
        var best = fitting.Length > 0
            ? fitting.OrderByDescending(use => Math.Round(use.Headwind.Value, 1)).ThenByDescending(use => use.Margin).First()
            : uses.OrderByDescending(use => use.Margin).First();
        return new RunwayResult.Computed(best);
    }
}
