using Batch.Checks;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Views;

namespace Batch.Sheets.Board;

/// <summary>Makes the rows of the time line.</summary>
/// <param name="week">The checked week.</param>
/// <param name="stretch">What the line shows.</param>
/// <param name="home">The home base; null where not known.</param>
internal sealed class LineRows(CheckedWeek week, Stretch stretch, Airport? home)
{
    /// <summary>A longer time on the ground is a night stop or a day off, not a turnaround.</summary>
    private static readonly Duration LongestGap = Duration.FromHours(8);

    private readonly Nights _nights = new();
    private readonly OperatorWeek _input = week.Plan.Input;
    private readonly ImmutableArray<(CheckedLeg Leg, Instant From, Instant To)> _placed =
    [
        .. week.Legs.SelectMany(leg => LegTime.Of(leg) is { } time && stretch.Holds(time.From)
            ? [(Leg: leg, time.From, time.To)]
            : Array.Empty<(CheckedLeg Leg, Instant From, Instant To)>())
            .OrderBy(one => one.From).ThenBy(one => one.Leg.Plan.Key),
    ];

    /// <summary>One row an aircraft, by registration; legs without one come last.</summary>
    public ImmutableArray<LineRowView> Aircraft()
    {
        var known = week.Plan.Aircraft.ToDictionary(one => one.Registration, StringComparer.OrdinalIgnoreCase);
        return
        [
            .. _placed.GroupBy(one => LegPeople.Aircraft(one.Leg.Plan), StringComparer.OrdinalIgnoreCase).OrderBy(group => group.Key.Length == 0)
                .ThenBy(group => group.Key, StringComparer.Ordinal)
                .Select(group =>
                    Row(group.Key, _input.Fleet.GetValueOrDefault(group.Key)?.Type ?? "", [.. group]) with { Gaps = Gaps(known.GetValueOrDefault(group.Key)) }),
        ];
    }

    /// <summary>One row a pilot, by code.</summary>
    public ImmutableArray<LineRowView> Crew()
    {
        var known = week.Plan.Crew.ToDictionary(one => one.Code, StringComparer.OrdinalIgnoreCase);
        return
        [
            .. _placed.SelectMany(one => LegPeople.Crew(one.Leg.Plan).Select(code => (Code: code, Leg: one)))
                .GroupBy(pair => pair.Code, pair => pair.Leg, StringComparer.OrdinalIgnoreCase).OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => Row(group.Key, _input.Crew.GetValueOrDefault(group.Key)?.Base ?? "", [.. group]) with { Duties =
                    Duties(known.GetValueOrDefault(group.Key)) }),
        ];
    }

    private LineRowView Row(string name, string detail, ImmutableArray<(CheckedLeg Leg, Instant From, Instant To)> legs)
    {
        var lanes = Lanes.Of(legs.Select(one => (one.From, one.To)));
        return new LineRowView
        {
            Name = name,
            Detail = detail,
            Lanes = lanes.Max() + 1,
            Nights = [.. _nights.Of(Stays.Of(legs, stretch, _input.Airports, home)).Select(night => LineBandView.Of(stretch, night.From, night.To))],
            Duties = [],
            Gaps = [],
            Legs =
            [
                .. legs.Select((one, index) => new LineLegView
                {
                    Leg = BoardLegView.Of(one.Leg, _input),
                    Place = stretch.PlaceOf(one.From),
                    Width = stretch.WidthOf(one.From, one.To),
                    Lane = lanes[index],
                    IsLengthKnown = one.Leg.Plan is LegPlan.Planned,
                }),
            ],
        };
    }

    /// <summary>The turnarounds between legs that are both shown.</summary>
    private ImmutableArray<LineGapView> Gaps(AircraftWeek? aircraft)
    {
        if (aircraft is null) return [];
        var shown = _placed.Select(one => one.Leg.Plan.Key).ToHashSet();
        return
        [
            .. aircraft.Steps.Where(step => step is { Ground: { } ground, Before: { } before }
                && ground > Duration.Zero
                && ground <= LongestGap
                && shown.Contains(step.Leg)
                && shown.Contains(before))
                .Select(step => (step.OffBlocks, Ground: step.Ground ?? Duration.Zero))
                .Select(gap => new LineGapView
                {
                    Place = stretch.PlaceOf(gap.OffBlocks - gap.Ground),
                    Width = stretch.WidthOf(gap.OffBlocks - gap.Ground, gap.OffBlocks),
                    Time = new Elapsed(gap.Ground),
                    IsShort = gap.Ground < _input.Operator.Turnaround,
                }),
        ];
    }

    private ImmutableArray<LineDutyView> Duties(CrewWeek? person) =>
    [
        .. (person?.Duties ?? []).Where(duty => stretch.Holds(duty.Report)).Select(duty => new LineDutyView
        {
            Place = stretch.PlaceOf(duty.Report),
            Width = stretch.WidthOf(duty.Report, duty.Release),
            Report = new ClockTime(duty.Report, stretch.Zone),
            Release = new ClockTime(duty.Release, stretch.Zone),
            Length = new Elapsed(duty.Length),
            FlightTime = new Elapsed(duty.FlightTime),
            Rest = Elapsed.Of(duty.RestBefore),
            RestPlace = stretch.PlaceOf(duty.Report - (duty.RestBefore ?? Duration.Zero)),
            RestWidth = stretch.WidthOf(duty.Report - (duty.RestBefore ?? Duration.Zero), duty.Report),
        }),
    ];
}
