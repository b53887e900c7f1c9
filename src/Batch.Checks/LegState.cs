namespace Batch.Checks;

/// <summary>The state of a leg: the worst of its findings, or unplanned.</summary>
public enum LegState
{
    /// <summary>No caution and no failure.</summary>
    Pass,

    /// <summary>At least one caution.</summary>
    Caution,

    /// <summary>At least one failure.</summary>
    Fail,

    /// <summary>Could not be planned.</summary>
    Unplanned,
}
