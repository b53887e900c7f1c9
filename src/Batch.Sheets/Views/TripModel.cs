using Batch.Checks;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The values of a trip sheet.</summary>
internal sealed record TripModel : SheetModel
{
    /// <summary>Where the sheet begins when it stands on its own.</summary>
    public const string OwnAnchor = "trip";

    [Value("Name of the trip")]
    public required string Trip { get; init; }

    [Value("Name of the place where the sheet begins, for links; a leg begins at this and -leg- and its mark")]
    public required string Anchor { get; init; }

    [Value("State of the trip: the worst of its legs")]
    public required StateView State { get; init; }

    [Value("The operator")]
    public required OperatorView Operator { get; init; }

    [Value("What is known of the run")]
    public required RunView Run { get; init; }

    [Value("How the trip stands to what was issued to the crew; nothing where it was never issued")]
    public required RevisionView? Revision { get; init; }

    [Value("Paper size for @page: A4 or Letter")]
    public required string Paper { get; init; }

    [Value("Off blocks of the first leg; nothing where it could not be read")]
    public required ClockTime? Begins { get; init; }

    [Value("On blocks of the last leg; nothing where it could not be planned")]
    public required ClockTime? Ends { get; init; }

    [Value("Legs in order")]
    public required ImmutableArray<LegView> Legs { get; init; }

    [Value("What to watch: failures and cautions of all legs, worst first")]
    public required ImmutableArray<FindingView> Watch { get; init; }

    [Value("What could not be checked, and notes, one line a check")]
    public required ImmutableArray<MinorGroupView> Minor { get; init; }

    [Value("Manifest. Private")]
    public required ImmutableArray<PassengerView> Manifest { get; init; }

    [Value("Cargo")]
    public required ImmutableArray<CargoView> Cargo { get; init; }

    public static TripModel Of(CheckedWeek week, RunFacts facts, string trip, PaperSize paper, string anchor = OwnAnchor)
    {
        var input = week.Plan.Input;
        ImmutableArray<CheckedLeg> legs = [.. week.Legs.Where(leg => leg.Plan.Key.Trip == trip).OrderBy(leg => leg.Plan.Key)];
        if (legs.IsEmpty)
            throw new ArgumentException("The week has no such trip.", nameof(trip));
        ImmutableArray<LegView> views = [.. legs.Select(leg => LegView.Of(leg, input))];
        ImmutableArray<Flight.Plan.LegPlan> plans = [.. legs.Select(leg => leg.Plan)];
        return new TripModel
        {
            Trip = trip,
            Anchor = anchor,
            State = StateView.Of(legs.Max(leg => leg.State)),
            Operator = OperatorView.Of(input.Operator),
            Run = RunView.Of(week, facts),
            Revision = RevisionView.Of(facts.Revisions.GetValueOrDefault(trip)),
            Paper = paper switch { PaperSize.A4 => "A4", PaperSize.Letter => "Letter" },
            Begins = views[0].OffBlocks,
            Ends = views[^1].Plan?.Times.OnBlocks,
            Legs = views,
            Watch = [.. legs.SelectMany(leg => leg.Shown.Where(finding => finding.Verdict is Verdict.Fail or Verdict.Caution)
                .Select(finding => (Leg: leg, Finding: finding))).OrderByDescending(pair => pair.Finding.Verdict)
                    .Select(pair => FindingView.Of(pair.Leg, pair.Finding))],
            Minor = MinorGroupView.Of(legs, Verdict.NotChecked, Verdict.Note),
            Manifest = [.. input.Manifest.Where(line => line.Trip == trip).Select(line => PassengerView.Of(line, plans))],
            Cargo = [.. input.Cargo.Where(line => line.Trip == trip).Select(line => CargoView.Of(line, plans))],
        };
    }
}
