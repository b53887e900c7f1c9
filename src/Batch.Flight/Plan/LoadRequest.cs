using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>What a load sheet is computed from.</summary>
public sealed record LoadRequest
{
    /// <summary>The aircraft.</summary>
    public required Aircraft Aircraft { get; init; }

    /// <summary>Its type.</summary>
    public required AircraftType Type { get; init; }

    /// <summary>Captain; null where the code is not in the Crew sheet. One pilot is always aboard.</summary>
    public CrewMember? Captain { get; init; }

    /// <summary>Second pilot; null where there is none or the code is not in the Crew sheet.</summary>
    public CrewMember? SecondPilot { get; init; }

    /// <summary>Whether a second pilot is named by the leg although <see cref="SecondPilot"/> is null.</summary>
    public bool HasSecondPilot { get; init; }

    /// <summary>Passengers of this leg in manifest order.</summary>
    public ImmutableArray<ManifestLine> Passengers { get; init; } = [];

    /// <summary>Cargo of this leg in book order.</summary>
    public ImmutableArray<CargoLine> Cargo { get; init; } = [];

    /// <summary>Weights taken where none is stated.</summary>
    public required StandardWeights Weights { get; init; }

    /// <summary>Fuel at off blocks; not looked at by <see cref="Loading.Place"/>.</summary>
    public Pounds Block { get; init; }

    /// <summary>Fuel burned before takeoff; not looked at by <see cref="Loading.Place"/>.</summary>
    public Pounds Taxi { get; init; }

    /// <summary>Fuel burned from takeoff to landing; not looked at by <see cref="Loading.Place"/>.</summary>
    public Pounds Trip { get; init; }
}
