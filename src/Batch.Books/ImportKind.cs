namespace Batch.Books;

/// <summary>What is taken from an open-data list into the operator book.</summary>
public enum ImportKind
{
    /// <summary>Airports, with their runways where a list of them is given.</summary>
    Airports,

    /// <summary>Named points.</summary>
    Fixes,

    /// <summary>Airways.</summary>
    Airways,
}
