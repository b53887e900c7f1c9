namespace Batch.Flight.Air.Bulletins;

/// <summary>One layer of cloud, or a word that stands for the whole sky.</summary>
/// <param name="Amount">How much.</param>
/// <param name="Height">Height of its base above the aerodrome [ft]; null where not reported or where no layer is meant.</param>
/// <param name="Kind">CB or TCU; empty for other cloud.</param>
public sealed record CloudLayer(CloudAmount Amount, Feet? Height, string Kind)
{
    /// <summary>The layer is a ceiling: broken, overcast, or a hidden sky.</summary>
    public bool IsCeiling => Amount is CloudAmount.Broken or CloudAmount.Overcast or CloudAmount.VerticalVisibility;

    /// <summary>The code word of the amount.</summary>
    public string Word => Amount switch
    {
        CloudAmount.Unknown => "///",
        CloudAmount.SkyClear => "SKC",
        CloudAmount.Clear => "CLR",
        CloudAmount.NoneSignificant => "NSC",
        CloudAmount.NoneDetected => "NCD",
        CloudAmount.Few => "FEW",
        CloudAmount.Scattered => "SCT",
        CloudAmount.Broken => "BKN",
        CloudAmount.Overcast => "OVC",
        CloudAmount.VerticalVisibility => "VV",
    };
}
