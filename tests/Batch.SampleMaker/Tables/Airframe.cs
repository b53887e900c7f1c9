namespace Batch.SampleMaker.Tables;

/// <summary>The few figures from which all tables of an invented type are computed.</summary>
public sealed record Airframe
{
    public required double WingAreaM2 { get; init; }

    public required double ParasiteDrag { get; init; }

    /// <summary>Factor of the lift coefficient squared in the drag coefficient.</summary>
    public required double InducedDrag { get; init; }

    public required double PropellerEfficiency { get; init; }

    /// <summary>Power to which the engines together are limited [hp].</summary>
    public required double FlatPowerHp { get; init; }

    /// <summary>Power that the engines together could give at sea level without that limit [hp].</summary>
    public required double ThermalPowerHp { get; init; }

    /// <summary>How the power falls with density.</summary>
    public required double PowerFall { get; init; }

    /// <summary>Fuel flow at no power at sea level [lb/h].</summary>
    public required double IdleFlow { get; init; }

    /// <summary>Fuel flow per power [lb/h per hp].</summary>
    public required double FlowPerHp { get; init; }

    public required ImmutableArray<(string Name, double PowerShare)> Settings { get; init; }

    public required double ClimbPowerShare { get; init; }

    /// <summary>Indicated climb speed at sea level [kt]; falls by one knot each 1,000 ft.</summary>
    public required double ClimbSpeedKt { get; init; }

    /// <summary>Indicated speed of the descent [kt].</summary>
    public required double DescentSpeedKt { get; init; }

    public required double DescentFtPerMin { get; init; }

    /// <summary>Share of the flat power kept in the descent.</summary>
    public required double DescentPowerShare { get; init; }

    public required double HoldingSpeedKt { get; init; }

    public required int CeilingFt { get; init; }

    public required ImmutableArray<int> WeightsLb { get; init; }

    /// <summary>Weight, in lb, for which the runway figures below are given.</summary>
    public required double RunwayWeightLb { get; init; }

    public required double TakeoffRollFt { get; init; }

    public required double LandingRollFt { get; init; }

    /// <summary>Stalling speed with landing flaps at <see cref="RunwayWeightLb"/> [kt].</summary>
    public required double StallKt { get; init; }
}
