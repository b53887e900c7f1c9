namespace Batch.Flight.Plan;

/// <summary>A leg made ready, or why it cannot be.</summary>
internal abstract record SetupResult
{
    private SetupResult()
    {
    }

    /// <summary>Ready to be planned.</summary>
    /// <param name="Setup">The leg made ready.</param>
    public sealed record Ready(LegSetup Setup) : SetupResult;

    /// <summary>Cannot be planned.</summary>
    /// <param name="Plan">The unplanned leg.</param>
    public sealed record NotReady(LegPlan.Unplanned Plan) : SetupResult;
}
