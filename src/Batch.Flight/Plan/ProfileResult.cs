namespace Batch.Flight.Plan;

/// <summary>A profile, or why there is none.</summary>
public abstract record ProfileResult
{
    private ProfileResult()
    {
    }

    /// <summary>The route can be flown.</summary>
    /// <param name="Profile">How.</param>
    public sealed record Flown(FlightProfile Profile) : ProfileResult;

    /// <summary>The route is too short for the level: climb and descent leave less than two minutes of cruise.</summary>
    /// <param name="CruiseMinutes">Cruise that would be left [min], negative when climb and descent overlap.</param>
    public sealed record TooShort(double CruiseMinutes) : ProfileResult;

    /// <summary>The route cannot be flown so: outside a table, or the wind is too strong.</summary>
    /// <param name="Why">One sentence.</param>
    /// <param name="Where">Place, such as <c>12 NM past NORRA at FL160</c>; empty where it has none.</param>
    public sealed record NotFlyable(string Why, string Where) : ProfileResult
    {
        /// <summary>Whether it is the weight that a table does not hold; no other level or route would help.</summary>
        public bool IsByWeight { get; init; }
    }
}
