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

    /// <summary>With a weight moved from one arm to another: the weight stays, the moment changes by weight times distance. FAA-H-8083-1B, chapter 2.</summary>
    /// <param name="weight">Weight moved [lb].</param>
    /// <param name="from">Arm it stood at [in].</param>
    /// <param name="to">Arm it is moved to [in].</param>
    public WeightAndBalance Moved(Pounds weight, Inches from, Inches to) => this with { Moment = Moment + (weight * (to - from)) };
}
