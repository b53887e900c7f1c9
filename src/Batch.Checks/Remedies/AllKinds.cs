using Batch.Checks.Remedies.Kinds;

namespace Batch.Checks.Remedies;

/// <summary>Every kind of remedy, least disruptive first.</summary>
internal static class AllKinds
{
    /// <summary>The kinds.</summary>
    public static ImmutableArray<IRemedyKind> List { get; } =
    [
        .. new IRemedyKind[]
        {
            new OtherStation(),
            new OtherSeat(),
            new LessFuel(),
            new MoreFuel(),
            new EarlierFuel(),
            new FiledFlightPlan(),
            new OtherLevel(),
            new OtherRunway(),
            new OtherAlternate(),
            new OtherTakeoffAlternate(),
            new OtherRoute(),
            new OtherTime(),
            new LessGoods(),
            new OtherPilot(),
            new PositioningLeg(),
            new OtherAircraft(),
            new FewerPassengers(),
            new FuelStop(),
        }.OrderBy(kind => kind.Disruption),
    ];
}
