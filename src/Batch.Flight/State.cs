namespace Batch.Flight;

/// <summary>How serious a problem or a finding is, mildest first.</summary>
public enum State
{
    /// <summary>Worth knowing; asks for nothing.</summary>
    Note,

    /// <summary>Wants a decision by a person; does not by itself stop the leg.</summary>
    Caution,

    /// <summary>The leg as written must not be flown, or the value could not be used.</summary>
    Fail,
}
