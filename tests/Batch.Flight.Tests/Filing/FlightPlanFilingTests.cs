using Batch.Flight.Filing;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Flight.Tests.Filing;

public sealed class FlightPlanFilingTests
{
    [Fact]
    public void The_message_holds_what_was_planned()
    {
        var plan = Plan("NORRA", alternate: "XCOR");
        var message = FlightPlanFiling.Of(plan, Airports, "Northwind Air");
        var minutes = (int)Math.Round(plan.Times.Air.TotalMinutes, MidpointRounding.AwayFromZero);
        var cruise = Math.Round(plan.Profile.Slices.First(slice => slice.Phase == FlightPhase.Cruise).TrueAirspeedKt, MidpointRounding.AwayFromZero);
        Assert.Equal("(FPL-ABCDE-IN", message.Lines[0]);
        Assert.Equal("-SKUA/L-SGR/S", message.Lines[1]);
        Assert.Equal("-XAND1200", message.Lines[2]);
        Assert.Equal(FormattableString.Invariant($"-N{cruise:0000}F200 DCT NORRA DCT"), message.Lines[3]);
        Assert.Equal(FormattableString.Invariant($"-XBEL{minutes / 60:00}{minutes % 60:00} XCOR"), message.Lines[4]);
        Assert.Equal($"-PBN/B2 DOF/{plan.Times.OffBlocks.ToString("yyMMdd", null)} REG/ABCDE OPR/NORTHWIND AIR PER/B)", message.Lines[5]);
        Assert.Empty(message.Missing);
    }

    // By hand: the fuel at takeoff lasts as long as the flow of the cruise lets it; one pilot and no passenger are aboard.
    [Fact]
    public void Endurance_and_persons_are_kept_apart()
    {
        var plan = Plan("");
        var minutes = (int)Math.Round(plan.Fuel.Takeoff.Value / plan.Profile.CruiseFlow.Value * 60, MidpointRounding.AwayFromZero);
        Assert.Equal(FormattableString.Invariant($"E/{minutes / 60:00}{minutes % 60:00} P/001"), FlightPlanFiling.Of(plan, Airports, "").Supplementary);
    }

    [Theory]
    [InlineData("", "DCT")]
    [InlineData("NORRA TIDES", "DCT NORRA DCT TIDES DCT")]
    [InlineData("NORRA V12 GULLS", "DCT NORRA V12 GULLS DCT")]
    [InlineData("4130N03900W 4130N03800W", "DCT 4130N03900W 4130N03800W DCT")]
    [InlineData("NOR090030", "DCT NOR090030 DCT")]
    public void The_route_is_written_as_item_15_wants_it(string route, string filed) => Assert.Equal(filed, Filed(Plan(route)).Split(' ', 2)[1]);

    // A significant point is a published designator of two to five letters and figures; any other is filed as its place.
    [Fact]
    public void A_point_of_the_operators_own_is_filed_as_its_place()
    {
        var plan = Plan("NORRA");
        var camp = plan.Route.Segments[0].To with { Ident = "CAMP-7" };
        plan = plan with { Route = plan.Route with { Segments = [plan.Route.Segments[0] with { To = camp }, plan.Route.Segments[1] with { From = camp }] } };
        Assert.Equal($"DCT {Batch.Flight.Route.CoordinateText.Write(camp.Position)} DCT", Filed(plan).Split(' ', 2)[1]);
    }

    [Fact]
    public void A_step_to_another_level_stands_behind_its_point()
    {
        var words = Filed(Plan("TIDES/N0200F220 OTTER")).Split(' ');
        Assert.Matches("^N0[0-9]{3}F200$", words[0]);
        Assert.Equal("DCT", words[1]);
        Assert.Matches("^TIDES/N0[0-9]{3}F220$", words[2]);
        Assert.Equal(["DCT", "OTTER", "DCT"], words[3..]);
    }

    [Fact]
    public void A_step_that_is_not_flown_is_not_filed() =>
        Assert.Equal(["DCT", "TIDES", "DCT", "OTTER", "DCT"], Filed(Plan("TIDES/N0200F180 OTTER")).Split(' ')[1..]);

    [Fact]
    public void Below_the_flight_levels_stands_an_altitude()
    {
        var plan = Plan("") with { Planning = SomePlans.Rules with { FlightLevelsFrom = new Feet(20_001) } };
        Assert.Matches("^N0[0-9]{3}A200 DCT$", Filed(plan));
    }

    [Fact]
    public void What_the_books_do_not_hold_is_blank_and_named()
    {
        var plan = Plan("");
        plan = plan with { Type = plan.Type with { Equipment = "", Designator = "", MaximumTakeoff = null } };
        var message = FlightPlanFiling.Of(plan, Airports, "");
        Assert.Equal("-ZZZZ/____-____", message.Lines[1]);
        Assert.Contains("TYP/SKUA 9", message.Lines[5], StringComparison.Ordinal);
        Assert.Equal(2, message.Missing.Length);
    }

    [Fact]
    public void A_place_without_indicator_stands_in_item_18()
    {
        var plan = Plan("");
        plan = plan with { Leg = plan.Leg with { From = "XA12" } };
        var message = FlightPlanFiling.Of(plan, Airports, "");
        Assert.Equal("-ZZZZ1200", message.Lines[2]);
        Assert.Contains("DEP/XA12 4100N04000W", message.Lines[5], StringComparison.Ordinal);
    }

    // ICAO Doc 4444, appendix 2, item 10a (from memory): with R the levels of performance-based navigation stand in item 18 behind PBN/; with Z other equipment
    // behind COM/, NAV/ or DAT/.
    [Theory]
    [InlineData("SDFGRY/LB1", 1, "PBN/")]
    [InlineData("SDFGRY/LB1 PBN/B2", 0, "")]
    [InlineData("SDFGY/LB1 PBN/B2", 1, "R")]
    [InlineData("SDFGYZ/LB1", 1, "COM/, NAV/ or DAT/")]
    [InlineData("SDFGYZ/LB1 NAV/SBAS", 0, "")]
    public void Equipment_and_item_18_go_together(string equipment, int missing, string named)
    {
        var message = FlightPlanFiling.Of(Plan("") is var plan ? plan with { Type = plan.Type with { Equipment = equipment } } : null!, Airports, "");
        Assert.Equal(missing, message.Missing.Length);
        if (missing > 0) Assert.Contains(named, message.Missing[0], StringComparison.Ordinal);
    }

    // ICAO Doc 4444, appendix 2, item 18 (from memory): STS, PBN, NAV, COM, DAT, SUR, DEP, DEST, DOF, REG, EET, SEL, TYP, CODE, DLE, OPR, ORGN, PER, ALTN,
    // RALT, TALT, RIF, RMK; no hyphen inside.
    [Fact]
    public void Words_of_the_types_sheet_stand_at_their_place_in_item_18()
    {
        var plan = Plan("");
        plan = plan with { Type = plan.Type with { Equipment = "SDGR/S CODE/A-12BC PBN/B2 RMK/TCAS EQUIPPED" } };
        Assert.Equal($"-PBN/B2 DOF/{plan.Times.OffBlocks.ToString("yyMMdd", null)} REG/ABCDE CODE/A 12BC PER/B RMK/TCAS EQUIPPED)",
            FlightPlanFiling.Of(plan, Airports, "").Lines[5]);
    }

    private static readonly IReadOnlyDictionary<string, Airport> Airports = Some.Week([]).Airports;

    private static string Filed(LegPlan.Planned plan) => FlightPlanFiling.Of(plan, Airports, "").Route;

    private static LegPlan.Planned Plan(string route, string alternate = "")
    {
        var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 300, alternate: alternate) with { Route = route }]) with
        {
            Fixes = Some.Fixes,
            Airways = Some.Airways.ToImmutableSortedDictionary(airway => airway.Name, airway => airway)
        };
        week = week with
        {
            Types = week.Types.SetItem("Skua 9",
            Some.WeekType with { Designator = "SKUA", Equipment = "SGR/S PBN/B2", ApproachCategory = "B", MaximumTakeoff = new Pounds(9000) })
        };
        return Assert.IsType<LegPlan.Planned>(Some.Planned(week).Legs[0]);
    }
}
