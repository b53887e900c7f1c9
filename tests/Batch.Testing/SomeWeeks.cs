using Batch.Flight.Air;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Testing;

public static partial class Some
{
    /// <summary>
    /// The aircraft ABCDE of <see cref="Type"/>, loading stations and envelope of <see cref="LoadType"/>; flown by one required pilot, none counted in the
    /// empty weight.
    /// </summary>
    public static AircraftType WeekType => Type() with
    {
        Stations = LoadType.Stations,
        FuelMoments = LoadType.FuelMoments,
        Envelopes = LoadType.Envelopes,
    };

    /// <summary>A leg of trip T1 flown by ABCDE at FL200, IFR, minimum fuel.</summary>
    public static Leg Leg(int number, string from, string to, Instant offBlocks, FuelPlan? fuelPlan = null, double? aboardLb = null, string alternate = "") =>
        new()
        {
            Key = new LegKey("T1", number),
            OffBlocks = offBlocks,
            OffBlocksLocal = offBlocks.InUtc().LocalDateTime,
            Aircraft = "ABCDE",
            From = from,
            To = to,
            Alternate = alternate,
            Level = new Feet(20_000),
            Rules = FlightRules.Ifr,
            Purpose = LegPurpose.Charter,
            Captain = "P1",
            FuelPlan = fuelPlan ?? new FuelPlan.Minimum(Pounds.Zero),
            FuelAboard = aboardLb is { } lb ? new Pounds(lb) : null,
        };

    /// <summary>A week of one aircraft and one pilot; XAND and XBEL sell fuel, XDUN none.</summary>
    public static OperatorWeek Week(ImmutableArray<Leg> legs, ImmutableArray<ManifestLine> manifest = default, IEnumerable<AirReport>? winds = null) => new()
    {
        Operator = new Operator { TaxiOut = Duration.FromMinutes(10), TaxiIn = Duration.FromMinutes(5) },
        Types = ImmutableSortedDictionary<string, AircraftType>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase).Add("Skua 9", WeekType),
        Fleet = ImmutableSortedDictionary<string, Aircraft>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase)
            .Add("ABCDE", LoadAircraft with { PilotsIncluded = 0, BasicEmptyWeight = new Pounds(6000), BasicEmptyMoment = new PoundInches(840_000) }),
        Airports = new[] { Sells(Xand, 5), Sells(Xbel, 6), Sells(Xcor, 7), Xdun with { FuelsSold = [] } }
            .ToImmutableSortedDictionary(airport => airport.Ident, airport => airport, StringComparer.OrdinalIgnoreCase),
        Crew = ImmutableSortedDictionary<string, CrewMember>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase).Add("P1", Pilot("P1", 190))
            .Add("P2", Pilot("P2", 180)),
        Legs = legs,
        Manifest = manifest.IsDefault ? [] : manifest,
        Winds = [.. winds ?? []],
    };

    /// <summary>A week planned with <see cref="SomePlans.Rules"/>.</summary>
    public static PlannedWeek Planned(OperatorWeek week, PlanningRules? rules = null) => new WeekPlanner(week, (_, _) => rules ?? SomePlans.Rules).Plan();

    private static Airport Sells(Airport airport, double price) => airport with { FuelsSold = [FuelKind.JetA1], FuelPrice = price };
}
