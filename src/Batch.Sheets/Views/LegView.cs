using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One leg of a trip sheet, planned or not.</summary>
internal sealed record LegView
{
    [Value("Name of its trip")]
    public required string Trip { get; init; }

    [Value("Number of the leg in the trip; 0 where it could not be read")]
    public required int Number { get; init; }

    [Value("Row of the Legs sheet, for a leg whose number could not be read; nothing elsewhere")]
    public required int? Row { get; init; }

    [Value("What tells the leg from others of its trip in names of places, such as 2 or row-5")]
    public required string Mark { get; init; }

    [Value("State")]
    public required StateView State { get; init; }

    [Value("Registration of the aircraft as in the book")]
    public required string Aircraft { get; init; }

    [Value("Departure")]
    public required AirportView From { get; init; }

    [Value("Destination")]
    public required AirportView To { get; init; }

    [Value("Local date of off blocks; nothing where it could not be read")]
    public required string Date { get; init; }

    [Value("Off blocks; nothing where it could not be read")]
    public required ClockTime? OffBlocks { get; init; }

    [Value("Captain")]
    public required PersonView? Captain { get; init; }

    [Value("Second pilot; nothing where there is none")]
    public required PersonView? SecondPilot { get; init; }

    [Value("Remarks as in the book")]
    public required string Remarks { get; init; }

    [Value("Why the leg is flown although a check fails, as written by the person who decided it; nothing where nobody did or nothing fails")]
    public required string Override { get; init; }

    [Value("Columns of your own on the Legs sheet")]
    public required ImmutableArray<NamedTextView> Extra { get; init; }

    [Value("The figures; nothing for a leg that could not be planned")]
    public required PlanView? Plan { get; init; }

    [Value("Why there are no figures; nothing for a leg that was planned")]
    public required UnplannedView? Unplanned { get; init; }

    [Value("Failures, cautions, notes and what could not be checked, worst first")]
    public required ImmutableArray<FindingView> Findings { get; init; }

    [Value("How many checks passed")]
    public required int Passed { get; init; }

    [Value("What could not be read of this leg or of a row that it depends on")]
    public required ImmutableArray<ProblemView> Problems { get; init; }

    public static LegView Of(CheckedLeg leg, OperatorWeek week)
    {
        var (read, broken) = Names(leg.Plan);
        var from = LegWay.From(leg.Plan);
        return new LegView
        {
            Trip = leg.Plan.Key.Trip,
            Number = leg.Plan.Key.Number,
            Row = leg.Plan.Key.Row > 0 ? leg.Plan.Key.Row : null,
            Mark = LegAnchor.Mark(leg.Plan.Key),
            State = StateView.Of(leg.State),
            Aircraft = read?.Aircraft ?? broken?.Aircraft ?? "",
            From = Place(from, week),
            To = Place(LegWay.To(leg.Plan), week),
            Date = (read?.OffBlocksLocal.Date ?? broken?.Date) is { } date ? NodaTime.Text.LocalDatePattern.Iso.Format(date) : "",
            OffBlocks = read is null ? null : new ClockTime(read.OffBlocks, week.Airports.GetValueOrDefault(from)?.Zone ?? DateTimeZone.Utc),
            Captain = Person(read?.Captain ?? broken?.Captain, week),
            SecondPilot = Person(read?.SecondPilot ?? broken?.SecondPilot, week),
            Remarks = read?.Remarks ?? "",
            Override = leg.Override,
            Extra = read is null ? [] : [.. read.Extra.Select(column => new NamedTextView { Name = column.Key, Text = column.Value })],
            Plan = leg.Plan is LegPlan.Planned plan ? PlanView.Of(plan, week) : null,
            Unplanned = leg.Plan is LegPlan.Unplanned none ? UnplannedView.Of(none) : null,
            Findings = [.. leg.Shown.Select(finding => FindingView.Of(leg, finding))],
            Passed = leg.Findings.Count(finding => finding.Verdict == Verdict.Pass),
            Problems = [.. (read?.Doubts ?? broken?.Problems ?? []).Select(ProblemView.Of)],
        };
    }

    /// <summary>The row of a leg as read, or as far as it could be read.</summary>
    public static (Leg? Read, BrokenLeg? Broken) Names(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => (planned.Leg, null),
        LegPlan.Unplanned unplanned => (unplanned.Leg, unplanned.Broken),
        _ => (null, null),
    };

    private static AirportView Place(string ident, OperatorWeek week) =>
        week.Airports.TryGetValue(ident, out var known) ? AirportView.Of(known) : AirportView.Named(ident);

    private static PersonView? Person(string? code, OperatorWeek week) => PersonView.Of(code ?? "", week.Crew.GetValueOrDefault(code ?? ""));
}
