using Batch.Checks;
using Batch.Flight.Fleet;
using Batch.Sheets.Views;

namespace Batch.Sheets.Tests.Board;

public class TimeLineTests
{
    private static readonly TimeLineView Line = Of(SampleWeek.Made);

    private static TimeLineView Of(CheckedWeek week) => TimeLineView.Of(week) ?? throw new InvalidOperationException("No line.");

    [Fact]
    public void Every_leg_is_on_the_line_or_named_beside_it()
    {
        var shown = Line.Aircraft.SelectMany(row => row.Legs.Select(leg => leg.Leg.Key)).Concat(Line.Unplaced.Select(leg => leg.Key));
        Assert.Equal(SampleWeek.Made.Legs.Select(leg => LegWay.Key(leg.Plan)).Order(), shown.Order());
        Assert.Equal("row 17", Assert.Single(Line.Unplaced).Key);
    }

    [Fact]
    public void A_leg_stands_under_its_hour()
    {
        var leg = Line.Aircraft[0].Legs[0];
        Assert.Equal(("T101/1", 48.0), (leg.Leg.Key, Line.Hours));
        Assert.Equal(100 * 9.5 / 48, leg.Place, 2); // off blocks 09:30 local at the base
        Assert.True(leg.IsLengthKnown);
    }

    [Fact]
    public void A_leg_without_a_plan_is_marked_as_of_unknown_length() =>
        Assert.False(Line.Aircraft[0].Legs.Single(leg => leg.Leg.Key == "T103/1").IsLengthKnown);

    [Fact]
    public void A_turnaround_shorter_than_the_operators_is_marked()
    {
        Assert.False(Assert.Single(Line.Aircraft[0].Gaps).IsShort);
        var input = SampleWeek.Made.Plan.Input;
        var strict = SampleWeek.Made with
        {
            Plan =
            SampleWeek.Made.Plan with { Input = input with { Operator = input.Operator with { Turnaround = Duration.FromHours(12) } } }
        };
        Assert.True(Assert.Single(Of(strict).Aircraft[0].Gaps).IsShort);
    }

    [Fact]
    public void The_turnaround_to_a_leg_that_is_not_shown_is_left_out() =>
        Assert.Empty(Of(SampleWeek.Made with { Legs = SampleWeek.Made.Legs.RemoveAt(1) }).Aircraft[0].Gaps);

    [Fact]
    public void A_pilot_has_duties_with_the_rest_before()
    {
        var row = Line.Crew.Single(row => row.Name == "ANA");
        Assert.Equal(2, row.Duties.Length);
        Assert.Null(row.Duties[0].Rest);
        Assert.Equal("13:30", row.Duties[1].Rest?.ToString());
        Assert.Equal(row.Duties[1].Place, row.Duties[1].RestPlace + row.Duties[1].RestWidth, 2);
    }

    [Fact]
    public void Without_a_home_base_the_line_is_in_UTC()
    {
        var input = SampleWeek.Made.Plan.Input;
        Assert.Equal("UTC", Of(SampleWeek.Made with { Plan = SampleWeek.Made.Plan with { Input = input with { Operator = new Operator() } } }).Base);
    }
}
