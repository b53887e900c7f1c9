using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The load of a leg. No names: those are in the manifest.</summary>
internal sealed record LoadView
{
    [Value("Pilots aboard")]
    public required int Pilots { get; init; }

    [Value("Passengers aboard, infants included")]
    public required int Passengers { get; init; }

    [Value("Occupants as the loading card counts them")]
    public required int Occupants { get; init; }

    [Value("Weight of the occupants")]
    public required Quantity OccupantWeight { get; init; }

    [Value("Weight of bags and cargo")]
    public required Quantity Baggage { get; init; }

    [Value("Weight of passengers, bags and cargo")]
    public required Quantity Payload { get; init; }

    [Value("Payload that can still be added; negative when over; nothing where no limit is known")]
    public required Quantity? PayloadSpare { get; init; }

    [Value("The limit that binds the payload")]
    public required string PayloadSpareBoundBy { get; init; }

    [Value("Persons of two years or more without a seat")]
    public required int WithoutSeat { get; init; }

    [Value("Bags or cargo without a station; nothing where all have one")]
    public required Quantity? WithoutStation { get; init; }

    [Value("Whether moments, and so the centre of gravity, are known")]
    public required bool HasMoments { get; init; }

    [Value("Basic empty weight, occupants, bags, fuel: what adds up to the takeoff weight, with limits and centre of gravity")]
    public required ImmutableArray<WeightView> Weights { get; init; }

    [Value("Load by station")]
    public required ImmutableArray<StationView> Stations { get; init; }

    [Value("The least margin of the centre of gravity in all tests; negative outside; nothing where none was made")]
    public required Quantity? LeastArmMargin { get; init; }

    [Value("Tests of the centre of gravity against the envelopes")]
    public required ImmutableArray<EnvelopeTestView> Tests { get; init; }

    [Value("What the centre of gravity may become if passengers sit elsewhere; nothing where nobody can")]
    public required SpreadView? Spread { get; init; }

    public static LoadView Of(LegPlan.Planned plan)
    {
        var load = plan.Load;
        return new LoadView
        {
            Pilots = load.Pilots,
            Passengers = load.Passengers,
            Occupants = load.Occupants,
            OccupantWeight = Quantity.Of(load.OccupantWeight),
            Baggage = Quantity.Of(load.Baggage),
            Payload = Quantity.Of(load.Payload),
            PayloadSpare = WeightView.Spare(plan),
            PayloadSpareBoundBy = plan.PayloadSpareBoundBy,
            WithoutSeat = load.WithoutSeat,
            WithoutStation = load.WithoutStation > Pounds.Zero ? Quantity.Of(load.WithoutStation, RoundingWay.Up) : null,
            HasMoments = load.HasMoments,
            Weights = WeightView.Of(plan),
            Stations = StationView.All(load),
            LeastArmMargin = load.Tests.IsEmpty ? null : (Quantity.Of(load.Tests.Min(test => test.ArmMargin)) with { Rounding = RoundingWay.Down }).Signed(),
            Tests = [.. load.Tests.Select(EnvelopeTestView.Of)],
            Spread = SpreadView.Of(load.Spread),
        };
    }
}
