using Batch.Flight.Plan;
using Batch.Sheets.Pictures;
using Batch.Sheets.Views;

namespace Batch.Sheets.Tests;

/// <summary>A figure reads the same wherever it stands on a sheet: what is typed into the aircraft's computer is what the first page says.</summary>
public class SameFigureTests
{
    /// <summary>900.2 lb required is 901; the 900.4 lb aboard keep it, so they read 901 too. 8,504.3 lb at takeoff are held against a greatest weight, so they read 8,505.</summary>
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
        Assert.All([WeightView.Of(Plan)[7].Weight, RunwayView.Of("XAND", "Takeoff", Plan.Departure, Plan.Type.MaximumTakeoff, 1, "").Weight, AnswerView.Of(Plan)[0].Expected], weight => Assert.Equal("8,505", weight?.Text(1, 0)));
        Assert.Contains("8,505 lb", EnvelopePicture.Of(Plan)?.Usual.Html, StringComparison.Ordinal);
    }
}
