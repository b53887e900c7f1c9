using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Register;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One leg on the week board.</summary>
internal sealed record BoardLegView
{
    [Value("Trip")]
    public required string Trip { get; init; }

    [Value("Number of the leg")]
    public required int Number { get; init; }

    [Value("Trip and leg number, such as T101/1; the place of the row where they could not be read")]
    public required string Key { get; init; }

    [Value("The name of its place on the board, for links: # and this")]
    public required string Anchor { get; init; }

    [Value("State")]
    public required StateView State { get; init; }

    [Value("Registration as in the book; nothing where it could not be read")]
    public required string Aircraft { get; init; }

    [Value("Local date of off blocks, such as 2026-12-07; nothing where it could not be read")]
    public required string Date { get; init; }

    [Value("Departure as in the book")]
    public required string From { get; init; }

    [Value("Destination as in the book")]
    public required string To { get; init; }

    [Value("Off blocks; nothing where it could not be read")]
    public required ClockTime? OffBlocks { get; init; }

    [Value("On blocks; nothing for a leg that was not planned")]
    public required ClockTime? OnBlocks { get; init; }

    [Value("Codes of the crew, such as ANA, BEN")]
    public required string Crew { get; init; }

    [Value("The same one by one")]
    public required ImmutableArray<string> Codes { get; init; }

    [Value("Passengers; nothing for a leg that was not planned")]
    public required int? Passengers { get; init; }

    [Value("Name of the sheet's file without its ending")]
    public required string File { get; init; }

    [Value("The worst failure or caution, or why it could not be planned; nothing where all passes")]
    public required string Worst { get; init; }

    [Value("Its failures and cautions, worst first; why it could not be planned")]
    public required ImmutableArray<FindingView> Findings { get; init; }

    public static BoardLegView Of(CheckedLeg leg, OperatorWeek week)
    {
        var view = LegView.Names(leg.Plan);
        var planned = leg.Plan as LegPlan.Planned;
        var zone = week.Airports.GetValueOrDefault(LegWay.From(leg.Plan))?.Zone ?? DateTimeZone.Utc;
        var codes = LegPeople.Crew(leg.Plan);
        return new BoardLegView
        {
            Trip = leg.Plan.Key.Trip,
            Number = leg.Plan.Key.Number,
            Key = LegWay.Key(leg.Plan),
            Anchor = LegWay.Anchor(leg.Plan),
            State = StateView.Of(leg.State),
            Aircraft = LegPeople.Aircraft(leg.Plan),
            Date = (view.Read?.OffBlocksLocal.Date ?? view.Broken?.Date) is { } date ? NodaTime.Text.LocalDatePattern.Iso.Format(date) : "",
            From = LegWay.From(leg.Plan),
            To = LegWay.To(leg.Plan),
            OffBlocks = view.Read is { } read ? new ClockTime(read.OffBlocks, zone) : null,
            OnBlocks = planned is null ? null : new ClockTime(planned.Times.OnBlocks, planned.To.Zone),
            Crew = string.Join(", ", codes),
            Codes = codes,
            Passengers = planned?.Load.Passengers,
            File = SheetName.Of(leg.Plan.Key.Trip),
            Worst = leg.Plan is LegPlan.Unplanned none
                ? none.Why
                : leg.Shown.FirstOrDefault(finding => finding.Verdict is Verdict.Fail or Verdict.Caution)?.Title ?? "",
            Findings = [.. RegisterRows.Of(leg).Select(row => row.Finding).Where(finding => finding.Verdict is Verdict.Fail or Verdict.Caution)
                .Select(finding => FindingView.Of(leg, finding))],
        };
    }
}
