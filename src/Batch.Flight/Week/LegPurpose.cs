namespace Batch.Flight.Week;

/// <summary>Why a leg is flown; some rules hold only when passengers are carried for hire.</summary>
public enum LegPurpose
{
    /// <summary>Passengers or cargo for hire.</summary>
    Charter,

    /// <summary>Positioning without passengers for hire.</summary>
    Ferry,

    /// <summary>Training or checking.</summary>
    Training,
}
