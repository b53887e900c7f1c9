using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One duty of a pilot on the time line, with the rest before it.</summary>
internal sealed record LineDutyView
{
    [Value("Where it begins [% of the line]")]
    public required double Place { get; init; }

    [Value("How wide it is [% of the line]")]
    public required double Width { get; init; }

    [Value("Report")]
    public required ClockTime Report { get; init; }

    [Value("Release")]
    public required ClockTime Release { get; init; }

    [Value("Report to release")]
    public required Elapsed Length { get; init; }

    [Value("Flight time, block to block")]
    public required Elapsed FlightTime { get; init; }

    [Value("Rest before; nothing where it is not known")]
    public required Elapsed? Rest { get; init; }

    [Value("Where the rest before begins [% of the line]")]
    public required double RestPlace { get; init; }

    [Value("How wide the rest before is [% of the line]; 0 where it is not known")]
    public required double RestWidth { get; init; }
}
