namespace Batch.Checks;

/// <summary>The answer of one check on one leg, mildest first.</summary>
public enum Verdict
{
    /// <summary>The condition is met.</summary>
    Pass,

    /// <summary>The rule does not apply to this leg.</summary>
    NotApplicable,

    /// <summary>An input is missing; never a pass.</summary>
    NotChecked,

    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Wants a decision.</summary>
    Caution,

    /// <summary>The leg must not be flown so.</summary>
    Fail,
}
