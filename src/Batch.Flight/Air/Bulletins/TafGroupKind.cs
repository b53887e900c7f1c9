namespace Batch.Flight.Air.Bulletins;

/// <summary>What a group of a forecast does.</summary>
public enum TafGroupKind
{
    /// <summary>The conditions at the start.</summary>
    Base,

    /// <summary>From a time on everything is as given (FM).</summary>
    From,

    /// <summary>The elements given change gradually during the period and stay (BECMG).</summary>
    Becoming,

    /// <summary>For less than an hour at a time and less than half of the period (TEMPO).</summary>
    Temporary,

    /// <summary>For less than half an hour at a time (INTER, Australia).</summary>
    Intermittent,

    /// <summary>With a probability, without one of the words above (PROB30, PROB40).</summary>
    Probable,
}
