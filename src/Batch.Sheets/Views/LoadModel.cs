using Batch.Checks;
using Batch.Sheets.Templates;
using NodaTime.Text;

namespace Batch.Sheets.Views;

/// <summary>
/// The values of the load sheet and fuel order of one airport and day. No names, no weight of a person who could be told by it: pilots' weights are left out,
/// passengers' are by seat row.
/// </summary>
internal sealed record LoadModel : SheetModel
{
    private static readonly LocalDatePattern DayName = LocalDatePattern.Create("dddd d MMMM uuuu", System.Globalization.CultureInfo.InvariantCulture);

    [Value("The airport")]
    public required AirportView Airport { get; init; }

    [Value("The day in words, local to the airport, such as Monday 7 December 2026")]
    public required string Day { get; init; }

    [Value("The date, such as 2026-12-07")]
    public required string Date { get; init; }

    [Value("The operator")]
    public required OperatorView Operator { get; init; }

    [Value("What is known of the run")]
    public required RunView Run { get; init; }

    [Value("Paper size for @page: A4 or Letter")]
    public required string Paper { get; init; }

    [Value("Departures in order of time")]
    public required ImmutableArray<DepartureView> Departures { get; init; }

    [Value("What the fuel desk sells in all, by kind of fuel; departures that fail are in it, those that could not be planned are not")]
    public required ImmutableArray<FuelTotalView> Totals { get; init; }

    [Value("How many other departures that day the run was told to leave out")]
    public required int LeftOut { get; init; }

    public static LoadModel Of(CheckedWeek week, RunFacts facts, string airport, LocalDate day, PaperSize paper)
    {
        var input = week.Plan.Input;
        ImmutableArray<CheckedLeg> legs =
        [
            .. week.Legs.Where(leg => DeparturePlace.Of(leg.Plan, input) == (airport, day)).OrderBy(leg => Seats.OffBlocks(leg.Plan) ?? Instant.MaxValue)
                .ThenBy(leg => leg.Plan.Key),
        ];
        if (legs.IsEmpty)
            throw new ArgumentException("The week has no departure there on this day.", nameof(airport));
        return new LoadModel
        {
            Airport = input.Airports.TryGetValue(airport, out var known) ? AirportView.Of(known) : AirportView.Named(airport),
            Day = DayName.Format(day),
            Date = LocalDatePattern.Iso.Format(day),
            Operator = OperatorView.Of(input.Operator),
            Run = RunView.Of(week, facts),
            Paper = paper switch { PaperSize.A4 => "A4", PaperSize.Letter => "Letter" },
            Departures = [.. legs.Select(leg => DepartureView.Of(leg, input))],
            Totals = FuelTotalView.Of(legs),
            LeftOut = week.Plan.Legs.Count(plan => DeparturePlace.Of(plan, input) == (airport, day)) - legs.Length,
        };
    }
}
