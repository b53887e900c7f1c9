namespace Batch.Flight.Air.Bulletins;

/// <summary>The visual range along a runway.</summary>
public sealed record RunwayVisualRange
{
    /// <summary>The runway, such as 17 or 23L.</summary>
    public required string Runway { get; init; }

    /// <summary>The range, or the least of a variation, in the unit reported.</summary>
    public required int Value { get; init; }

    /// <summary>How the value stands to the true one.</summary>
    public VisibilityLimit Limit { get; init; }

    /// <summary>The greatest of a variation; null where there is none.</summary>
    public int? UpTo { get; init; }

    /// <summary>How the greatest stands to the true one.</summary>
    public VisibilityLimit UpToLimit { get; init; }

    /// <summary>The unit is feet, else metres.</summary>
    public bool IsInFeet { get; init; }

    /// <summary>The tendency: U rising, D falling, N none; empty where not reported.</summary>
    public string Tendency { get; init; } = "";
}
