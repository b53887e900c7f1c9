using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>What one aircraft does in the week.</summary>
internal sealed record AircraftWeekView
{
    [Value("Registration")]
    public required string Registration { get; init; }

    [Value("Name of its type")]
    public required string Type { get; init; }

    [Value("Number of its legs")]
    public required int Legs { get; init; }

    [Value("Block time")]
    public required Elapsed Block { get; init; }

    [Value("Air time")]
    public required Elapsed Air { get; init; }

    [Value("Landings")]
    public required int Landings { get; init; }

    [Value("Fuel to load")]
    public required Quantity Uplift { get; init; }

    [Value("Airframe hours after the week, a bare number; nothing where the book does not say")]
    public required double? HoursAfter { get; init; }

    [Value("Hours left to the next inspection after the week, a bare number; nothing where the book does not say")]
    public required double? HoursToInspection { get; init; }

    public static AircraftWeekView Of(AircraftWeek aircraft, OperatorWeek week)
    {
        var known = week.Fleet.GetValueOrDefault(aircraft.Registration);
        var density = known is null ? null : week.Types.GetValueOrDefault(known.Type)?.FuelDensity;
        var after = known?.Hours + aircraft.Air.TotalHours;
        return new AircraftWeekView
        {
            Registration = aircraft.Registration,
            Type = known?.Type ?? "",
            Legs = aircraft.Steps.Length,
            Block = new Elapsed(aircraft.Block),
            Air = new Elapsed(aircraft.Air),
            Landings = aircraft.Landings,
            Uplift = Quantity.OfFuel(aircraft.Uplift, density, RoundingWay.Up),
            HoursAfter = after,
            HoursToInspection = known?.NextInspectionAt - after,
        };
    }
}
