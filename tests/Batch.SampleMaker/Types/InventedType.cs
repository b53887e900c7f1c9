using Batch.SampleMaker.Tables;

namespace Batch.SampleMaker.Types;

/// <summary>An invented aircraft type with all that the operator book says of it.</summary>
public sealed record InventedType
{
    public required string Name { get; init; }

    public required string Description { get; init; }

    public required string Engine { get; init; }

    public required int Engines { get; init; }

    public required string Fuel { get; init; }

    public required double DensityLbPerUsg { get; init; }

    public required int Seats { get; init; }

    public required bool Pressurised { get; init; }

    public required int RampLb { get; init; }

    public required int TakeoffLb { get; init; }

    public required int LandingLb { get; init; }

    public required int ZeroFuelLb { get; init; }

    public required int UsableFuelLb { get; init; }

    public required int TaxiFuelLb { get; init; }

    public required int ApproachFuelLb { get; init; }

    public required int ApproachMin { get; init; }

    public required double GlideRatio { get; init; }

    public required string ApproachCategory { get; init; }

    public required string Equipment { get; init; }

    public required string TakeoffFlap { get; init; }

    public required string LandingFlap { get; init; }

    public required Airframe Airframe { get; init; }

    public required ImmutableArray<LoadPlace> Places { get; init; }

    /// <summary>Fuel [lb] and its arm [in].</summary>
    public required ImmutableArray<(int FuelLb, double ArmIn)> FuelArms { get; init; }

    /// <summary>Case, weight [lb], arm [in], vertices in order.</summary>
    public required ImmutableArray<(string Case, int WeightLb, double ArmIn)> Envelope { get; init; }
}
