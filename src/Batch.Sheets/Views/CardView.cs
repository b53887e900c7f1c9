using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The loading card: what is typed into the aircraft's computer in the order it is typed, and what the aircraft should answer.</summary>
internal sealed record CardView
{
    [Value("Departure")]
    public required string From { get; init; }

    [Value("Destination")]
    public required string To { get; init; }

    [Value("Alternate")]
    public required string Alternate { get; init; }

    [Value("Route elements between the airports, in order: fixes, airways, DCT, coordinates")]
    public required ImmutableArray<string> Elements { get; init; }

    [Value("Cruise level")]
    public required Quantity Level { get; init; }

    [Value("Highest cruise level where the route steps up from the first; nothing where it does not")]
    public required Quantity? StepTo { get; init; }

    [Value("Basic empty weight")]
    public required Quantity EmptyWeight { get; init; }

    [Value("Fuel aboard at off blocks")]
    public required Quantity Fuel { get; init; }

    [Value("Occupants as the aircraft counts them: passengers, and every pilot not counted in the empty weight")]
    public required int Occupants { get; init; }

    [Value("Pilots among the occupants")]
    public required int PilotsAmongOccupants { get; init; }

    [Value("Average weight of an occupant, rounded up so that the sum is not too light; nothing without occupants")]
    public required Quantity? AverageOccupant { get; init; }

    [Value("Bags and cargo")]
    public required Quantity Baggage { get; init; }

    [Value("What the aircraft should answer")]
    public required ImmutableArray<AnswerView> Answers { get; init; }

    public static CardView Of(LegPlan.Planned plan)
    {
        var load = plan.Load;
        return new CardView
        {
            From = plan.Leg.From,
            To = plan.Leg.To,
            Alternate = plan.Leg.Alternate,
            Elements = plan.Route.Elements.IsEmpty ? ["DCT"] : plan.Route.Elements,
            Level = Quantity.Of(plan.Profile.Level),
            StepTo = plan.Profile.Highest > plan.Profile.Level ? Quantity.Of(plan.Profile.Highest) : null,
            EmptyWeight = Quantity.Of(load.BasicEmpty.Weight),
            Fuel = FuelView.Printed(plan).Aboard,
            Occupants = load.Occupants,
            PilotsAmongOccupants = load.Items.Count(item => item.Kind == LoadItemKind.Pilot),
            AverageOccupant = load.Occupants > 0 ? Quantity.Of(load.OccupantWeight * (1.0 / load.Occupants), RoundingWay.Up) : null,
            Baggage = Quantity.Of(load.Baggage),
            Answers = AnswerView.Of(plan),
        };
    }
}
