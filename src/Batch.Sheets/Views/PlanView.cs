using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Pictures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The figures of a leg that could be planned.</summary>
internal sealed record PlanView
{
    [Value("Name of the aircraft type")]
    public required string Type { get; init; }

    [Value("Description of the type")]
    public required string TypeDescription { get; init; }

    [Value("Flight rules: IFR or VFR")]
    public required string Rules { get; init; }

    [Value("Purpose: charter, ferry or training")]
    public required string Purpose { get; init; }

    [Value("Pilots already counted in the basic empty weight")]
    public required int PilotsInEmptyWeight { get; init; }

    [Value("Times")]
    public required TimesView Times { get; init; }

    [Value("Route and level")]
    public required RouteView Route { get; init; }

    [Value("Fuel")]
    public required FuelView Fuel { get; init; }

    [Value("Loading card")]
    public required CardView Card { get; init; }

    [Value("Load, weights, centre of gravity")]
    public required LoadView Load { get; init; }

    [Value("Navigation log, departure first")]
    public required ImmutableArray<LogLineView> Log { get; init; }

    [Value("Takeoff")]
    public required RunwayView Departure { get; init; }

    [Value("Landing")]
    public required RunwayView Arrival { get; init; }

    [Value("Level options, highest first, the plan among them")]
    public required ImmutableArray<OptionView> Options { get; init; }

    [Value("Alternates in the order filed")]
    public required ImmutableArray<AlternateView> Alternates { get; init; }

    [Value("Flight plan to be filed")]
    public required FlightPlanView FlightPlan { get; init; }

    [Value("Sun and night")]
    public required DaylightView Daylight { get; init; }

    [Value("Notices about the airports, fixes, airways and the aircraft that hold during the leg")]
    public required ImmutableArray<NoticeView> Notices { get; init; }

    [Value("Picture of weight and centre of gravity in the envelope; nothing where moments or the envelope are not known")]
    public required Picture? EnvelopePicture { get; init; }

    [Value("Picture of the route from above with fixes and alternates")]
    public required Picture RoutePicture { get; init; }

    [Value("Picture of the vertical profile with minimum altitudes, winds and freezing level")]
    public required Picture ProfilePicture { get; init; }

    [Value("Picture of the fuel as bars, required above planned")]
    public required Picture FuelPicture { get; init; }

    [Value("What was assumed; the same of several airports in one sentence")]
    public required ImmutableArray<string> Assumptions { get; init; }

    [Value("What was decided and is worth knowing; the same of several airports in one sentence")]
    public required ImmutableArray<string> Notes { get; init; }

    public static PlanView Of(LegPlan.Planned plan, OperatorWeek week)
    {
        var runway = plan.Planning.Runway;
        return new PlanView
        {
            Type = plan.Type.Name,
            TypeDescription = plan.Type.Description,
            Rules = Words.Of(plan.Rules),
            Purpose = Words.Of(plan.Purpose),
            PilotsInEmptyWeight = plan.Aircraft.PilotsIncluded,
            Times = TimesView.Of(plan.Times, plan.From.Zone, plan.To.Zone),
            Route = RouteView.Of(plan),
            Fuel = FuelView.Of(plan),
            Card = CardView.Of(plan),
            Load = LoadView.Of(plan),
            Log = LogLineView.Of(plan),
            Departure = RunwayView.Of(plan.Leg.From, "Takeoff", plan.Departure, plan.Type.MaximumTakeoff, runway.TakeoffFactor, runway.TakeoffCitation),
            Arrival = RunwayView.Of(plan.Leg.To, "Landing", plan.Arrival, plan.Type.MaximumLanding, runway.LandingFactor, runway.LandingCitation),
            Options = OptionView.Of(plan),
            Alternates = [.. plan.Alternates.Select(alternate => AlternateView.Of(alternate, plan, week))],
            FlightPlan = FlightPlanView.Of(plan, week),
            Daylight = DaylightView.Of(plan),
            Notices = NoticesOnTheWay(plan, week),
            EnvelopePicture = Pictures.EnvelopePicture.Of(plan),
            RoutePicture = RouteSketch.Of(plan, week.Airports),
            ProfilePicture = Pictures.ProfilePicture.Of(plan),
            FuelPicture = FuelBars.Of(plan.Fuel),
            Assumptions = AlikeSentences.Gathered(plan.Assumptions),
            Notes = AlikeSentences.Gathered(plan.Notes.Concat(plan.Route.Notes)),
        };
    }

    private static ImmutableArray<NoticeView> NoticesOnTheWay(LegPlan.Planned plan, OperatorWeek week)
    {
        var board = new NoticeBoard(week.Notices);
        var subjects = new[] { plan.Leg.From, plan.Leg.To }
            .Concat(plan.Alternates.Select(alternate => alternate.Airport))
            .Append(plan.Leg.Aircraft)
            .Concat(plan.Route.Segments.SelectMany(segment => new[] { segment.Via, segment.To.Ident }))
            .Where(subject => subject.Length > 0)
            .Distinct(StringComparer.OrdinalIgnoreCase);
        return NoticeView.Gathered(subjects.SelectMany(subject => board.About(subject, plan.Times.OffBlocks, plan.Times.OnBlocks)));
    }
}
