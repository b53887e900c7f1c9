namespace Batch.SampleMaker.Week;

/// <summary>One trip with its legs, passengers and cargo.</summary>
public sealed record OneTrip
{
    public required string Name { get; init; }

    public required ImmutableArray<OneLeg> Legs { get; init; }

    public ImmutableArray<Party> Parties { get; init; } = [];

    public ImmutableArray<Freight> Freight { get; init; } = [];
}
