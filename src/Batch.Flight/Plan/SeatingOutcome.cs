namespace Batch.Flight.Plan;

/// <summary>Weights and centres of gravity with passengers seated in one way.</summary>
/// <param name="ZeroFuel">With no fuel.</param>
/// <param name="Takeoff">At takeoff.</param>
/// <param name="Landing">On landing.</param>
/// <param name="Tests">Envelope tests; empty where the type has no envelope.</param>
public sealed record SeatingOutcome(WeightAndBalance ZeroFuel, WeightAndBalance Takeoff, WeightAndBalance Landing, ImmutableArray<EnvelopeTest> Tests)
{
    /// <summary>Whether every test is passed.</summary>
    public bool IsInside => Tests.All(test => test.IsInside);
}
