namespace Batch.Flight.Air.Bulletins;

/// <summary>How much of the sky a layer covers, or what is said instead of layers.</summary>
public enum CloudAmount
{
    /// <summary>Not reported (///).</summary>
    Unknown,

    /// <summary>Sky clear (SKC).</summary>
    SkyClear,

    /// <summary>Nothing detected below 12,000 ft by an automatic station (CLR).</summary>
    Clear,

    /// <summary>No cloud of significance (NSC).</summary>
    NoneSignificant,

    /// <summary>No cloud detected (NCD).</summary>
    NoneDetected,

    /// <summary>1 to 2 eighths (FEW).</summary>
    Few,

    /// <summary>3 to 4 eighths (SCT).</summary>
    Scattered,

    /// <summary>5 to 7 eighths (BKN): a ceiling.</summary>
    Broken,

    /// <summary>8 eighths (OVC): a ceiling.</summary>
    Overcast,

    /// <summary>Sky hidden, vertical visibility given (VV): a ceiling.</summary>
    VerticalVisibility,
}
