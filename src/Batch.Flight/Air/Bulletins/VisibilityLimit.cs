namespace Batch.Flight.Air.Bulletins;

/// <summary>How a reported visibility stands to the true one.</summary>
public enum VisibilityLimit
{
    /// <summary>The visibility is the one given.</summary>
    Exact,

    /// <summary>It is that or more: 9999 is 10 km or more.</summary>
    AtLeast,

    /// <summary>It is more: P6SM.</summary>
    MoreThan,

    /// <summary>It is less: M1/4SM.</summary>
    LessThan,
}
