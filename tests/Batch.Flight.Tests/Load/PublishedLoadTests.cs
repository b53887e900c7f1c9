using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Load;

/// <summary>
/// Load sheets that others have worked, put together by the public functions: the pilot as captain, passengers in the manifest, bags as bags, the rest as
/// cargo.
/// </summary>
public sealed class PublishedLoadTests
{
    private static readonly CheckFile Tables = CheckFile.Read("loading-tables.csv");
    private static readonly CheckFile Sheets = CheckFile.Read("load-sheets-computed.csv");
    private static readonly CheckFile Changes = CheckFile.Read("weight-changes.csv");

    public static TheoryData<string> Examples() => [.. Tables.Rows.Select(row => row["example"]).Distinct()];

    public static TheoryData<string> SheetIds() => [.. Sheets.Rows.Select(row => row.Id)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_printed_loading_table_comes_out_as_printed(string example)
    {
        var rows = Tables.Rows.Where(row => row["example"] == example).ToArray();
        var items = rows.Where(row => row["row"] == "item").ToArray();
        var total = rows.Single(row => row["row"] == "total");
        var fuel = items.SingleOrDefault(row => row["item"].StartsWith("Fuel", StringComparison.Ordinal));
        var pilot = items.SingleOrDefault(row => row["item"] == "Pilot");
        var bags = items.SingleOrDefault(row => row["item"] == "Baggage");
        var others = items[1..].Where(row => row != fuel && row != pilot && row != bags).ToArray();
        var passengers = others.Where(row => row["item"].StartsWith("Passenger", StringComparison.Ordinal)).ToArray();
        foreach (var row in items) Assert.Equal(row.Number("moment"), row.Number("weight") * row.Number("arm"), row.HalfDigit("moment"));

        var sheet = Loading.Of(new LoadRequest
        {
            Aircraft = new Aircraft
            {
                Registration = "ABCDE",
                Type = "T",
                BasicEmptyWeight = new Pounds(items[0].Number("weight")),
                BasicEmptyMoment = new PoundInches(items[0].Number("weight") * items[0].Number("arm")),
                PilotsIncluded = pilot is null ? 1 : 0,
            },
            Type = new AircraftType
            {
                Name = "T",
                Stations =
                [
                    .. items.Where(row => row != fuel).Select(row => new Station
                    {
                        Name = row["item"],
                        Kind = row == pilot ? StationKind.Crew : passengers.Contains(row) ? StationKind.Seat : StationKind.Bags,
                        Arm = new Inches(row.Number("arm")),
                        Seats = passengers.Contains(row) ? 2 : 0,
                        FillOrder = row == bags ? 1 : null,
                    }),
                ],
                FuelMoments =
                [
                    fuel is null
                        ? new FuelMoment(new Pounds(1), new PoundInches(0))
                        : new FuelMoment(new Pounds(fuel.Number("weight")), new PoundInches(fuel.Number("weight") * fuel.Number("arm"))),
                ],
            },
            Captain = pilot is null ? null : Some.Pilot("P1", pilot.Number("weight")),
            Passengers =
            [
                .. passengers.SelectMany(row => Enumerable.Repeat(
                    Some.Passenger(PersonCategory.Adult, row.Number("weight") / Persons(row["item"]), seat: row["item"]), Persons(row["item"]))),
                .. bags is null ? [] : new[] { Some.Passenger(PersonCategory.Infant, 0, bagsLb: bags.Number("weight")) },
            ],
            Cargo = [.. others.Except(passengers).Select(row => Some.Cargo(row["item"], row.Number("weight"), row["item"]))],
            Weights = Some.Weights,
            Block = new Pounds(fuel?.Number("weight") ?? 0),
        });

        Assert.True(sheet.HasMoments);
        Assert.Equal(total.Number("weight"), sheet.Ramp.Weight.Value, total.HalfDigit("weight"));
        Assert.Equal(total.Number("moment"), sheet.Ramp.Moment.Value, total.HalfDigit("moment"));
        Assert.Equal(total.Number("cg"), sheet.Ramp.CentreOfGravity.Value, total.HalfDigit("cg"));
    }

    [Theory]
    [MemberData(nameof(SheetIds))]
    public void A_load_sheet_worked_elsewhere_comes_out_the_same_in_all_four_states(string id)
    {
        var row = Sheets[id];
        var items = row["items"].Split(';', StringSplitOptions.TrimEntries).Select(item => item.Split('|'))
            .Select(part => (Name: part[0], Weight: Number(part[1]), Arm: Number(part[2]))).ToArray();
        var (fuel, fuelArm) = (row.Number("fuel_lb"), row.Number("fuel_arm"));
        var seats = items[1..].Where(item => item.Name.StartsWith("seat", StringComparison.Ordinal)).ToArray();
        var sheet = Loading.Of(new LoadRequest
        {
            Aircraft = new Aircraft
            {
                Registration = "ABCDE",
                Type = "T",
                BasicEmptyWeight = new Pounds(items[0].Weight),
                BasicEmptyMoment = new PoundInches(items[0].Weight * items[0].Arm),
                PilotsIncluded = 1,
            },
            Type = new AircraftType
            {
                Name = "T",
                Stations =
                [
                    .. items[1..].Select(item => new Station
                    {
                        Name = item.Name,
                        Kind = seats.Contains(item) ? StationKind.Seat : StationKind.Bags,
                        Arm = new Inches(item.Arm),
                        Seats = seats.Contains(item) ? 1 : 0,
                    }),
                ],
                FuelMoments = [new FuelMoment(new Pounds(fuel), new PoundInches(fuel * fuelArm))],
            },
            Passengers = [.. seats.Select(item => Some.Passenger(PersonCategory.Adult, item.Weight, seat: item.Name))],
            Cargo = [.. items[1..].Except(seats).Select(item => Some.Cargo(item.Name, item.Weight, item.Name))],
            Weights = Some.Weights,
            Block = new Pounds(fuel),
            Taxi = new Pounds(row.Number("taxi_lb")),
            Trip = new Pounds(row.Number("burn_lb")),
        });

        foreach (var (name, state) in new[] { ("zfw", sheet.ZeroFuel), ("ramp", sheet.Ramp), ("tow", sheet.Takeoff), ("ldw", sheet.Landing) })
        {
            Assert.Equal(row.Number(name), state.Weight.Value, row.HalfDigit(name));
            Assert.Equal(row.Number(name + "_moment"), state.Moment.Value, row.HalfDigit(name + "_moment"));
            Assert.Equal(row.Number(name + "_cg"), state.CentreOfGravity.Value, row.HalfDigit(name + "_cg"));
        }

        Assert.Equal(sheet.Takeoff.CentreOfGravity.Value, sheet.BurnLine[0].Arm.Value, 9);
        Assert.Equal(sheet.ZeroFuel.CentreOfGravity.Value, sheet.BurnLine[^1].Arm.Value, 9);
    }

    [Theory]
    [InlineData("WF03", 1)]
    [InlineData("WF04", -1)]
    public void Adding_and_removing_weight_shifts_the_centre_of_gravity_as_printed(string id, int sign)
    {
        var (given, answer) = (Changes[id].Parts("inputs"), Changes[id].Parts("outputs"));
        var before = new WeightAndBalance(new Pounds(Number(given["total_weight"])),
            new Pounds(Number(given["total_weight"])) * new Inches(Number(given["cg"])));
        var after = before.With(new Pounds(sign * Number(given[sign > 0 ? "added" : "removed"])), new Inches(Number(given["station"])));
        Assert.Equal(Number(answer["new_weight"]), after.Weight.Value, 9);
        Assert.Equal(Number(answer["new_cg"]), after.CentreOfGravity.Value, CheckRow.HalfDigitOf(answer["new_cg"]));
    }

    [Theory]
    [InlineData("WF13")]
    [InlineData("WF14")]
    public void A_weight_ahead_of_the_datum_has_a_negative_moment(string id)
    {
        var given = Changes[id].Parts("inputs");
        Assert.Equal(Number(Changes[id].Parts("outputs")["moment"]), (new Pounds(Number(given["weight"])) * new Inches(Number(given["arm"]))).Value, 9);
    }

    [Theory]
    [InlineData("WF11")]
    [InlineData("WF12")]
    public void A_centre_of_gravity_is_given_in_percent_of_the_chord_as_printed(string id)
    {
        var (given, answer) = (Changes[id].Parts("inputs"), Changes[id].Parts("outputs"));
        var chord = new MeanAerodynamicChord(new Inches(Number(given["lemac"])), new Inches(Number(given["mac"])));
        Assert.Equal(Number(answer["percent_mac"]), chord.PercentAt(new Inches(Number(given["cg"]))), 0.05);
        Assert.Equal(Number(given["cg"]), chord.ArmAt(chord.PercentAt(new Inches(Number(given["cg"])))).Value, 9);
    }

    [Fact]
    public void A_weight_moved_is_one_taken_away_and_put_back_elsewhere()
    {
        // By hand: 200 lb moved 50 in aft at 5,000 lb shift the centre of gravity by 2 in.
        var before = new WeightAndBalance(new Pounds(5000), new PoundInches(500_000));
        var after = before.Moved(new Pounds(200), new Inches(90), new Inches(140));
        Assert.Equal((5000, 102), (after.Weight.Value, after.CentreOfGravity.Value));
        Assert.Equal(before.With(new Pounds(-200), new Inches(90)).With(new Pounds(200), new Inches(140)), after);
    }

    private static int Persons(string item) => item.EndsWith('2') ? 2 : 1;

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
