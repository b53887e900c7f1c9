using System.Globalization;
using Batch.Flight.Plan;
using Batch.Sheets.Views;

namespace Batch.Sheets.Tests;

/// <summary>Whoever adds the printed lines of a log or ladder arrives at the printed total.</summary>
public class LogSumsTests
{
    private static readonly LegPlan.Planned Plan = (LegPlan.Planned)SampleWeek.Made.Legs[0].Plan;

    private static int Read(string text) => int.Parse(text, NumberStyles.AllowThousands, CultureInfo.InvariantCulture);

    /// <summary>Three stretches of 4.4 min are 13.2 min, printed 13; each by itself is printed 4, together 12. Three of 20.4 lb likewise: 61.2.</summary>
    private static LegPlan.Planned ThreeStretches()
    {
        var minutes = Duration.FromMinutes(4.4);
        var burn = new Pounds(20.4);
        return Plan with
        {
            Log = [.. Enumerable.Range(0, 4).Select(k => Plan.Log[k] with
            {
                Time = k == 0 ? Duration.Zero : minutes,
                Over = Plan.Times.Takeoff + (minutes * k),
                Burn = k == 0 ? Pounds.Zero : burn,
                Remaining = new Pounds(900.9 - (20.4 * k)),
            })],
        };
    }

    [Fact]
    public void Minutes_of_the_log_add_up_to_the_time_in_the_air() =>
        Assert.Equal(["0", "4", "5", "4"], LogLineView.Of(ThreeStretches()).Select(line => line.Time.Minutes(0)));

    [Fact]
    public void Each_burn_is_the_difference_of_what_is_left()
    {
        var log = LogLineView.Of(ThreeStretches());
        Assert.Equal(["900", "880", "860", "839"], log.Select(line => line.Remaining.Text(1, 0)));
        Assert.Equal(["0", "20", "20", "21"], log.Select(line => line.Burn.Text(1, 0)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(Pounds.KilogramsPerPound)]
    public void Burns_of_the_log_add_up_in_whatever_unit(double factor)
    {
        var log = LogLineView.Of(Plan);
        Assert.Equal(Read(log[0].Remaining.Text(factor, 0)) - Read(log[^1].Remaining.Text(factor, 0)), log.Sum(line => Read(line.Burn.Text(factor, 0))));
    }

    /// <summary>
    /// 1,288.7 lb required and 1,290.8 aboard are 1,289, 1,290 and a margin of 1; what is left is 2.1 lb. Leg T116/2 of the sample printed 1,221 after the taxi
    /// where the log said 1,220, and 2, less 0, is 1.
    /// </summary>
    [Fact]
    public void Without_additional_fuel_the_ladder_ends_on_its_margin()
    {
        var fuel = Plan.Fuel with { Additional = Pounds.Zero, Aboard = new Pounds(1_290.8) };
        var view = FuelView.Of(Plan with { Fuel = fuel with { FinalReserve = fuel.FinalReserve + new Pounds(1_288.7) - fuel.Required } });
        Assert.Equal(("1,289", "1,290", "+1"), (view.Required.Text(1, 0), view.Aboard.Text(1, 0), view.Margin.Text(1, 0)));
        Assert.Equal(("1", "1"), (view.AfterFinalReserve.Text(1, 0), view.AfterAdditional.Text(1, 0)));
    }

    [Fact]
    public void Fuel_at_takeoff_is_rounded_as_in_the_log() =>
        Assert.Equal("850", FuelView.Of(Plan with { Fuel = Plan.Fuel with { Aboard = Plan.Fuel.Taxi + new Pounds(850.8) } }).Takeoff.Text(1, 0));
}
