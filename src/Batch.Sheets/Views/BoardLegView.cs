using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
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

    [Value("State")]
    public required StateView State { get; init; }

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

    [Value("Passengers; nothing for a leg that was not planned")]
    public required int? Passengers { get; init; }

    [Value("Name of the sheet's file without its ending")]
    public required string File { get; init; }

    [Value("The worst failure or caution, or why it could not be planned; nothing where all passes")]
    public required string Worst { get; init; }

    public static BoardLegView Of(CheckedLeg leg, OperatorWeek week)
    {
        var view = LegView.Names(leg.Plan);
        var planned = leg.Plan as LegPlan.Planned;
        var zone = week.Airports.GetValueOrDefault(LegWay.From(leg.Plan))?.Zone ?? DateTimeZone.Utc;
        return new BoardLegView
        {
            Trip = leg.Plan.Key.Trip,
            Number = leg.Plan.Key.Number,
            Key = LegWay.Key(leg.Plan),
            State = StateView.Of(leg.State),
            From = LegWay.From(leg.Plan),
            To = LegWay.To(leg.Plan),
            OffBlocks = view.Read is { } read ? new ClockTime(read.OffBlocks, zone) : null,
            OnBlocks = planned is null ? null : new ClockTime(planned.Times.OnBlocks, planned.To.Zone),
            Crew = string.Join(", ", new[] { view.Read?.Captain ?? view.Broken?.Captain ?? "", view.Read?.SecondPilot ?? view.Broken?.SecondPilot ?? "" }.Where(code => code.Length > 0)),
            Passengers = planned?.Load.Passengers,
            File = SheetName.Of(leg.Plan.Key.Trip),
            Worst = leg.Plan is LegPlan.Unplanned none ? none.Why : leg.Shown.FirstOrDefault(finding => finding.Verdict is Verdict.Fail or Verdict.Caution)?.Title ?? "",
        };
    }
}
