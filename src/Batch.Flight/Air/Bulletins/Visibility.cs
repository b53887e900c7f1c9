namespace Batch.Flight.Air.Bulletins;

/// <summary>A prevailing or least visibility.</summary>
public sealed record Visibility
{
    /// <summary>Metres in a statute mile [m/SM], exact (international yard and pound agreement 1959).</summary>
    public const double MetresPerStatuteMile = 1609.344;

    /// <summary>The group as written.</summary>
    public required string Text { get; init; }

    /// <summary>The visibility [m].</summary>
    public required double Metres { get; init; }

    /// <summary>It was reported in statute miles.</summary>
    public bool IsInMiles { get; init; }

    /// <summary>How the number stands to the true visibility.</summary>
    public VisibilityLimit Limit { get; init; }

    /// <summary>The station cannot tell directions apart (NDV).</summary>
    public bool NoDirectionalVariation { get; init; }

    /// <summary>The visibility in statute miles [SM].</summary>
    public double StatuteMiles => Metres / MetresPerStatuteMile;
}
