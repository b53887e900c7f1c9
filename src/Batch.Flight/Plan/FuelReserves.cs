using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Turns the reserve times of the rules into fuel.</summary>
/// <param name="setup">The leg.</param>
internal sealed class FuelReserves(LegSetup setup)
{
    /// <summary>Height above the airport at which holding fuel is computed [ft]; ICAO Annex 6 Part I 4.3.6.3 (450 m).</summary>
    private const double HoldingHeightFt = 1500;

    /// <summary>The amounts.</summary>
    /// <param name="profile">The flight to the destination.</param>
    /// <param name="alternates">Flights to the alternates.</param>
    /// <param name="landing">Landing at the destination.</param>
    /// <param name="landingWeight">Weight on that landing.</param>
    public ReserveAmounts Of(FlightProfile profile, ImmutableArray<AlternatePlan> alternates, Instant landing, Pounds landingWeight)
    {
        var rules = setup.Planning.Fuel;
        var assumptions = ImmutableArray.CreateBuilder<string>();
        var edges = ImmutableArray.CreateBuilder<(PerformanceTable Table, TableReading Reading)>();

        PoundsPerHour Flow(ReserveBasis basis, Airport at, Pounds weight)
        {
            if (basis == ReserveBasis.Cruise) return profile.CruiseFlow;
            if (setup.Type.Tables.Holding is not { } holding)
            {
                assumptions.Add($"The Holding sheet has no rows for {setup.Type.Name}: holding fuel taken at cruise flow.");
                return profile.CruiseFlow;
            }

            Span<double> flow = stackalloc double[1];
            var reading = holding.Read([weight.Value, at.Elevation.Value + HoldingHeightFt], flow);
            if (!reading.IsInside) edges.Add((holding, reading));
            return new PoundsPerHour(flow[0] * (1 + setup.Aircraft.BurnBias));
        }

        var farthest = alternates.FirstOrDefault(plan => plan.IsFarthest);
        var endsAt = farthest is null ? setup.To : setup.Alternates.First(airport => airport.Ident == farthest.Airport);
        var endWeight = farthest is null ? landingWeight : landingWeight - farthest.Fuel;

        var contingency = profile.TripFuel * rules.ContingencyFraction;
        if (rules.ContingencyFloor > Duration.Zero)
            contingency = Pounds.Max(contingency, Flow(ReserveBasis.Holding, setup.To, landingWeight) * rules.ContingencyFloor);

        var instead = alternates.IsEmpty && rules.WithoutAlternateHold > Duration.Zero
            ? Flow(ReserveBasis.Holding, setup.To, landingWeight) * rules.WithoutAlternateHold
            : Pounds.Zero;

        var reserveTime = IsNight(landing) ? rules.FinalReserveNight : rules.FinalReserveDay;
        var reserveFlow = Flow(rules.FinalReserveBasis, endsAt, endWeight);
        return new ReserveAmounts(contingency, instead, reserveFlow * reserveTime, reserveTime, reserveFlow, assumptions.DrainToImmutable(),
            edges.DrainToImmutable());
    }

    /// <summary>
    /// Whether takeoff, landing, or landing and the day's reserve after it falls in the night; the rule does not say which moment counts, so any does.
    /// </summary>
    private bool IsNight(Instant landing) =>
        setup.Planning.Fuel.FinalReserveDay != setup.Planning.Fuel.FinalReserveNight
        && (Sun.IsNight(setup.Takeoff, setup.From.Position)
            || Sun.IsNight(landing, setup.To.Position)
            || Sun.IsNight(landing + setup.Planning.Fuel.FinalReserveDay, setup.To.Position));
}
