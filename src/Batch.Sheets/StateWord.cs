using Batch.Checks;

namespace Batch.Sheets;

/// <summary>The fixed words for states in files read by programs.</summary>
internal static class StateWord
{
    public static string Of(State state) => state switch
    {
        State.Note => "note",
        State.Caution => "caution",
        State.Fail => "fail",
    };

    public static string Of(LegState state) => state switch
    {
        LegState.Pass => "pass",
        LegState.Caution => "caution",
        LegState.Fail => "fail",
        LegState.Unplanned => "unplanned",
    };

    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => "pass",
        Verdict.NotApplicable => "not applicable",
        Verdict.NotChecked => "not checked",
        Verdict.Note => "note",
        Verdict.Caution => "caution",
        Verdict.Fail => "fail",
    };
}
