using Batch.Checks;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One departure on a load sheet. No names.</summary>
internal sealed record DepartureView
{
    [Value("Trip and leg number, such as T101/1; the place of the row where they could not be read")]
    public required string Key { get; init; }

    [Value("State")]
    public required StateView State { get; init; }

    [Value("Whether it is not to be loaded before the dispatcher has settled it: it could not be planned, or fails a check and nobody gave a reason to fly it all the same")]
    public required bool IsHeld { get; init; }

    [Value("Whether somebody gave a reason to fly it although a check fails")]
    public required bool IsOverridden { get; init; }

    [Value("Why it could not be planned; nothing where it was")]
    public required string Why { get; init; }

    [Value("Off blocks; nothing where it could not be read")]
    public required ClockTime? OffBlocks { get; init; }

    [Value("Registration as in the book")]
    public required string Aircraft { get; init; }

    [Value("Name of the aircraft type; nothing where the registration is not known")]
    public required string Type { get; init; }

    [Value("Destination as in the book")]
    public required string To { get; init; }

    [Value("Fuel; nothing for a leg that could not be planned")]
    public required FuelView? Fuel { get; init; }

    [Value("Passengers aboard, infants included; nothing for a leg that could not be planned")]
    public required int? Passengers { get; init; }

    [Value("Pilots aboard; nothing for a leg that could not be planned")]
    public required int? Pilots { get; init; }

    [Value("Seat rows and holds with what goes there; pilots' seats are left out")]
    public required ImmutableArray<LoadStationView> Stations { get; init; }

    [Value("Cargo, piece by piece, named as in the book")]
    public required ImmutableArray<LoadCargoView> Cargo { get; init; }

    [Value("Weight of passengers, bags and cargo")]
    public required Quantity? Payload { get; init; }

    [Value("Payload that can still be added; negative when over; nothing where no limit is known")]
    public required Quantity? PayloadSpare { get; init; }

    [Value("The limit that binds the payload")]
    public required string PayloadSpareBoundBy { get; init; }

    [Value("Persons of two years or more without a seat")]
    public required int WithoutSeat { get; init; }

    [Value("Bags or cargo without a station; nothing where all have one")]
    public required Quantity? WithoutStation { get; init; }

    [Value("The weights that have a limit: zero fuel, ramp, takeoff, landing")]
    public required ImmutableArray<WeightView> Limits { get; init; }

    public static DepartureView Of(CheckedLeg leg, OperatorWeek week)
    {
        var board = BoardLegView.Of(leg, week);
        var plan = leg.Plan as LegPlan.Planned;
        var registration = LegPeople.Aircraft(leg.Plan);
        return new DepartureView
        {
            Key = board.Key,
            State = board.State,
            IsHeld = leg.IsHeld,
            IsOverridden = leg.Override.Length > 0,
            Why = leg.Plan is LegPlan.Unplanned none ? none.Why : "",
            OffBlocks = board.OffBlocks,
            Aircraft = registration,
            Type = week.Fleet.GetValueOrDefault(registration)?.Type ?? "",
            To = board.To,
            Fuel = plan is null ? null : FuelView.Of(plan),
            Passengers = plan?.Load.Passengers,
            Pilots = plan?.Load.Pilots,
            Stations = plan is null
                ? []
                : [.. plan.Load.Stations.Where(station => station.Station.Kind != StationKind.Crew).Select(station => LoadStationView.Of(station, plan.Load))],
            Cargo = plan is null ? [] : [.. plan.Load.Items.Where(item => item.Kind == LoadItemKind.Cargo).Select(LoadCargoView.Of)],
            Payload = Quantity.Of(plan?.Load.Payload),
            PayloadSpare = plan is null || WeightView.Spare(plan) is not { } spare ? null : spare with { IsSigned = false },
            PayloadSpareBoundBy = plan?.PayloadSpareBoundBy ?? "",
            WithoutSeat = plan?.Load.WithoutSeat ?? 0,
            WithoutStation = plan is not null && plan.Load.WithoutStation > Pounds.Zero ? Quantity.Of(plan.Load.WithoutStation, RoundingWay.Up) : null,
            Limits = plan is null ? [] : [.. WeightView.Of(plan).Where(line => line.IsSum)],
        };
    }
}
