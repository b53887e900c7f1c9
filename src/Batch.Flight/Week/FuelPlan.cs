namespace Batch.Flight.Week;

/// <summary>How much fuel the dispatcher asks for.</summary>
public abstract record FuelPlan
{
    private FuelPlan()
    {
    }

    /// <summary>What the rules require, plus an extra.</summary>
    /// <param name="Extra">Discretionary fuel on top [lb], zero or more.</param>
    public sealed record Minimum(Pounds Extra) : FuelPlan;

    /// <summary>Full tanks; what the weights allow is for the checks to say.</summary>
    public sealed record Full : FuelPlan;

    /// <summary>Fuel for later legs bought here where that is cheaper.</summary>
    public sealed record Carry : FuelPlan;

    /// <summary>A fixed amount aboard at off blocks.</summary>
    /// <param name="Block">Fuel aboard at off blocks [lb].</param>
    public sealed record Amount(Pounds Block) : FuelPlan;
}
