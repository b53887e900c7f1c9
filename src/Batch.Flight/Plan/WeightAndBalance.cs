namespace Batch.Flight.Plan;

/// <summary>A weight with its moment about the datum.</summary>
/// <param name="Weight">Weight [lb].</param>
/// <param name="Moment">Moment [lb·in].</param>
public readonly record struct WeightAndBalance(Pounds Weight, PoundInches Moment)
{
    /// <summary>Centre of gravity [in] aft of the datum.</summary>
    public Inches CentreOfGravity => Moment / Weight;

    /// <summary>With a weight added at an arm; negative to take it away.</summary>
    /// <param name="weight">Weight [lb].</param>
    /// <param name="arm">Arm [in].</param>
    public WeightAndBalance With(Pounds weight, Inches arm) => new(Weight + weight, Moment + (weight * arm));
}
