using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>Report and release of the Operator sheet, without which a duty is reckoned too short: from off blocks to on blocks.</summary>
internal static class ReportAndRelease
{
    /// <summary>An answer on a duty or a rest; a pass where report or release is not given becomes "not checked".</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling.</param>
    /// <param name="answer">The answer for duties without what is missing.</param>
    public static Finding Known(LegUnderCheck leg, Ruling ruling, Finding answer) =>
        answer.Verdict == Verdict.Pass && Missing(leg) is { } missing
            ? ruling.NotChecked($"{missing}; without it: {answer.Text.TrimEnd('.')}", [.. answer.Cells])
            : answer;

    /// <summary>The same for an answer that does not depend on the release.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling.</param>
    /// <param name="answer">The answer for duties that begin off blocks.</param>
    public static Finding ReportKnown(LegUnderCheck leg, Ruling ruling, Finding answer) => leg.Operator.Report is null ? Known(leg, ruling, answer) : answer;

    private static string? Missing(LegUnderCheck leg) => (leg.Operator.Report, leg.Operator.Release) switch
    {
        (null, null) => "the times for report and release of a duty are not given (Operator sheet, Report and Release)",
        (null, _) => "the time for the report before a duty is not given (Operator sheet, Report)",
        (_, null) => "the time for the release after a duty is not given (Operator sheet, Release)",
        _ => null,
    };
}
