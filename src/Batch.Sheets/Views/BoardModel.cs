using Batch.Checks;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The values of the week board. No names: crew are shown by code.</summary>
internal sealed record BoardModel : SheetModel
{
    private const int ThinnestShown = 25;

    [Value("The operator")]
    public required OperatorView Operator { get; init; }

    [Value("What is known of the run")]
    public required RunView Run { get; init; }

    [Value("Paper size for @page: A4 or Letter")]
    public required string Paper { get; init; }

    [Value("Whether the sheets are printed too")]
    public required bool HasPdf { get; init; }

    [Value("How many legs are in each state, worst first")]
    public required ImmutableArray<CountView> Counts { get; init; }

    [Value("Complaints about the books, worst first")]
    public required ImmutableArray<ProblemView> Problems { get; init; }

    [Value("The week drawn along time; nothing where no leg has a time")]
    public required TimeLineView? Timeline { get; init; }

    [Value("Days with their legs by aircraft")]
    public required ImmutableArray<DayView> Days { get; init; }

    [Value("The thinnest margins that still pass, thinnest share of the limit first, one a leg")]
    public required ImmutableArray<ThinMarginView> Margins { get; init; }

    [Value("Failures and cautions, by who can act")]
    public required ImmutableArray<ActorView> Actors { get; init; }

    [Value("What could not be checked, one line a check")]
    public required ImmutableArray<MinorGroupView> Unchecked { get; init; }

    [Value("What each aircraft does in the week")]
    public required ImmutableArray<AircraftWeekView> Aircraft { get; init; }

    [Value("What each pilot does in the week, by code")]
    public required ImmutableArray<CrewWeekView> Crew { get; init; }

    public static BoardModel Of(CheckedWeek week, RunFacts facts, PaperSize paper, bool hasPdf)
    {
        var input = week.Plan.Input;
        return new BoardModel
        {
            Operator = OperatorView.Of(input.Operator),
            Run = RunView.Of(week, facts),
            Paper = paper switch { PaperSize.A4 => "A4", PaperSize.Letter => "Letter" },
            HasPdf = hasPdf,
            Counts = CountView.Of(week.Legs),
            Problems = [.. input.Problems.OrderByDescending(problem => problem.State).Select(ProblemView.Of)],
            Timeline = TimeLineView.Of(week),
            Days = DayView.Of(week),
            Margins = ThinMarginView.Of(week, ThinnestShown),
            Actors = ActorView.Of(week),
            Unchecked = MinorGroupView.Of(week.Legs, Verdict.NotChecked),
            Aircraft = [.. week.Plan.Aircraft.Select(aircraft => AircraftWeekView.Of(aircraft, input))],
            Crew = [.. week.Plan.Crew.Select(CrewWeekView.Of)],
        };
    }
}
