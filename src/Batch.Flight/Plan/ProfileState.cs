namespace Batch.Flight.Plan;

/// <summary>Where a profile has come to.</summary>
internal record struct ProfileState
{
    /// <summary>Segment of the route.</summary>
    public int Segment;

    /// <summary>Distance along the route [NM].</summary>
    public double AlongNm;

    /// <summary>Time since takeoff [h].</summary>
    public double Hours;

    /// <summary>Weight [lb].</summary>
    public double WeightLb;
}
