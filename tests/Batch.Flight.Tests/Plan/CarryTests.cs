using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

/// <summary>Fuel bought ahead where it is cheaper. XAND, XBEL and XCOR sell fuel at the prices given; density 6.7 lb a gallon.</summary>
public sealed class CarryTests
{
    private static readonly FuelPlan Carry = new FuelPlan.Carry();
    private static readonly FuelPlan Minimum = new FuelPlan.Minimum(Pounds.Zero);

    private static Instant At(int leg) => Some.Noon + Duration.FromHours(3 * leg);

    // XAND, XBEL, XCOR, XAND, each leg with its fuel plan; the aircraft begins with 300 lb.
    private static OperatorWeek Chain((double Xand, double Xbel, double Xcor) price, int people, params ImmutableArray<FuelPlan> plans)
    {
        string[] places = ["XAND", "XBEL", "XCOR", "XAND", "XBEL"];
        var week = Some.Week(
            [.. plans.Select((plan, leg) => Some.Leg(leg + 1, places[leg], places[leg + 1], At(leg), plan, leg == 0 ? 300 : null))],
            [.. Enumerable.Range(0, people).Select(_ => Some.Passenger(PersonCategory.Adult, 180))]);
        return week with
        {
            Airports = week.Airports
                .SetItem("XAND", week.Airports["XAND"] with { FuelPrice = price.Xand })
                .SetItem("XBEL", week.Airports["XBEL"] with { FuelPrice = price.Xbel })
                .SetItem("XCOR", week.Airports["XCOR"] with { FuelPrice = price.Xcor }),
        };
    }

    private static LegPlan.Planned[] Plan(OperatorWeek week) => [.. Some.Planned(week).Legs.Select(Assert.IsType<LegPlan.Planned>)];

    private static double Cost(IEnumerable<LegPlan.Planned> legs) => legs.Sum(leg => leg.Fuel.Uplift.Value / 6.7 * (leg.From.FuelPrice ?? 0));

    private static string CarryNote(LegPlan.Planned leg) => Assert.Single(leg.Notes, note => note.StartsWith("Carry:", StringComparison.Ordinal));

    [Fact]
    public void Fuel_for_two_later_legs_is_bought_where_it_is_cheapest_and_the_saving_is_said()
    {
        var price = (5.0, 9.0, 9.5);
        var plain = Plan(Chain(price, 1, Minimum, Minimum, Minimum));
        var carried = Plan(Chain(price, 1, Carry, Minimum, Minimum));
        Assert.Equal(Pounds.Zero, carried[1].Fuel.Uplift);
        Assert.Equal(Pounds.Zero, carried[2].Fuel.Uplift);
        var note = CarryNote(carried[0]);
        Assert.Contains("for T1/2, T1/3 save ", note, StringComparison.Ordinal);
        Assert.Contains(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"save {Cost(plain) - Cost(carried):0.00}"), note,
            StringComparison.Ordinal);
        Assert.All(carried, leg => Assert.True(leg.Fuel.Margin.Value > -1));
    }

    [Fact]
    public void Nothing_is_bought_ahead_for_an_airport_that_is_not_dearer()
    {
        var carried = Plan(Chain((5, 5, 9), 1, Carry, Minimum, Minimum));
        var plain = Plan(Chain((5, 5, 9), 1, Minimum, Minimum, Minimum));
        Assert.Equal(plain[0].Fuel.Uplift, carried[0].Fuel.Uplift);
        Assert.Equal("Carry: no later leg on which this fuel would be cheaper, nothing carried.", CarryNote(carried[0]));
    }

    [Fact]
    public void A_price_hardly_higher_does_not_pay_for_the_extra_burn()
    {
        var carried = Plan(Chain((5, 5.0005, 5.0005), 1, Carry, Minimum, Minimum));
        Assert.Equal("Carry: buying ahead would not be cheaper, nothing carried.", CarryNote(carried[0]));
    }

    [Fact]
    public void Without_a_price_nothing_is_carried()
    {
        var week = Chain((5, 9, 9), 1, Carry, Minimum);
        var bare = Plan(week with { Airports = week.Airports.SetItem("XAND", week.Airports["XAND"] with { FuelPrice = null }) });
        Assert.Equal("Carry: no fuel price here, nothing carried.", CarryNote(bare[0]));
    }

    [Fact]
    public void What_does_not_fit_whole_is_carried_in_part_up_to_the_limit_that_binds()
    {
        var week = Chain((5, 9, 9), 1, Carry, Minimum, Minimum);
        var free = Plan(week);
        var limited = Plan(week with { Types = week.Types.SetItem("Skua 9", Some.WeekType with { UsableFuel = free[0].Fuel.Aboard - new Pounds(150) }) });
        Assert.InRange(limited[0].Fuel.Aboard.Value, limited[0].Fuel.Most.Value - 5, limited[0].Fuel.Most.Value);
        Assert.Equal("tank", limited[0].Fuel.MostBoundBy);
        Assert.True(Cost(limited) < Cost(Plan(Chain((5, 9, 9), 1, Minimum, Minimum, Minimum))));
    }

    [Fact]
    public void Fuel_for_a_place_that_sells_none_is_carried_whatever_the_price()
    {
        var week = Some.Week([Some.Leg(1, "XAND", "XDUN", At(0), Carry, 300), Some.Leg(2, "XDUN", "XBEL", At(1)), Some.Leg(3, "XBEL", "XAND", At(2))]);
        var legs = Plan(week);
        Assert.Equal(Pounds.Zero, legs[1].Fuel.Uplift);
        Assert.InRange(legs[1].Fuel.Margin.Value, 0, 2500);
        Assert.Contains("for T1/3 save ", CarryNote(legs[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void Fuel_is_carried_too_where_the_heavier_aircraft_must_fly_lower()
    {
        var week = Chain((5, 9, 9), 1, Carry, Minimum, Minimum);
        var place = week.Airports["XAND"].Position;
        week = week with
        {
            Airports = week.Airports.SetItem("XBEL", week.Airports["XBEL"] with { Position = new GeoPoint(place.LatitudeDeg + 0.8, place.LongitudeDeg) }),
            Legs = [.. week.Legs.Select(leg => leg with { Level = new Feet(28_000) })],
        };
        var plain = Plan(week with { Legs = [.. week.Legs.Select(leg => leg with { FuelPlan = Minimum })] });
        var carried = Plan(week);
        Assert.True(carried[0].Profile.Level < plain[0].Profile.Level);
        Assert.Equal(Pounds.Zero, carried[1].Fuel.Uplift);
        Assert.Contains("for T1/2, T1/3 save ", CarryNote(carried[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void Carrying_never_costs_more_than_not_carrying_and_keeps_every_limit()
    {
        Gen.Select(Gen.Double[3, 9], Gen.Double[3, 9], Gen.Double[3, 9], Gen.Int[0, 8], Gen.Int[0, 6]).Sample((xand, xbel, xcor, people, who) =>
        {
            FuelPlan Of(int leg) => who == 6 || leg == who % 3 || (who > 2 && leg == 0) ? Carry : Minimum;
            var step = new Pounds(who * 20);
            var carried = Rounded(Chain((xand, xbel, xcor), people, Of(0), Of(1), Of(2), Minimum));
            var plain = Rounded(Chain((xand, xbel, xcor), people, Minimum, Minimum, Minimum, Minimum));
            Assert.InRange(Cost(carried), 0, Cost(plain) + 0.01);
            foreach (var (with, without) in carried.Zip(plain))
            {
                Assert.True(with.Fuel.Aboard <= with.Fuel.Most || with.Fuel.Aboard.Value <= without.Fuel.Aboard.Value + 1,
                    $"{with.Key}: {with.Fuel.Aboard} aboard, most {with.Fuel.Most}");
                Assert.True(with.Fuel.Margin.Value > -1);
            }

            LegPlan.Planned[] Rounded(OperatorWeek week) => Plan(week with { Operator = week.Operator with { UpliftRounding = step.Value > 0 ? step : null } });
        }, iter: 25);
    }

    [Theory]
    [InlineData(4, 6, 9, 0)]
    [InlineData(4, 9, 6, 3)]
    [InlineData(6, 5, 9, 5)]
    [InlineData(4, 9, 9, 1)]
    public void A_leg_that_carries_is_flown_as_if_its_fuel_had_been_written(double xand, double xbel, double xcor, int people)
    {
        var week = Chain((xand, xbel, xcor), people, Carry, Carry, Carry, Minimum);
        week = week with { Legs = [.. week.Legs.Select(leg => leg with { Level = null })] };
        var carried = Plan(week);
        Assert.Contains(carried, leg => leg.Notes.Any(note => note.Contains(" save ", StringComparison.Ordinal)));
        foreach (var (leg, row) in carried.Zip(week.Legs))
        {
            var written = Plan(week with { Legs = [row with { FuelPlan = new FuelPlan.Amount(leg.Fuel.Aboard), FuelAboard = leg.Fuel.Before }] })[0];
            Assert.Equal(written.Profile.Level, leg.Profile.Level);
            Assert.InRange(leg.Fuel.Trip.Value, written.Fuel.Trip.Value - 0.1, written.Fuel.Trip.Value + 0.1);
            Assert.InRange(leg.Fuel.Landing.Value, written.Fuel.Landing.Value - 0.1, written.Fuel.Landing.Value + 0.1);
        }
    }

    [Theory]
    [InlineData(4, 6, 9, 1)]
    [InlineData(4, 9, 6, 3)]
    [InlineData(6, 5, 9, 6)]
    [InlineData(4, 4.4, 8, 6)]
    public void The_amounts_are_as_good_as_the_best_of_all_amounts_tried_one_by_one(double xand, double xbel, double xcor, int people)
    {
        var best = double.PositiveInfinity;
        var plain = Plan(Chain((xand, xbel, xcor), people, Minimum, Minimum, Minimum));
        for (var first = plain[0].Fuel.Required.Value; first <= plain[0].Fuel.Most.Value; first += 75)
        {
            for (var second = plain[1].Fuel.Required.Value; second <= plain[1].Fuel.Most.Value + 40; second += 75)
            {
                var tried = Plan(Chain((xand, xbel, xcor), people, new FuelPlan.Amount(new Pounds(first)), new FuelPlan.Amount(new Pounds(second)), Minimum));
                if (tried.Zip(plain).All(pair => IsAllowed(pair.First, pair.Second))) best = Math.Min(best, Cost(tried));
            }
        }

        static bool IsAllowed(LegPlan.Planned tried, LegPlan.Planned plain) =>
            tried.Fuel.Margin.Value >= -1 && tried.Fuel.Aboard <= tried.Fuel.Most && (tried.Load.Tests.All(test => test.IsInside)
                || !plain.Load.Tests.All(test => test.IsInside));

        // Three pounds at the dearest price: the spare that is carried with each amount.
        Assert.InRange(Cost(Plan(Chain((xand, xbel, xcor), people, Carry, Carry, Minimum))), 0, best + (3 / 6.7 * 9));
    }
}
