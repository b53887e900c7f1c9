using Batch.Checks;

namespace Batch.Cli.Pipeline;

/// <summary>Exit statuses of the program.</summary>
public static class ExitStatus
{
    /// <summary>Every leg passes or has cautions only.</summary>
    public const int AllPass = 0;

    /// <summary>Some leg fails or is unplanned.</summary>
    public const int SomeFail = 1;

    /// <summary>The input could not be used, or holds no leg.</summary>
    public const int BadInput = 2;

    /// <summary>A fault of the program, or something of a run could not be written.</summary>
    public const int ProgramFault = 3;

    /// <summary>The status of a checked week.</summary>
    /// <param name="week">The week.</param>
    /// <param name="faults">Faults of the program.</param>
    public static int Of(CheckedWeek week, IReadOnlyCollection<Fault> faults) =>
        faults.Count > 0 ? ProgramFault
        : week.Legs.IsEmpty ? BadInput
        : week.Legs.Any(leg => leg.State is LegState.Fail or LegState.Unplanned) ? SomeFail
        : AllPass;

    /// <summary>The status of a run: one that lacks a sheet must not look like a whole one to whatever called it.</summary>
    /// <param name="report">The run.</param>
    public static int Of(RunReport report) => report.NotWritten.IsEmpty ? Of(report.Week.Week, report.Week.Faults) : ProgramFault;
}
