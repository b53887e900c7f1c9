namespace Batch.Sheets.Register;

/// <summary>The look of a state by its word.</summary>
internal static class StateLook
{
    /// <summary>The look.</summary>
    /// <param name="state">Word of a leg's or an answer's state.</param>
    public static CellStyle Of(string state) => state switch
    {
        "fail" or "unplanned" => CellStyle.Fail,
        "caution" => CellStyle.Caution,
        "not checked" => CellStyle.Open,
        _ => CellStyle.Text,
    };
}
