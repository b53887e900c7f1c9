using Batch.Books.Tests.Support;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Books.Tests;

public sealed class GoodBooksTests
{
    private static readonly OperatorWeek Week = GoodBooks.Read();

    [Fact]
    public void Good_books_are_read_without_complaint_but_the_note_on_the_unknown_column()
    {
        Assert.Equal(["columns that are not known here are kept for the templates: Hangar (Y)"],
            Week.Problems.Select(problem => problem.Text + (problem.State == State.Note ? "" : " " + problem.State + " " + problem.Cell)));
        Assert.Equal((3, 0, 3, 1, 3, 1, 1),
            (Week.Legs.Length, Week.BrokenLegs.Length, Week.Manifest.Length, Week.Cargo.Length, Week.Winds.Length, Week.Bulletins.Length, Week.Notices.Length));
        Assert.Equal((2, 2, 3, 3, 1, 1, 2, 2, 2, 1), (Week.Types.Count, Week.Fleet.Count, Week.Airports.Count, Week.Fixes.Length, Week.Airways.Count,
            Week.Land.Length, Week.AltitudeGrid.Length, Week.Crew.Count, Week.Logged.Length, Week.CheckSettings.Length));
    }

    [Fact]
    public void A_leg_is_read_whole()
    {
        var leg = Week.Legs[0];
        Assert.Equal(new LegKey("T101", 1), leg.Key);
        Assert.Equal(new LocalDateTime(2026, 12, 7, 7, 30), leg.OffBlocksLocal);
        Assert.Equal(Instant.FromUtc(2026, 12, 7, 12, 30), leg.OffBlocks);
        Assert.Equal(("X-SKUA", "XAND", "XBEL", "XCOR", "", "NORRA V12 TIDES", ""),
            (leg.Aircraft, leg.From, leg.To, leg.Alternate, leg.SecondAlternate, leg.Route, leg.BackupRoute));
        Assert.Equal((new Feet(16000), "Normal", FlightRules.Ifr, LegPurpose.Charter), (leg.Level, leg.Setting, leg.Rules, leg.Purpose));
        Assert.Equal(("MOR", "TAN", new FuelPlan.Minimum(new Pounds(200)), new Pounds(800)), (leg.Captain, leg.SecondPilot, leg.FuelPlan, leg.FuelAboard));
        Assert.Equal((Duration.FromMinutes(10), "09", "18L", "early"), (leg.Taxi, leg.DepartureRunway, leg.ArrivalRunway, leg.Remarks));
        Assert.Equal("the chief pilot agreed", leg.Override);
        Assert.Equal("north", leg.Extra["Hangar"]);
        Assert.Empty(leg.Doubts);
    }

    [Fact]
    public void Empty_cells_say_nothing_and_auto_is_no_choice()
    {
        var leg = Week.Legs[1];
        Assert.Null(leg.Level);
        Assert.Equal(("", "", "", ""), (leg.Setting, leg.Alternate, leg.SecondPilot, leg.DepartureRunway));
        Assert.Null(leg.FuelAboard);
        Assert.Null(leg.Taxi);
        Assert.Equal(new FuelPlan.Amount(new Pounds(150 * 6.7)), leg.FuelPlan);
        Assert.Empty(leg.Extra);
    }

    [Fact]
    public void A_time_marked_UTC_is_UTC()
    {
        Assert.Equal(Instant.FromUtc(2026, 12, 8, 19, 30), Week.Legs[2].OffBlocks);
        Assert.Equal(new LocalDateTime(2026, 12, 8, 19, 30), Week.Legs[2].OffBlocksLocal);
    }

    [Fact]
    public void Every_row_knows_its_cells()
    {
        var leg = Week.Legs[0];
        Assert.Equal("week.xlsx/Legs/D2", leg.Origin.Cell(nameof(Leg.OffBlocks)));
        Assert.Equal("week.xlsx/Legs/C2", leg.Origin.Cell("Date"));
        Assert.Equal("week.xlsx/Legs/S2", leg.Origin.Cell(nameof(Leg.FuelAboard)));
        Assert.Equal("week.xlsx/Manifest/E2", Week.Manifest[0].Origin.Cell(nameof(ManifestLine.Weight)));
        Assert.Equal("operator.xlsx/Runways/C2", Week.Airports["XAND"].Runways[0].Origin.Cell(nameof(Runway.TrueBearing)));
        Assert.Equal("operator.xlsx/Operator/B5", Week.Operator.Cells["Report [min]"]);
    }

    [Fact]
    public void The_operator_is_read()
    {
        var settings = Week.Operator;
        Assert.Equal(("Greywater Air", "XAND", "us-charter"), (settings.Name, settings.HomeBase, settings.RuleSet));
        Assert.Equal((Duration.FromMinutes(60), Duration.FromMinutes(8), 0.05, new Pounds(50), false),
            (settings.Report, settings.TaxiOut, settings.Contingency, settings.UpliftRounding, settings.MayUseTableEdge));
        Assert.Equal(new Pounds(195), settings.StandardWeights["Adult"]);
        Assert.Equal("slow is smooth", settings.Items["motto"]);
    }

    [Fact]
    public void A_type_is_read_with_its_stations_envelopes_and_tables()
    {
        var type = Week.Types["skua 9"];
        Assert.Equal((EngineKind.Turboprop, 1, FuelKind.JetA1, 6.7, true, new Pounds(9000), CertificationCategory.Commuter),
            (type.Engine, type.Engines, type.Fuel, type.FuelDensity, type.Pressurised, type.MaximumZeroFuel, type.Certification));
        Assert.Equal(0.01, type.Corrections.TakeoffHeadwindPerKnot);
        Assert.Equal(0.2, type.Corrections.TakeoffGrass);
        Assert.Null(type.Corrections.LandingGrass);
        Assert.Equal(["Cockpit", "Row 1", "Aft bay"], type.Stations.Select(station => station.Name));
        Assert.Equal(3, type.FuelMoments.Length);
        Assert.Equal([4, 3], type.Envelopes.Select(envelope => envelope.Vertices.Length));
        Assert.Equal(["Normal", "Long range"], type.Tables.CruiseSettings.ToArray());
        Assert.Equal([9000, 10400], type.Tables.Climb?.Keys(0).ToArray() ?? []);
        Assert.Equal(["VR [kt]"], type.Tables.Speeds["15"].ValueNames.ToArray());
        Assert.Equal(["VREF [kt]"], type.Tables.Speeds["40"].ValueNames.ToArray());
        Assert.True(type.Tables.Takeoff.ContainsKey("15")
            && type.Tables.Landing.ContainsKey("40")
            && type.Tables.Descent is not null
            && type.Tables.Holding is not null);
    }

    [Fact]
    public void Aircraft_have_their_moment_from_arm_or_moment()
    {
        Assert.Equal(6100 * 221.5, Week.Fleet["X-SKUA"].BasicEmptyMoment.GetValueOrDefault().Value);
        Assert.Equal(421400, Week.Fleet["X-PLOV"].BasicEmptyMoment.GetValueOrDefault().Value);
        Assert.Equal((0.02, new LocalDate(2027, 2, 28), true, Duration.FromMinutes(60)),
            (Week.Fleet["X-SKUA"].BurnBias, Week.Fleet["X-SKUA"].AnnualDue, Week.Fleet["X-SKUA"].AutopilotForOnePilot, Week.Fleet["X-SKUA"].Oxygen));
    }

    [Fact]
    public void What_the_newer_columns_say_is_read()
    {
        var (skua, plover) = (Week.Fleet["X-SKUA"], Week.Fleet["X-PLOV"]);
        Assert.Equal((true, new LocalDate(2026, 11, 20), null, null),
            (skua.QuickDonningMasks, skua.VorCheckedOn, plover.QuickDonningMasks, plover.VorCheckedOn));
        Assert.Equal(["XBEL", "xand"], Week.Logged[0].Airports.ToArray());
        Assert.Empty(Week.Logged[1].Airports);
        Assert.Equal(["with allowances", "", "stated"], Week.Manifest.Select(line => line.WeightBasis));
    }

    [Fact]
    public void Airports_are_read_with_hours_fuel_and_approach()
    {
        var airport = Week.Airports["XAND"];
        Assert.Equal([FuelKind.JetA1, FuelKind.Avgas], (airport.FuelsSold ?? []).ToArray());
        Assert.Equal((new LocalTime(6, 0), new LocalTime(22, 0), new LocalTime(22, 0), new LocalTime(6, 0)),
            (airport.Opens, airport.Closes, airport.QuietFrom, airport.QuietTo));
        Assert.Equal(("ILS", new Feet(200), 800), (airport.ApproachKind, airport.ApproachMinimum, airport.ApproachVisibilityM));
        Assert.Equal(new GeoPoint(42.5, -71.25), Week.Airports["XBEL"].Position);
        Assert.True(Week.Airports["XCOR"].FuelsSold is { IsEmpty: true });
        Assert.Equal("none", Week.Airports["XCOR"].ApproachKind);
    }

    [Fact]
    public void What_was_flown_is_read_across_midnight()
    {
        Assert.Equal((Instant.FromUtc(2026, 12, 4, 11, 0), Instant.FromUtc(2026, 12, 4, 20, 15)),
            (Week.Logged[0].DutyOn.GetValueOrDefault(), Week.Logged[0].DutyOff.GetValueOrDefault()));
        Assert.Equal(Duration.FromMinutes(210), Week.Logged[1].FlightTime);
        Assert.Equal(Instant.FromUtc(2026, 12, 6, 4, 0), Week.Logged[1].DutyOff);
    }

    [Fact]
    public void Winds_are_placed_and_timed()
    {
        Assert.Null(Week.Winds[0].Place);
        Assert.Equal(Instant.FromUtc(2026, 12, 7, 6, 0), Week.Winds[0].From);
        Assert.Equal(41 + (50 / 60.0), Week.Winds[1].Place.GetValueOrDefault().LatitudeDeg, 1e-12);
        Assert.Equal(Instant.FromUtc(2026, 12, 8, 6, 0), Week.Winds[1].To);
        Assert.Equal(new GeoPoint(41.5, -70.25), Week.Winds[2].Place);
        Assert.Equal(0, Week.Winds[2].WindFrom.Value);
    }

    [Fact]
    public void The_bytes_of_each_book_are_hashed()
    {
        Assert.Equal(["operator.xlsx", "week.xlsx"], Week.Inputs.Select(input => input.Name));
        Assert.All(Week.Inputs, input => Assert.Matches("^[0-9a-f]{64}$", input.Sha256));
    }
}
