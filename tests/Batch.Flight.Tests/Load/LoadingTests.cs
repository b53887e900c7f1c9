using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Load;

public sealed class LoadingTests
{
    private static readonly LoadRequest Alone = Some.LoadRequest;

    [Fact]
    public void A_pilot_counted_in_the_empty_weight_is_not_counted_again()
    {
        var sheet = Loading.Of(Alone);
        Assert.Equal(5200, sheet.ZeroFuel.Weight.Value);
        Assert.Equal(1, sheet.Pilots);
        Assert.Equal(0, sheet.Occupants);
        Assert.Empty(sheet.Items);
        Assert.Equal(1, sheet.Stations[0].Persons);
        Assert.Empty(sheet.Tests.Where(test => !test.IsInside));
    }

    [Fact]
    public void The_second_pilot_beyond_the_one_counted_is_an_occupant_of_the_other_pilot_seat()
    {
        var sheet = Loading.Of(Alone with { SecondPilot = Some.Pilot("P2", 175) });
        var pilot = Assert.Single(sheet.Items);
        Assert.Equal((LoadItemKind.Pilot, "Pilots", 175d, 100d), (pilot.Kind, pilot.Station, pilot.Weight.Value, pilot.Arm.Value));
        Assert.Equal(5375, sheet.ZeroFuel.Weight.Value);
        Assert.Equal(728_000 + 17_500, sheet.ZeroFuel.Moment.Value, 9);
        Assert.Equal((1, 175d, 0d), (sheet.Occupants, sheet.OccupantWeight.Value, sheet.Payload.Value));
        Assert.Equal((2, 0), (sheet.Pilots, sheet.Passengers));
        Assert.Equal(2, sheet.Stations[0].Persons);
    }

    [Fact]
    public void With_two_pilots_counted_in_the_empty_weight_neither_is_an_item()
    {
        var sheet = Loading.Of(Alone with { Aircraft = Some.LoadAircraft with { PilotsIncluded = 2 }, SecondPilot = Some.Pilot("P2", 175) });
        Assert.Equal((5200d, 0, 2), (sheet.ZeroFuel.Weight.Value, sheet.Occupants, sheet.Pilots));
    }

    [Fact]
    public void With_none_counted_both_are_items_and_occupants()
    {
        var sheet = Loading.Of(Alone with { Aircraft = Some.LoadAircraft with { PilotsIncluded = 0 }, SecondPilot = Some.Pilot("P2", 175) });
        Assert.Equal([190d, 175d], sheet.Items.Select(item => item.Weight.Value));
        Assert.Equal(2, sheet.Occupants);
    }

    [Fact]
    public void A_pilot_counted_but_not_aboard_is_said()
    {
        var sheet = Loading.Of(Alone with { Aircraft = Some.LoadAircraft with { PilotsIncluded = 2 } });
        Assert.Equal("The empty weight of ABCDE counts one pilot more than is aboard: the weights are those with that pilot.",
            Assert.Single(sheet.Assumptions));
    }

    [Fact]
    public void A_pilot_whose_code_is_not_known_has_the_standard_weight()
    {
        var sheet = Loading.Of(Alone with { HasSecondPilot = true });
        var pilot = Assert.Single(sheet.Items);
        Assert.Equal(("second pilot", 205d, true), (pilot.What, pilot.Weight.Value, pilot.IsAssumed));
        Assert.Equal("1 pilot at standard weight (205 lb, test weights).", Assert.Single(sheet.Assumptions));
    }

    [Fact]
    public void Without_a_second_pilot_seat_the_second_pilot_takes_a_passenger_seat()
    {
        var type = Some.LoadType with { Stations = [Some.LoadType.Stations[0] with { Seats = 1 }, .. Some.LoadType.Stations[1..]] };
        var sheet = Loading.Of(Alone with
        {
            Type = type,
            SecondPilot = Some.Pilot("P2", 175),
            Passengers = [Some.Passenger(PersonCategory.Man, 200, seat: "Row 2"), Some.Passenger(PersonCategory.Man, 200, seat: "Row 2")]
        });
        Assert.Equal(["Row 1", "Row 2", "Row 2"], sheet.Items.Select(item => item.Station));
        Assert.Equal(0, sheet.WithoutSeat);
    }

    [Fact]
    public void Seats_are_filled_by_fill_order_then_book_order()
    {
        var sheet = Loading.Of(Alone with { Passengers = [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 180), 5)] });
        Assert.Equal(["Row 2", "Row 2", "Row 1", "Row 1", "Row 3"], sheet.Items.Select(item => item.Station));
        Assert.Equal([1, 2, 2, 1, 0, 0], sheet.Stations.Select(load => load.Persons));
    }

    [Theory]
    [InlineData("Row 3")]
    [InlineData("row3")]
    [InlineData("3")]
    [InlineData("3B")]
    [InlineData("seat 3A")]
    public void A_named_seat_is_understood(string seat) =>
        Assert.Equal("Row 3", Loading.Of(Alone with { Passengers = [Some.Passenger(PersonCategory.Adult, 180, seat: seat)] }).Items[0].Station);

    [Theory]
    [InlineData("Row 9")]
    [InlineData("window")]
    [InlineData("Aft")]
    public void A_seat_that_is_none_is_said_and_the_fill_order_holds(string seat)
    {
        var line = Some.Passenger(PersonCategory.Adult, 180, seat: seat) with
        {
            Origin = new Origin("week.xlsx/Manifest", 7, ImmutableDictionary<string, string>.Empty.Add("Seat", "H")),
        };
        var sheet = Loading.Of(Alone with { Passengers = [line] });
        Assert.Equal("Row 2", sheet.Items[0].Station);
        Assert.Equal($"Seat '{seat}' (week.xlsx/Manifest/H7) is no seat of Skua 9: seated by the fill order.", Assert.Single(sheet.Assumptions));
    }

    [Fact]
    public void More_persons_than_the_named_row_has_seats_overflow_by_fill_order()
    {
        var sheet = Loading.Of(Alone with { Passengers = [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 180, seat: "1"), 4)] });
        Assert.Equal(["Row 1", "Row 1", "Row 2", "Row 2"], sheet.Items.Select(item => item.Station));
        Assert.Equal("More persons ask for Row 1 than it has seats: the later ones are seated by the fill order.", Assert.Single(sheet.Assumptions));
    }

    [Fact]
    public void A_heavy_person_passes_a_row_whose_maximum_would_be_exceeded_and_takes_it_only_when_no_other_is_left()
    {
        var type = Some.LoadType with
        {
            Stations =
            [.. Some.LoadType.Stations.Select(station => station.Name == "Row 2" ? station with { Maximum = new Pounds(300) } : station)]
        };
        var sheet = Loading.Of(Alone with { Type = type, Passengers = [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Man, 200), 5)] });
        Assert.Equal(["Row 2", "Row 1", "Row 1", "Row 3", "Row 2"], sheet.Items.Select(item => item.Station));
        Assert.Equal(400, sheet.Stations[2].Weight.Value);
    }

    [Fact]
    public void Who_finds_no_seat_is_counted_and_keeps_the_weight()
    {
        var sheet = Loading.Of(Alone with { Passengers = [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 150), 7)] });
        Assert.Equal(1, sheet.WithoutSeat);
        Assert.Equal((7, 7), (sheet.Passengers, sheet.Occupants));
        Assert.Equal(5200 + (7 * 150), sheet.ZeroFuel.Weight.Value);
        Assert.Equal(("", 190d, false), (sheet.Items[6].Station, sheet.Items[6].Arm.Value, sheet.Items[6].TakesSeat));
        Assert.Equal("No seat left for 1 person: the weight is taken at Row 3.", Assert.Single(sheet.Assumptions));
        Assert.True(sheet.HasMoments);
    }

    [Fact]
    public void Standard_weights_are_counted_by_category_and_name_nobody()
    {
        var sheet = Loading.Of(Alone with
        {
            Passengers =
            [
                Some.Passenger(PersonCategory.Adult), Some.Passenger(PersonCategory.Woman), Some.Passenger(PersonCategory.Adult),
                Some.Passenger(PersonCategory.Man, 240),
                Some.Passenger(PersonCategory.Child), Some.Passenger(null),
            ],
        });
        Assert.Equal([190d, 179d, 190d, 240d, 82d, 190d], sheet.Items.Select(item => item.Weight.Value));
        Assert.Equal([true, true, true, false, true, true], sheet.Items.Select(item => item.IsAssumed));
        Assert.Equal(
            [
                "3 passengers at standard weight (adult 190 lb, test weights).",
                "1 passenger at standard weight (woman 179 lb, test weights).",
                "1 passenger at standard weight (child 82 lb, test weights).",
                "No category stated for 1 passenger: taken as adult.",
            ], sheet.Assumptions.AsEnumerable());
        Assert.DoesNotContain(sheet.Assumptions, sentence => sentence.Contains("Somebody", StringComparison.Ordinal));
    }

    [Fact]
    public void An_infant_sits_on_the_lap_of_the_passenger_before_and_takes_no_seat()
    {
        var sheet = Loading.Of(Alone with
        {
            Passengers =
            [
                Some.Passenger(PersonCategory.Man, 200, seat: "Row 1"), Some.Passenger(PersonCategory.Woman, 150, seat: "Row 3"),
                Some.Passenger(PersonCategory.Infant),
                .. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 150), 4),
            ],
        });
        Assert.Equal(("Row 3", 22d, false), (sheet.Items[2].Station, sheet.Items[2].Weight.Value, sheet.Items[2].TakesSeat));
        Assert.Equal(0, sheet.WithoutSeat);
        Assert.Equal(7, sheet.Occupants);
        Assert.Equal((2, 322d), (sheet.Stations[3].Persons, sheet.Stations[3].Weight.Value));
    }

    [Fact]
    public void An_infant_first_in_the_manifest_is_put_where_somebody_sits()
    {
        var sheet = Loading.Of(Alone with { Passengers = [Some.Passenger(PersonCategory.Infant), Some.Passenger(PersonCategory.Woman, 150, seat: "Row 3")] });
        Assert.Equal("Row 3", sheet.Items[0].Station);
    }

    [Fact]
    public void An_infant_with_a_seat_of_its_own_takes_it()
    {
        var sheet = Loading.Of(Alone with { Passengers = [Some.Passenger(PersonCategory.Woman, 150), Some.Passenger(PersonCategory.Infant, seat: "Row 2")] });
        Assert.Equal(("Row 2", true), (sheet.Items[1].Station, sheet.Items[1].TakesSeat));
        Assert.Equal(2, sheet.Stations[2].Persons);
    }

    [Fact]
    public void An_infant_whose_row_is_full_goes_on_a_lap()
    {
        var sheet = Loading.Of(Alone with
        {
            Passengers = [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 150, seat: "1"), 2),
            Some.Passenger(PersonCategory.Infant, seat: "1")]
        });
        Assert.Equal(("Row 1", false), (sheet.Items[2].Station, sheet.Items[2].TakesSeat));
        Assert.Equal(0, sheet.WithoutSeat);
    }

    [Fact]
    public void Bags_that_do_not_fit_into_one_station_are_parted()
    {
        var sheet = Loading.Of(Alone with { Passengers = [Some.Passenger(PersonCategory.Adult, 180, bagsLb: 230, bagCount: 4)] });
        var bags = sheet.Items.Where(item => item.Kind == LoadItemKind.Bags).ToArray();
        Assert.Equal([("Aft", 200d, (int?)4), ("Nose", 30d, null)], bags.Select(item => (item.Station, item.Weight.Value, item.BagCount)));
        Assert.Equal(0, sheet.WithoutStation.Value);
        Assert.Equal(230, sheet.Baggage.Value);
        Assert.Equal(410, sheet.Payload.Value);
    }

    [Fact]
    public void Bags_that_fit_whole_into_a_later_station_are_not_parted()
    {
        var sheet = Loading.Of(
            Alone with { Passengers = [Some.Passenger(PersonCategory.Adult, 180, bagsLb: 170), Some.Passenger(PersonCategory.Adult, 180, bagsLb: 50)] });
        Assert.Equal([("Aft", 170d), ("Nose", 50d)],
            sheet.Items.Where(item => item.Kind == LoadItemKind.Bags).Select(item => (item.Station, item.Weight.Value)));
    }

    [Fact]
    public void What_no_station_takes_is_counted_and_keeps_its_weight()
    {
        var sheet = Loading.Of(Alone with { Passengers = [Some.Passenger(PersonCategory.Adult, 180, bagsLb: 300)] });
        Assert.Equal(40, sheet.WithoutStation.Value, 9);
        Assert.Equal(5200 + 480, sheet.ZeroFuel.Weight.Value, 9);
        Assert.Equal(40, sheet.Items[^1].Arm.Value);
        Assert.Equal("No baggage station left for 40 lb: taken at Nose.", Assert.Single(sheet.Assumptions));
    }

    [Fact]
    public void Bags_without_a_weight_are_taken_by_count_or_as_nothing_and_both_are_said()
    {
        var sheet = Loading.Of(Alone with
        {
            Passengers = [Some.Passenger(PersonCategory.Adult, 180, bagsLb: null, bagCount: 2), Some.Passenger(PersonCategory.Adult, 180, bagsLb: null),
                Some.Passenger(PersonCategory.Adult, 180, bagsLb: null, bagCount: 0)],
        });
        var bags = Assert.Single(sheet.Items, item => item.Kind == LoadItemKind.Bags);
        Assert.Equal((60d, true), (bags.Weight.Value, bags.IsAssumed));
        Assert.Equal(["2 bags at standard weight (30 lb, test weights).", "No bag weight stated for 1 passenger: taken as 0 lb."],
            sheet.Assumptions.AsEnumerable());
    }

    [Fact]
    public void Cargo_goes_to_its_station_before_bags_are_stowed_and_is_never_parted()
    {
        var sheet = Loading.Of(Alone with
        {
            Passengers = [Some.Passenger(PersonCategory.Adult, 180, bagsLb: 50)],
            Cargo = [Some.Cargo("spares", 180, "Aft"), Some.Cargo("mail", 15), Some.Cargo("crate", 20)],
        });
        Assert.Equal([("Nose", 50d), ("Aft", 180d), ("Aft", 15d), ("", 20d)], sheet.Items.Skip(1).Select(item => (item.Station, item.Weight.Value)));
        Assert.Equal(20, sheet.WithoutStation.Value);
    }

    [Fact]
    public void Cargo_may_be_named_onto_a_seat_row_and_an_unknown_station_is_said()
    {
        var sheet = Loading.Of(Alone with { Cargo = [Some.Cargo("box", 40, "Row 3"), Some.Cargo("bag", 10, "tail")] });
        Assert.Equal(["Row 3", "Aft"], sheet.Items.Select(item => item.Station));
        Assert.Equal("Station 'tail' is no station of Skua 9: stowed by the fill order.", Assert.Single(sheet.Assumptions));
    }

    [Fact]
    public void The_four_states_take_their_fuel_moment_from_the_curve()
    {
        var sheet = Loading.Of(Alone);
        Assert.Equal((6200d, 728_000 + 90_000 + (400 * 159d)), (sheet.Ramp.Weight.Value, sheet.Ramp.Moment.Value));
        Assert.Equal((6180d, 728_000 + 90_000 + (380 * 159d)), (sheet.Takeoff.Weight.Value, sheet.Takeoff.Moment.Value));
        Assert.Equal((5680d, 728_000 + (480 * 150d)), (sheet.Landing.Weight.Value, sheet.Landing.Moment.Value));
        Assert.Equal((5200d, 728_000d), (sheet.ZeroFuel.Weight.Value, sheet.ZeroFuel.Moment.Value));
        Assert.Equal([6180d, 5800d, 5680d, 5200d], sheet.BurnLine.Select(point => point.Weight.Value));
    }

    [Fact]
    public void Fuel_beyond_the_curve_is_taken_at_the_arm_of_its_end_and_said()
    {
        var sheet = Loading.Of(Alone with { Block = new Pounds(2000) });
        Assert.Equal(728_000 + (2000 * 156d), sheet.Ramp.Moment.Value, 6);
        Assert.Contains("Fuel above the 1800 lb of the fuel arms of Skua 9 taken at the arm of their end.", sheet.Assumptions);
    }

    [Fact]
    public void Without_an_empty_moment_or_fuel_arms_or_stations_there_are_weights_but_no_tests()
    {
        foreach (var request in new[]
        {
            Alone with { Aircraft = Some.LoadAircraft with { BasicEmptyMoment = null } },
            Alone with { Type = Some.LoadType with { FuelMoments = [] } },
            Alone with { Type = Some.LoadType with { Stations = [] }, Passengers = [Some.Passenger(PersonCategory.Adult, 180)] },
        })
        {
            var sheet = Loading.Of(request);
            Assert.False(sheet.HasMoments);
            Assert.Empty(sheet.Tests);
            Assert.Empty(sheet.BurnLine);
            Assert.Equal(5200 + sheet.Payload.Value + 1000, sheet.Ramp.Weight.Value);
        }
    }

    [Fact]
    public void Placing_once_and_fuelling_twice_is_the_same_as_two_requests()
    {
        var request = Alone with { Passengers = [Some.Passenger(PersonCategory.Adult, bagsLb: 40)] };
        var placed = Loading.Place(request);
        foreach (var block in new[] { 700d, 1500d })
        {
            var (fast, slow) = (Loading.WithFuel(placed, new Pounds(block), request.Taxi, request.Trip),
                Loading.Of(request with { Block = new Pounds(block) }));
            Assert.Equal(slow.Ramp, fast.Ramp);
            Assert.Equal(slow.Landing, fast.Landing);
            Assert.Equal(slow.Tests, fast.Tests.AsEnumerable());
            Assert.Equal(slow.Assumptions, fast.Assumptions.AsEnumerable());
        }
    }

    [Fact]
    public void Whatever_is_loaded_nothing_is_lost_and_nothing_appears()
    {
        var persons = Gen.Select(Gen.Double[0, 300], Gen.Double[0, 150], AnyOf("", "1", "Row 2", "3", "9"),
            AnyOf(PersonCategory.Adult, PersonCategory.Infant, PersonCategory.Child));
        var loads = Gen.Select(persons.Array[0, 10], Gen.Select(Gen.Double[1, 120], AnyOf("", "Aft", "Nose", "Row 1")).Array[0, 5], Gen.Int[0, 2], Gen.Bool);
        loads.Sample((passengers, cargo, included, second) =>
        {
            var sheet = Loading.Of(Alone with
            {
                Aircraft = Some.LoadAircraft with { PilotsIncluded = included },
                SecondPilot = second ? Some.Pilot("P2", 175) : null,
                Passengers = [.. passengers.Select(p => Some.Passenger(p.Item4, p.Item1, p.Item2, seat: p.Item3))],
                Cargo = [.. cargo.Select(c => Some.Cargo("thing", c.Item1, c.Item2))],
            });
            var pilotsLb = (included == 0 ? 190 : 0) + (second && included < 2 ? 175 : 0);
            var payloadLb = passengers.Sum(p => p.Item1 + p.Item2) + cargo.Sum(c => c.Item1);
            Assert.Equal(payloadLb, sheet.Payload.Value, 6);
            Assert.Equal(payloadLb + pilotsLb, sheet.Items.Sum(item => item.Weight.Value), 6);
            Assert.Equal(sheet.Payload.Value + pilotsLb, (sheet.OccupantWeight + sheet.Baggage).Value, 6);
            Assert.Equal(5200 + payloadLb + pilotsLb, sheet.ZeroFuel.Weight.Value, 6);
            Assert.Equal(728_000 + sheet.Items.Sum(item => item.Moment.Value), sheet.ZeroFuel.Moment.Value, 4);
            Assert.Equal(sheet.Items.Where(item => item.Station.Length > 0).Sum(item => item.Weight.Value), sheet.Stations.Sum(load => load.Weight.Value), 6);
            Assert.All(sheet.Stations, load => Assert.True(load.Station.Kind == StationKind.Bags || load.Persons <= load.Station.Seats));
            var infantsSeated = sheet.Items.Count(item => item.Category == "infant" && item.TakesSeat);
            Assert.Equal(Math.Max(0, passengers.Count(p => p.Item4 != PersonCategory.Infant) + infantsSeated - 6), sheet.WithoutSeat);
        }, iter: 500);
    }

    private static Gen<T> AnyOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
