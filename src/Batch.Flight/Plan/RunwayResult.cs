namespace Batch.Flight.Plan;

/// <summary>A computed takeoff or landing, or why there is none.</summary>
public abstract record RunwayResult
{
    private RunwayResult()
    {
    }

    /// <summary>Computed.</summary>
    /// <param name="Use">The runway and its distances.</param>
    public sealed record Computed(RunwayUse Use) : RunwayResult;

    /// <summary>Not computed: no runway, no table, or outside it.</summary>
    /// <param name="Why">One sentence saying what is missing.</param>
    public sealed record NotComputed(string Why) : RunwayResult;
}
