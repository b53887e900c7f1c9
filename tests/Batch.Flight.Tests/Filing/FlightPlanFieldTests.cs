using System.Globalization;
using Batch.Flight.Filing;
using Batch.Testing;
using NodaTime.Text;

namespace Batch.Flight.Tests.Filing;

public sealed class FlightPlanFieldTests
{
    private static readonly CheckFile File = CheckFile.Read("flight-plan-fields.csv");

    public static IEnumerable<object[]> Ids => File.Ids();

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_field_is_written_as_published(string id)
    {
        var row = File[id];
        var meaning = row["field"] == "no designator" ? null : row.Parts("meaning");
        Assert.Equal(row["token"], row["field"] switch
        {
            "speed and level" => FlightPlanField.SpeedAndLevel(new Knots(Number("tas")), new Feet(Number("level")), new Feet(Number("from"))),
            "departure" => FlightPlanField.Departure(meaning!["ident"], On("2026-07-01", meaning["time"])),
            "destination" => FlightPlanField.Destination(meaning!["ident"], On("2026-07-01", "0" + meaning["elapsed"]) - On("2026-07-01", "00:00")),
            "date" => FlightPlanField.DateOfFlight(On(meaning!["date"], "23:59")),
            "type" => FlightPlanField.TypeOfAircraft(
                (int)Number("number"), meaning!["designator"], meaning["wake"] == "M" ? WakeCategory.Medium : WakeCategory.Light),
            "persons" => FlightPlanField.Persons((int)Number("persons")),
            "no designator" => FlightPlanField.NoDesignator,
            _ => "",
        });

        double Number(string name) => double.Parse(meaning![name], CultureInfo.InvariantCulture);
    }

    // ICAO Doc 4444, 4.9.1: light 7,000 kg or less, heavy 136,000 kg or more.
    [Theory]
    [InlineData(7_000, WakeCategory.Light)]
    [InlineData(7_000.1, WakeCategory.Medium)]
    [InlineData(135_999.9, WakeCategory.Medium)]
    [InlineData(136_000, WakeCategory.Heavy)]
    public void The_wake_category_follows_the_mass(double kilograms, WakeCategory category) =>
        Assert.Equal(category, FlightPlanField.WakeOf(Pounds.FromKilograms(kilograms)));

    [Theory]
    [InlineData("X-HLDA", "XHLDA")]
    [InlineData("x 12ab", "X12AB")]
    [InlineData("ABCDEFGH", null)]
    [InlineData("X/1", null)]
    [InlineData("", null)]
    public void A_registration_becomes_an_identification_without_its_hyphen(string registration, string? identification) =>
        Assert.Equal(identification, FlightPlanField.Identification(registration));

    [Theory]
    [InlineData("Northwind Air, Inc. (XN-1)", "NORTHWIND AIR INC XN 1")]
    [InlineData("-/)", "")]
    public void Words_cannot_begin_another_field(string text, string plain) => Assert.Equal(plain, FlightPlanField.Plain(text));

    private static Instant On(string date, string time) =>
        LocalDatePattern.Iso.Parse(date).Value.At(LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(time).Value).InUtc().ToInstant();
}
