namespace Batch.Flight.Plan;

/// <summary>How a round of the fuel iteration comes to its levels.</summary>
internal enum LevelChoice
{
    /// <summary>
    /// At the level where the leg was flown with other fuel, else by an estimate: the weight is a first guess, and a later round chooses by flying.
    /// </summary>
    Estimated,

    /// <summary>By flying those that may be the thriftiest.</summary>
    Flown,

    /// <summary>As in the round before.</summary>
    Kept,
}
