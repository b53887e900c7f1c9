using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// Weight and balance of a leg. Sums of weights and of moments (weight times arm), as in FAA-H-8083-1B, chapter 2 and AC 43.13-1B, chapter 10; the fuel moment
/// is interpolated linearly in the type's curve, from nothing at no fuel.
/// </summary>
public static class Loading
{
    /// <summary>The load sheet of a request: <see cref="Place"/>, then <see cref="WithFuel"/>; with the spread if passengers sit elsewhere.</summary>
    /// <param name="request">The request.</param>
    public static LoadSheet Of(LoadRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var load = Place(request);
        return WithFuel(load, request.Block, request.Taxi, request.Trip) with { Spread = LoadReseating.Of(load, request.Block, request.Taxi, request.Trip) };
    }

    /// <summary>
    /// Puts persons, bags and cargo at their stations. A person or thing without a place keeps its weight in the sums, at the arm of the last station, and is
    /// counted.
    /// </summary>
    /// <param name="request">The request; its fuel is not looked at.</param>
    public static LoadPlan Place(LoadRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var stations = new LoadStations(request.Type.Stations);
        var assumptions = new LoadAssumptions(request.Weights.Source);
        var persons = LoadPersons.Seat(request, stations, assumptions, out var pilots, out var withoutSeat);
        var goods = LoadGoods.Stow(request, stations, assumptions, out var withoutStation);
        ImmutableArray<LoadItem> items = [.. persons, .. goods];

        var empty = new WeightAndBalance(request.Aircraft.BasicEmptyWeight, request.Aircraft.BasicEmptyMoment ?? PoundInches.Zero);
        var hasArms = request.Type.Stations.Length > 0 || items.All(item => item.Weight.Value == 0);
        return new LoadPlan
        {
            Type = request.Type,
            BasicEmpty = empty,
            Items = items,
            Stations = stations.Loads(),
            Pilots = pilots,
            Passengers = request.Passengers.Length,
            WithoutSeat = withoutSeat,
            WithoutStation = withoutStation,
            ZeroFuel = items.Aggregate(empty, (sum, item) => sum.With(item.Weight, item.Arm)),
            HasMoments = request.Aircraft.BasicEmptyMoment is not null && request.Type.FuelMoments.Length > 0 && hasArms,
            Assumptions = assumptions.All(),
        };
    }

    /// <summary>
    /// The load sheet of a placed load with fuel, without the spread of other seatings. The centre of gravity is tested at takeoff, at landing, with no fuel,
    /// and at every point on the way from takeoff to landing.
    /// </summary>
    /// <param name="load">The placed load.</param>
    /// <param name="block">Fuel at off blocks [lb].</param>
    /// <param name="taxi">Fuel burned before takeoff [lb].</param>
    /// <param name="trip">Fuel burned from takeoff to landing [lb].</param>
    public static LoadSheet WithFuel(LoadPlan load, Pounds block, Pounds taxi, Pounds trip)
    {
        ArgumentNullException.ThrowIfNull(load);
        var curve = new LoadFuelCurve(load.Type.FuelMoments);
        WeightAndBalance State(Pounds fuel) => new(load.ZeroFuel.Weight + fuel, load.ZeroFuel.Moment + curve.Moment(fuel));
        var takeoff = State(block - taxi);
        var landing = State(block - taxi - trip);
        var assumptions = load.Assumptions.ToBuilder();
        var tests = ImmutableArray<EnvelopeTest>.Empty;
        var burnLine = ImmutableArray<EnvelopePoint>.Empty;
        if (load.HasMoments)
        {
            if (curve.IsBeyond(block)) assumptions.Add($"Fuel above the {curve.End} of the fuel arms of {load.Type.Name} taken at the arm of their end.");
            WeightAndBalance[] flown = [.. curve.Path(block - taxi, block - taxi - trip).Select(State)];
            tests = EnvelopeTesting.Of(load.Type, flown, load.ZeroFuel, assumptions);
            burnLine = [.. flown.Concat(curve.Path(block - taxi - trip, Pounds.Zero).Skip(1).Select(State)).Select(Point)];
        }

        return new LoadSheet
        {
            BasicEmpty = load.BasicEmpty,
            Items = load.Items,
            Stations = load.Stations,
            Pilots = load.Pilots,
            Passengers = load.Passengers,
            Occupants = load.Occupants,
            OccupantWeight = load.OccupantWeight,
            Baggage = load.Baggage,
            Payload = load.Payload,
            WithoutSeat = load.WithoutSeat,
            WithoutStation = load.WithoutStation,
            ZeroFuel = load.ZeroFuel,
            Ramp = State(block),
            Takeoff = takeoff,
            Landing = landing,
            BurnLine = burnLine,
            Tests = tests,
            HasMoments = load.HasMoments,
            Assumptions = assumptions.ToImmutable(),
        };
    }

    private static EnvelopePoint Point(WeightAndBalance state) => new(state.Weight, state.CentreOfGravity);
}
