using Batch.Flight.Plan;
using Batch.Sheets.Pictures;
using Batch.Sheets.Views;

namespace Batch.Sheets.Tests;

/// <summary>A figure reads the same wherever it stands on a sheet: what is typed into the aircraft's computer is what the first page says.</summary>
public class SameFigureTests
{
    /// <summary>
    /// 900.2 lb required is 901; the 900.4 lb aboard keep it, so they read 901 too. 8,504.3 lb at takeoff are held against a greatest weight, so they read
    /// 8,505.
    /// </summary>
    private static readonly LegPlan.Planned Plan = Changed((LegPlan.Planned)SampleWeek.Made.Legs[0].Plan);

    private static LegPlan.Planned Changed(LegPlan.Planned plan)
    {
        var takeoff = new Pounds(8_504.3);
        return plan with
        {
            Fuel = plan.Fuel with { FinalReserve = plan.Fuel.FinalReserve + new Pounds(900.2) - plan.Fuel.Required, Aboard = new Pounds(900.4) },
            Load = plan.Load with { Takeoff = plan.Load.Takeoff with { Weight = takeoff }, Ramp = plan.Load.Ramp with { Weight = takeoff } },
            Departure = new RunwayResult.Computed(((RunwayResult.Computed)plan.Departure).Use with { Weight = takeoff }),
        };
    }

    [Fact]
    public void Fuel_aboard() =>
        Assert.All([FuelView.Of(Plan).Aboard, CardView.Of(Plan).Fuel, WeightView.Of(Plan)[4].Weight], fuel => Assert.Equal("901", fuel.Text(1, 0)));

    [Fact]
    public void Takeoff_weight()
    {
        Assert.All([WeightView.Of(Plan)[7].Weight, RunwayView.Of("XAND", "Takeoff", Plan.Departure, Plan.Type.MaximumTakeoff, 1, "").Weight,
            AnswerView.Of(Plan)[0].Expected], weight => Assert.Equal("8,505", weight?.Text(1, 0)));
        Assert.Contains("8,505 lb", EnvelopePicture.Of(Plan)?.Usual.Html, StringComparison.Ordinal);
    }

    /// <summary>11,758.2 lb against at most 11,600: 5,333.43 kg up to 5,334, 5,261.67 kg down to 5,261, so -73; by itself -158.2 lb were -71.76, -72.</summary>
    [Fact]
    public void Payload_to_spare_is_the_margin_of_the_weight_that_binds_it()
    {
        var heavy = Plan with
        {
            Type = Plan.Type with { MaximumLanding = new Pounds(11_600) },
            Load = Plan.Load with { Landing = Plan.Load.Landing with { Weight = new Pounds(11_758.2) } },
            PayloadSpare = new Pounds(11_600 - 11_758.2),
        };
        Assert.Equal("\u221273", LoadView.Of(heavy).PayloadSpare?.Text(Pounds.KilogramsPerPound, 0));
        Assert.Equal("\u221273", LoadView.Of(heavy).Weights[9].Margin?.Text(Pounds.KilogramsPerPound, 0));
    }
}
