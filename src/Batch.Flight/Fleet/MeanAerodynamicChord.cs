namespace Batch.Flight.Fleet;

/// <summary>
/// The mean aerodynamic chord of a wing, in percent of which some manuals give centres of gravity: 0 % at its leading edge, 100 % at its trailing edge.
/// </summary>
/// <param name="LeadingEdge">Arm of the leading edge [in] aft of the datum.</param>
/// <param name="Length">Length of the chord [in], above zero.</param>
public readonly record struct MeanAerodynamicChord(Inches LeadingEdge, Inches Length)
{
    /// <summary>An arm in percent of the chord; negative ahead of the leading edge. FAA-H-8083-1B, chapter 3.</summary>
    /// <param name="arm">Arm [in] aft of the datum.</param>
    public double PercentAt(Inches arm) => (arm - LeadingEdge) / Length * 100;

    /// <summary>The arm at a percentage of the chord [in] aft of the datum.</summary>
    /// <param name="percent">Percentage [%].</param>
    public Inches ArmAt(double percent) => LeadingEdge + (Length * (percent / 100));
}
