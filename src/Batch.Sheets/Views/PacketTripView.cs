using Batch.Checks;
using Batch.Flight.Week;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One trip in the contents of a packet.</summary>
internal sealed record PacketTripView
{
    [Value("Name of the trip")]
    public required string Trip { get; init; }

    [Value("State of the trip: the worst of all its legs")]
    public required StateView State { get; init; }

    [Value("Name of the place in the packet where its sheet begins, for links")]
    public required string Anchor { get; init; }

    [Value("Page of the packet on which its sheet begins; nothing while it is not known")]
    public int? Page { get; init; }

    [Value("How many legs of the trip others fly")]
    public required int LegsOfOthers { get; init; }

    [Value("The person's legs, in order of time")]
    public required ImmutableArray<PacketLegView> Legs { get; init; }

    public static PacketTripView Of(TripModel trip, IEnumerable<CheckedLeg> own, string code, OperatorWeek week)
    {
        ImmutableArray<PacketLegView> legs = [.. own.Select(leg => PacketLegView.Of(leg, trip.Anchor, code, week))];
        return new PacketTripView
        {
            Trip = trip.Trip,
            State = trip.State,
            Anchor = trip.Anchor,
            LegsOfOthers = trip.Legs.Length - legs.Length,
            Legs = legs,
        };
    }
}
