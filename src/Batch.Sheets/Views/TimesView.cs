using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The times of a leg; those up to the top of climb belong to the departure's zone, the later ones to the destination's.</summary>
internal sealed record TimesView
{
    [Value("Off blocks")]
    public required ClockTime OffBlocks { get; init; }

    [Value("Takeoff")]
    public required ClockTime Takeoff { get; init; }

    [Value("Top of climb")]
    public required ClockTime TopOfClimb { get; init; }

    [Value("Top of descent")]
    public required ClockTime TopOfDescent { get; init; }

    [Value("Landing")]
    public required ClockTime Landing { get; init; }

    [Value("On blocks")]
    public required ClockTime OnBlocks { get; init; }

    [Value("Off blocks to on blocks")]
    public required Elapsed Block { get; init; }

    [Value("Takeoff to landing")]
    public required Elapsed Air { get; init; }

    public static TimesView Of(LegTimes times, DateTimeZone from, DateTimeZone to) => new()
    {
        OffBlocks = new ClockTime(times.OffBlocks, from),
        Takeoff = new ClockTime(times.Takeoff, from),
        TopOfClimb = new ClockTime(times.TopOfClimb, from),
        TopOfDescent = new ClockTime(times.TopOfDescent, to),
        Landing = new ClockTime(times.Landing, to),
        OnBlocks = new ClockTime(times.OnBlocks, to),
        Block = new Elapsed(times.Block),
        Air = new Elapsed(times.Air),
    };
}
