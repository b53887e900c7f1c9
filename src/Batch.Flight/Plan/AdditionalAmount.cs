namespace Batch.Flight.Plan;

/// <summary>The additional fuel of one round.</summary>
/// <param name="Amount">The greatest shortfall, zero or more.</param>
/// <param name="Points">The worst point of each failure reckoned.</param>
/// <param name="Assumptions">What could not be reckoned or was taken.</param>
/// <param name="Notes">Why a failure asks for none.</param>
internal sealed record AdditionalAmount(Pounds Amount, ImmutableArray<CriticalPoint> Points, ImmutableArray<string> Assumptions, ImmutableArray<string> Notes)
{
    /// <summary>None, and nothing to say.</summary>
    public static AdditionalAmount None { get; } = new(Pounds.Zero, [], [], []);
}
