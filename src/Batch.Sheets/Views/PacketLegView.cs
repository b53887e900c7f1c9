using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One leg in the contents of a packet.</summary>
internal sealed record PacketLegView
{
    [Value("Trip and leg number, such as T101/1; the place of the row where they could not be read")]
    public required string Key { get; init; }

    [Value("Name of the place in the packet where the leg begins, for links; nothing where its trip is held back")]
    public required string Anchor { get; init; }

    [Value("Page of the packet on which the leg begins; nothing while it is not known")]
    public int? Page { get; init; }

    [Value("The person's seat: captain or second pilot")]
    public required string Seat { get; init; }

    [Value("Code of who flies with the person; nothing where nobody does")]
    public required string With { get; init; }

    [Value("Registration as in the book")]
    public required string Aircraft { get; init; }

    [Value("Departure as in the book")]
    public required string From { get; init; }

    [Value("Destination as in the book")]
    public required string To { get; init; }

    [Value("Off blocks; nothing where it could not be read")]
    public required ClockTime? OffBlocks { get; init; }

    [Value("On blocks; nothing for a leg that was not planned")]
    public required ClockTime? OnBlocks { get; init; }

    [Value("Off blocks to on blocks; nothing for a leg that was not planned")]
    public required Elapsed? Block { get; init; }

    [Value("Passengers; nothing for a leg that was not planned")]
    public required int? Passengers { get; init; }

    [Value("State")]
    public required StateView State { get; init; }

    [Value("The worst failure or caution, or why it could not be planned; nothing where all passes")]
    public required string Worst { get; init; }

    [Value("Why the leg is flown although a check fails; nothing where nobody decided so")]
    public required string Override { get; init; }

    public static PacketLegView Of(CheckedLeg leg, string trip, string code, OperatorWeek week)
    {
        var board = BoardLegView.Of(leg, week);
        return new PacketLegView
        {
            Key = board.Key,
            Anchor = trip.Length == 0 ? "" : LegAnchor.Of(trip, leg.Plan.Key),
            Seat = Seats.Named(leg.Plan, code),
            With = LegPeople.Crew(leg.Plan).FirstOrDefault(seat => !Seats.Same(seat, code)) ?? "",
            Aircraft = LegPeople.Aircraft(leg.Plan),
            From = board.From,
            To = board.To,
            OffBlocks = board.OffBlocks,
            OnBlocks = board.OnBlocks,
            Block = leg.Plan is LegPlan.Planned planned ? new Elapsed(planned.Times.Block) : null,
            Passengers = board.Passengers,
            State = board.State,
            Worst = board.Worst,
            Override = leg.Override,
        };
    }
}
