using Batch.Checks;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One trip in the contents of a packet.</summary>
internal sealed record PacketTripView
{
    [Value("Name of the trip")]
    public required string Trip { get; init; }

    [Value("State of the trip: the worst of all its legs")]
    public required StateView State { get; init; }

    [Value("Whether it is held back, so that its sheet is not in the packet")]
    public required bool IsHeld { get; init; }

    [Value("Name of the place in the packet where its sheet begins, for links; nothing for a trip that is held back")]
    public required string Anchor { get; init; }

    [Value("Page of the packet on which its sheet begins; nothing while it is not known")]
    public int? Page { get; init; }

    [Value("How many legs of the trip others fly")]
    public required int LegsOfOthers { get; init; }

    [Value("The person's legs, in order of time")]
    public required ImmutableArray<PacketLegView> Legs { get; init; }

    public static PacketTripView Of(string trip, CheckedWeek week, string code, string anchor)
    {
        ImmutableArray<CheckedLeg> all = [.. week.Legs.Where(leg => leg.Plan.Key.Trip == trip)];
        ImmutableArray<PacketLegView> own = [.. PacketModel.Own(all, code).Select(leg => PacketLegView.Of(leg, anchor, code, week.Plan.Input))];
        return new PacketTripView
        {
            Trip = trip,
            State = StateView.Of(all.Max(leg => leg.State)),
            IsHeld = all.Any(leg => leg.IsHeld),
            Anchor = anchor,
            LegsOfOthers = all.Length - own.Length,
            Legs = own,
        };
    }
}
