using Batch.Checks;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The values of a crew packet: one person's week with the sheets of its trips. Private.</summary>
internal sealed record PacketModel : SheetModel
{
    [Value("The person. Private")]
    public required PersonView Person { get; init; }

    [Value("The worst state of the person's legs")]
    public required StateView State { get; init; }

    [Value("The operator")]
    public required OperatorView Operator { get; init; }

    [Value("What is known of the run")]
    public required RunView Run { get; init; }

    [Value("Paper size for @page: A4 or Letter")]
    public required string Paper { get; init; }

    [Value("Off blocks of the first leg; nothing where not known")]
    public required ClockTime? Begins { get; init; }

    [Value("On blocks of the last leg; nothing where not known")]
    public required ClockTime? Ends { get; init; }

    [Value("Names of the trips that are held back: one leg that could not be planned, or fails a check and has no reason to be flown all the same, holds its whole trip")]
    public required ImmutableArray<string> Held { get; init; }

    [Value("The legs that hold them, such as T101/2; others may fly them")]
    public required ImmutableArray<string> Unfit { get; init; }

    [Value("The trips with the person's legs and their pages, in order of time")]
    public required ImmutableArray<PacketTripView> Contents { get; init; }

    [Value("Whether pages are known: not when nothing is printed")]
    public bool HasPages => Contents.Any(trip => trip.Page is not null);

    [Value("Duties and limits; nothing without a planned leg")]
    public required DutyView? Duty { get; init; }

    [Value("Who else is on the crew, by code. Private")]
    public required ImmutableArray<CrewmateView> Crewmates { get; init; }

    [Value("The airports that the person's legs touch, by ident")]
    public required ImmutableArray<AirportView> Airports { get; init; }

    [Value("The values of each trip's sheet, in the order of the contents, those that are held back left out; include a partial with one of them and it sees its values")]
    public required ImmutableArray<TripModel> Trips { get; init; }

    public static PacketModel Of(CheckedWeek week, RunFacts facts, string code, PaperSize paper)
    {
        var input = week.Plan.Input;
        var own = Own(week.Legs, code);
        if (own.IsEmpty)
            throw new ArgumentException("The week has no such person.", nameof(code));
        ImmutableArray<string> trips = [.. own.Select(leg => leg.Plan.Key.Trip).Distinct(StringComparer.Ordinal)];
        ImmutableArray<CheckedLeg> unfit = [.. trips.SelectMany(trip => week.Legs.Where(leg => leg.IsHeld && leg.Plan.Key.Trip == trip))];
        ImmutableArray<string> held = [.. unfit.Select(leg => leg.Plan.Key.Trip).Distinct(StringComparer.Ordinal)];
        ImmutableArray<TripModel> sheets = [.. trips.Where(trip => !held.Contains(trip))
            .Select((trip, index) => TripModel.Of(week, facts, trip, paper, Anchor(index)))];
        ImmutableArray<PacketTripView> contents =
            [.. trips.Select(trip => PacketTripView.Of(trip, week, code, sheets.FirstOrDefault(sheet => sheet.Trip == trip)?.Anchor ?? ""))];
        return new PacketModel
        {
            Person = new PersonView { Code = code, Name = input.Crew.GetValueOrDefault(code)?.Name ?? "" },
            State = StateView.Of(own.Max(leg => leg.State)),
            Operator = OperatorView.Of(input.Operator),
            Run = RunView.Of(week, facts),
            Paper = paper switch { PaperSize.A4 => "A4", PaperSize.Letter => "Letter" },
            Begins = contents.SelectMany(trip => trip.Legs).FirstOrDefault(leg => leg.OffBlocks is not null)?.OffBlocks,
            Ends = contents.SelectMany(trip => trip.Legs).LastOrDefault(leg => leg.OnBlocks is not null)?.OnBlocks,
            Held = held,
            Unfit = [.. unfit.Select(leg => LegWay.Key(leg.Plan))],
            Contents = contents,
            Duty = DutyView.Of(week.DutyTables.FirstOrDefault(table => Seats.Same(table.Code, code)), week.Plan),
            Crewmates = CrewmateView.Of(own, code, input),
            Airports =
            [
                .. own.SelectMany(leg => new[] { LegWay.From(leg.Plan), LegWay.To(leg.Plan) }).Distinct(StringComparer.OrdinalIgnoreCase)
                    .Order(StringComparer.OrdinalIgnoreCase)
                    .Where(input.Airports.ContainsKey).Select(ident => AirportView.Of(input.Airports[ident])),
            ],
            Trips = sheets,
        };
    }

    /// <summary>Those of some legs that a person flies, in order of time.</summary>
    public static ImmutableArray<CheckedLeg> Own(IEnumerable<CheckedLeg> legs, string code) =>
        [.. legs.Where(leg => Seats.Has(leg.Plan, code)).OrderBy(leg => Seats.OffBlocks(leg.Plan) ?? Instant.MaxValue).ThenBy(leg => leg.Plan.Key)];

    /// <summary>The same packet with the page of each place.</summary>
    public PacketModel WithPages(IReadOnlyDictionary<string, int> pages) => this with
    {
        Contents = [.. Contents.Select(
            trip => trip with { Page = Page(pages, trip.Anchor), Legs = [.. trip.Legs.Select(leg => leg with { Page = Page(pages, leg.Anchor) })] })],
    };

    /// <summary>Whether the pages of all places are these.</summary>
    public bool AgreesWith(IReadOnlyDictionary<string, int> pages) =>
        Contents.All(trip => trip.Page == Page(pages, trip.Anchor) && trip.Legs.All(leg => leg.Page == Page(pages, leg.Anchor)));

    /// <summary>Where each place should begin, each trip after the other; nothing from the first trip on that was not printed.</summary>
    public ImmutableDictionary<string, int> ExpectedPages(int coverPages, Func<string, (int Pages, IReadOnlyDictionary<string, int> Places)?> printed)
    {
        var expected = ImmutableDictionary.CreateBuilder<string, int>();
        var before = coverPages;
        foreach (var trip in Trips)
        {
            if (printed(trip.Trip) is not { } sheet) break;
            foreach (var (place, page) in sheet.Places)
            {
                if (place.StartsWith(TripModel.OwnAnchor, StringComparison.Ordinal))
                    expected[trip.Anchor + place[TripModel.OwnAnchor.Length..]] = before + page;
            }
            before += sheet.Pages;
        }
        return expected.ToImmutable();
    }

    /// <summary>Where a trip begins in the packet.</summary>
    private static string Anchor(int index) => "trip-" + (index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static int? Page(IReadOnlyDictionary<string, int> pages, string anchor) => pages.TryGetValue(anchor, out var page) ? page : null;
}
