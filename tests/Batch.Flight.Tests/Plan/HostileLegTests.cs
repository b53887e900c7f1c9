using System.Collections;
using System.Reflection;
using Batch.Flight.Air;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>
/// Legs at the ends of the earth, of the calendar and of the weather: planned with finite numbers that agree with one another, or unplanned with a reason.
/// </summary>
public sealed class HostileLegTests
{
    private static readonly Airport West = Some.Airport("XWES", 60, 179, 50);
    private static readonly Airport East = Some.Airport("XEAS", 60.5, -178.5, 30);
    private static readonly Airport Pole = Some.Airport("XPOL", 90, 0, 9300);
    private static readonly Airport NearPole = Some.Airport("XNEA", 87.5, 120, 9000);
    private static readonly Airport Antarctic = Some.Airport("XANT", -77.9, 166.7, 20);
    private static readonly Airport DeadSea = Some.Airport("XDEA", 31.3, 35.4, -1240);
    private static readonly Airport High = Some.Airport("XHIG", 41.5, -39, 14_400);
    private static readonly Airport AtAntipode = Some.Airport("XOPP", -41, 140, 100);

    public static TheoryData<string, string, string> Places => new()
    {
        { "XWES", "XEAS", "" },
        { "XEAS", "XWES", "6030N18000E" },
        { "XNEA", "XPOL", "" },
        { "XPOL", "XNEA", "" },
        { "XNEA", "XNEA", "90N000E" },
        { "XANT", "XANT", "79S166E" },
        { "XDEA", "XDEA", "3200N03530E" },
        { "XAND", "XHIG", "" },
        { "XHIG", "XAND", "" },
        { "XAND", "XAND", "" },
        { "XAND", "XAND", "41N040W" },
        { "XAND", "XOPP", "" },
    };

    [Theory]
    [MemberData(nameof(Places))]
    public void Anywhere_on_earth(string from, string to, string route)
    {
        foreach (var level in new Feet?[] { null, new Feet(3000), new Feet(28_000), new Feet(45_000) })
            foreach (var wind in new[] { Some.Reports(0, 0), Some.Reports(300, 60), Some.Reports(90, 400) })
                Sound(Plan(Some.Leg(1, from, to, Some.Noon, alternate: "XAND") with { Route = route, Level = level, IsLevelAuto = level is null }, wind));
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(60)]
    public void However_short(double lengthNm)
    {
        var near = Some.Airport("XNEX", 41, -40 + lengthNm / 60 / Math.Cos(41 * Math.PI / 180), 10);
        foreach (var level in new Feet?[] { null, new Feet(1000), new Feet(28_000) })
            Sound(Plan(Some.Leg(1, "XAND", "XNEX", Some.Noon) with { Level = level, IsLevelAuto = level is null }, Some.Reports(270, 30), near));
    }

    [Theory]
    [InlineData(-80)]
    [InlineData(-20.0001)]
    [InlineData(20)]
    [InlineData(60)]
    public void However_hot_or_cold(double deviationK)
    {
        AirReport[] air = [.. Some.Reports(200, 20)
            .Select(report => report with { Temperature = StandardAtmosphere.TemperatureAt(report.Altitude) + deviationK })];
        foreach (var mayUseEdge in new[] { false, true })
            foreach (var setting in new[] { "Q0870", "Q1085", "A2600", "Q0000" })
                Sound(Plan(Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN"), air, mayUseEdge: mayUseEdge,
                    bulletin: $"METAR XAND 141150Z 27015G90KT 9999 M60/M65 {setting}"));
    }

    [Theory]
    [InlineData("2028-02-29T23:50:00Z", 60)]
    [InlineData("2026-12-31T23:59:00Z", 60)]
    [InlineData("2026-12-21T12:00:00Z", 80)]
    [InlineData("2026-06-21T00:00:00Z", 80)]
    [InlineData("2026-03-08T07:00:00Z", 41)]
    [InlineData("2035-01-01T00:00:00Z", 41)]
    [InlineData("1999-12-31T23:00:00Z", 41)]
    public void At_any_time(string offBlocks, double latitudeDeg)
    {
        var at = NodaTime.Text.InstantPattern.General.Parse(offBlocks).Value;
        var from = Some.Airport("XFRM", latitudeDeg, -40, 100) with { Zone = DateTimeZoneProviders.Tzdb["America/New_York"] };
        var to = Some.Airport("XTWO", latitudeDeg - 2, -36, 100) with { Zone = DateTimeZoneProviders.Tzdb["Pacific/Apia"] };
        var plan = Assert.IsType<LegPlan.Planned>(Plan(Some.Leg(1, "XFRM", "XTWO", at), Some.Reports(270, 30), from, to));
        Sound(plan);
        Assert.Equal(plan.Times.Landing - plan.Times.Takeoff, plan.Profile.Time);
        Assert.Equal(at.InUtc().Year is < 2025 or > 2030, plan.Assumptions.Any(assumption => assumption.Contains("Magnetic Model", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_leg_on_a_day_outside_the_magnetic_model_is_cautioned_at_its_cell()
    {
        var leg = Some.Leg(1, "XAND", "XBEL", Instant.FromUtc(2030, 1, 2, 9, 0)) with { Origin = SomePlans.Row("week.xlsx/Legs", 2) };
        var problem = Assert.Single(new WeekPlanner(Some.Week([leg, leg with { OffBlocks = Some.Noon }]), (_, _) => SomePlans.Rules).Problems);
        Assert.Equal(State.Caution, problem.State);
        Assert.Contains("2030-01-02", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Close_to_a_magnetic_pole_the_compass_is_said_to_be_of_no_use()
    {
        var plan = Plan(Some.Leg(1, "XNEA", "XPOL", Some.Noon), Some.Reports(0, 0));
        Assert.Contains(Assert.IsType<LegPlan.Planned>(plan).Assumptions,
            assumption => assumption.StartsWith("Close to a magnetic pole", StringComparison.Ordinal) && assumption.Contains("XPOL", StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_table_leaves_out_below_the_sea_is_said() =>
        Assert.Contains(
            Assert.IsType<LegPlan.Planned>(Plan(Some.Leg(1, "XDEA", "XDEA", Some.Noon) with { Route = "3200N03530E" }, Some.Reports(0, 0))).Notes,
            note => note.StartsWith("The departure lies 1,240 ft below", StringComparison.Ordinal));

    [Fact]
    public void A_headwind_above_the_airspeed_is_named_with_its_place()
    {
        var plan = Assert.IsType<LegPlan.Unplanned>(Plan(Some.Leg(1, "XAND", "XBEL", Some.Noon), Some.Reports(90, 400)));
        Assert.Contains("leaves no ground speed", plan.Why, StringComparison.Ordinal);
        Assert.Contains("XAND", plan.Where, StringComparison.Ordinal);
    }

    private static LegPlan Plan(Leg leg, IEnumerable<AirReport> winds, params Airport[] more) => Plan(leg, winds, mayUseEdge: true, more: more);

    private static LegPlan Plan(Leg leg, IEnumerable<AirReport> winds, bool mayUseEdge, string bulletin = "", params Airport[] more)
    {
        var week = Some.Week([leg], [Some.Passenger(PersonCategory.Adult, 180)], winds);
        week = week with
        {
            Operator = week.Operator with { MayUseTableEdge = mayUseEdge },
            Airports = week.Airports.SetItems(new[] { West, East, Pole, NearPole, Antarctic, DeadSea, High, AtAntipode }.Concat(more)
                .Select(airport => KeyValuePair.Create(airport.Ident,
                    airport with { FuelsSold = [FuelKind.JetA1], Runways = [Some.Runway("09", 90, 4000), Some.Runway("27", 270, 4000)] }))),
            Types = week.Types.SetItem("Skua 9",
                Some.WeekType with { Tables = Some.WeekType.Tables with { Takeoff = Some.Flaps(("10", Some.DistanceTable("Takeoff of Skua 9"))) } }),
            Bulletins = bulletin.Length == 0 ? [] : [new RawBulletin(bulletin, Some.Noon, Origin.None)],
        };
        return Some.Planned(week).Legs[0];
    }

    private static void Sound(LegPlan plan)
    {
        Finite(plan, plan.GetType().Name, []);
        switch (plan)
        {
            case LegPlan.Unplanned unplanned:
                Assert.NotEmpty(unplanned.Why);
                break;
            case LegPlan.Planned planned:
                Assert.True(planned.Fuel.Trip.Value > 0 && planned.Profile.Time > Duration.Zero);
                Assert.Equal(planned.Profile.Distance.Value, planned.Log.Sum(line => line.Distance.Value), 0.001);
                Assert.All(planned.Log.Zip(planned.Log.Skip(1)),
                    pair => Assert.True(pair.Second.Over >= pair.First.Over && pair.Second.Remaining <= pair.First.Remaining));
                Finite(LegWorking.Of(planned), "working", []);
                break;
        }
    }

    // Every number reachable from an object, and where it is.
    private static void Finite(object? value, string where, HashSet<object> seen)
    {
        switch (value)
        {
            case null or string or Instant or Duration or LocalDate or DateTimeZone or Type or Delegate:
                return;
            case double number:
                Assert.True(double.IsFinite(number), FormattableString.Invariant($"{where} is {number}"));
                return;
            case PerformanceTable or PerformanceTables or AircraftType: // a key that a table does not depend on is NaN
                return;
            case IEnumerable items:
                if (value.GetType() is { IsValueType: true } type && type.GetProperty("IsDefault")?.GetValue(value) is true) return;
                var index = 0;
                foreach (var item in items) Finite(item, FormattableString.Invariant($"{where}[{index++}]"), seen);
                return;
        }

        if (value.GetType().Namespace?.StartsWith("Batch.", StringComparison.Ordinal) != true || value.GetType().IsEnum) return;
        if (!value.GetType().IsValueType && !seen.Add(value)) return;
        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
            Finite(property.GetValue(value), $"{where}.{property.Name}", seen);
    }
}
