using System.Globalization;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>A landing for fuel on the way, at an airport near the route that sells it; it adds a row, so that it is said in words only.</summary>
internal sealed class FuelStop : IRemedyKind
{
    /// <summary>An airport that lengthens the way by more than this part is not on it.</summary>
    private const double LongestDetour = 1.25;

    private const int MostAirports = 5;

    /// <summary>Numbers of added legs begin behind every number that a book can hold.</summary>
    private const int AddedFrom = 10_000;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Passengers;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("FUEL-01", "FUEL-02", "FUEL-03", "FUEL-04", "FUEL-05", "FUEL-06", "FUEL-07", "WB-02", "WB-03");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check, looksAlone: false);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var plan = failure.Plan;
        var leg = failure.Leg;

        // A row of the manifest that names its legs by number would not go aboard the added leg.
        if (failure.Manifest.Any(line => line.Legs.Greatest is not null) || failure.Cargo.Any(line => line.Legs.Greatest is not null))
        {
            yield break;
        }

        var direct = Geodesic.Inverse(plan.From.Position, plan.To.Position).DistanceM;
        var near = failure.Ground.Input.Airports.Values
            .Where(airport =>
                airport.Ident != plan.From.Ident && airport.Ident != plan.To.Ident && plan.Type.Fuel is { } fuel && airport.FuelsSold?.Contains(fuel) == true)
            .Select(airport => (Airport: airport,
                Way: Geodesic.Inverse(plan.From.Position, airport.Position).DistanceM + Geodesic.Inverse(airport.Position, plan.To.Position).DistanceM))
            .Where(pair => pair.Way <= direct * LongestDetour)
            .OrderBy(pair => pair.Way)
            .Take(MostAirports);
        foreach (var (airport, _) in near)
        {
            if (Edit(failure, airport) is { } edit)
            {
                yield return edit;
            }
        }
    }

    private static WeekEdit? Edit(Failure failure, Airport airport)
    {
        var leg = failure.Leg;
        var minimum = new FuelPlan.Minimum(Pounds.Zero);
        var first = leg with
        {
            To = airport.Ident,
            Alternate = failure.Plan.To.Ident,
            SecondAlternate = "",
            Route = "",
            BackupRoute = "",
            Level = null,
            IsLevelAuto = true,
            FuelPlan = minimum,
            ArrivalRunway = ""
        };
        var planner = failure.Ground.Planner.With(failure.Ground.Input with { Legs = failure.Ground.Input.Legs.Replace(leg, first) });
        if (failure.Ground.Guard(first, () => planner.PlanAlone(first, failure.Plan.Fuel)) is not LegPlan.Planned flown)
        {
            return null;
        }

        var turnaround = failure.Ground.Input.Operator.Turnaround ?? Duration.FromMinutes(45);
        var off = flown.Times.OnBlocks + turnaround;
        var second = leg with
        {
            Key = leg.Key with { Number = AddedFrom + leg.Key.Number },
            From = airport.Ident,
            OffBlocks = off,
            OffBlocksLocal = off.InZone(airport.Zone).LocalDateTime,
            Route = "",
            BackupRoute = "",
            Level = null,
            IsLevelAuto = true,
            FuelPlan = minimum,
            FuelAboard = null,
            DepartureRunway = "",
        };
        if (failure.Ground.Guard(second, () => planner.PlanAlone(second, flown.Fuel)) is not LegPlan.Planned onward)
        {
            return null;
        }

        var added = (onward.Times.OnBlocks - failure.Plan.Times.OnBlocks).TotalMinutes;
        var text = string.Create(CultureInfo.InvariantCulture,
            $"Land at {airport.Ident} for fuel, which adds {added:0} min: a leg {leg.From}-{airport.Ident} and a leg {airport.Ident}-{leg.To}, off blocks {Typed.Time(second.OffBlocksLocal.TimeOfDay)} there, direct and with minimum fuel");
        return new WeekEdit(text, Disruptions.Passengers) { Legs = [(leg, first)], Added = [second], IsWritable = false };
    }
}
