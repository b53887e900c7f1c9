using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Runway;

public sealed class RunwayPlannerTests
{
    private static readonly RunwayRequest Plain = Some.RunwayRequest;

    [Fact]
    public void On_a_calm_level_paved_day_the_distance_is_that_of_the_table()
    {
        var use = Use(RunwayPlanner.Takeoff(Plain));
        Assert.Equal(1450, use.TableDistance.Value, 6);
        Assert.Equal(725, use.TableRoll.Value, 6);
        Assert.Empty(use.Factors);
        Assert.Equal(1450, use.Required.Value, 6);
        Assert.Equal(550, use.Margin.Value, 6);
        Assert.True(use.Fits);
        Assert.Equal("10", use.Flap);
        Assert.Empty(use.Assumptions);
    }

    [Fact]
    public void Half_of_a_headwind_is_credited()
    {
        var use = Use(RunwayPlanner.Takeoff(Plain with { Air = Some.Surface(90, 10, 20) }));
        Assert.Equal("09", use.Runway.Ident);
        Assert.Equal(10, use.Headwind.Value, 9);
        Assert.Equal(1450 * 0.95, use.Required.Value, 6);
        Assert.Equal("10 kt headwind, half credited", Assert.Single(use.Factors).Name);
    }

    [Fact]
    public void One_and_a_half_times_a_tailwind_is_charged()
    {
        var use = Use(RunwayPlanner.Landing(Plain with { Air = Some.Surface(90, 4, 20), NamedRunway = "27" }));
        Assert.Equal(-4, use.Headwind.Value, 9);
        Assert.True(use.IsNamed);
        Assert.Equal(1450 * (1 + (6 * 0.04)), use.Required.Value, 6);
        Assert.Equal("4 kt tailwind, taken as 6 kt", Assert.Single(use.Factors).Name);
    }

    [Fact]
    public void Crosswind_is_positive_from_the_right()
    {
        Assert.Equal(10, Use(RunwayPlanner.Takeoff(Plain with { Air = Some.Surface(180, 10, 20), NamedRunway = "09" })).Crosswind.Value, 9);
        Assert.Equal(-10, Use(RunwayPlanner.Takeoff(Plain with { Air = Some.Surface(0, 10, 20), NamedRunway = "09" })).Crosswind.Value, 9);
    }

    [Fact]
    public void Without_a_correction_in_the_book_no_wind_is_credited_and_a_tailwind_is_said()
    {
        var type = Some.RunwayType with { Corrections = new RunwayCorrections() };
        var into = Use(RunwayPlanner.Takeoff(Plain with { Type = type, Air = Some.Surface(90, 10, 20) }));
        Assert.Equal(1450, into.Required.Value, 6);
        Assert.Empty(into.Assumptions);
        var with = Use(RunwayPlanner.Takeoff(Plain with { Type = type, Air = Some.Surface(90, 10, 20), NamedRunway = "27" }));
        Assert.Equal(1450, with.Required.Value, 6);
        Assert.Equal("No tailwind correction in the book: 10 kt of tailwind left out.", Assert.Single(with.Assumptions));
    }

    [Fact]
    public void A_headwind_known_only_from_aloft_shortens_nothing_and_a_tailwind_lengthens()
    {
        var aloft = Plain with { Air = Some.Surface(90, 10, 20), IsWindFromAloft = true };
        var into = Use(RunwayPlanner.Takeoff(aloft));
        Assert.Equal("09", into.Runway.Ident);
        Assert.Equal((1450, 10), (Math.Round(into.Required.Value, 6), Math.Round(into.Headwind.Value, 6)));
        Assert.Contains("No surface wind known at XAND: the wind aloft was taken, its headwind not credited.", into.Assumptions);
        Assert.Equal(1450 * 1.45, Use(RunwayPlanner.Takeoff(aloft with { NamedRunway = "27" })).Required.Value, 6);
    }

    [Fact]
    public void Slope_counts_uphill_for_takeoff_and_downhill_for_landing_only()
    {
        var request = With(Some.Runway("09", 90, 2000) with { SlopePercent = 2 });
        Assert.Equal(1450 * 1.1, Use(RunwayPlanner.Takeoff(request)).Required.Value, 6);
        Assert.Equal(1450, Use(RunwayPlanner.Landing(request)).Required.Value, 6);
        var down = With(Some.Runway("27", 270, 2000) with { SlopePercent = -2 });
        Assert.Equal(1450, Use(RunwayPlanner.Takeoff(down)).Required.Value, 6);
        Assert.Equal(1450 * 1.12, Use(RunwayPlanner.Landing(down)).Required.Value, 6);
        var bare = Use(RunwayPlanner.Takeoff(request with { Type = Some.RunwayType with { Corrections = new RunwayCorrections() } }));
        Assert.Equal("No upslope correction in the book: 2 % upslope left out.", Assert.Single(bare.Assumptions));
    }

    [Fact]
    public void Grass_and_wet_lengthen_the_distance_and_grass_without_a_correction_is_not_computed()
    {
        var grass = With(Some.Runway("09", 90, 3000) with { Surface = RunwaySurface.Grass }) with { IsWet = true };
        var use = Use(RunwayPlanner.Landing(grass));
        Assert.Equal(1450 * 1.25 * 1.15, use.Required.Value, 6);
        Assert.Equal(["grass", "wet"], use.Factors.Select(factor => factor.Name));
        var why = Why(RunwayPlanner.Takeoff(grass with { Type = Some.RunwayType with { Corrections = new RunwayCorrections() } }));
        Assert.Equal("Runway 09 is grass and the Types sheet gives no takeoff correction for grass.", why);
    }

    [Fact]
    public void What_the_book_leaves_open_is_said()
    {
        var request = With(Some.Runway("09", 90, 3000) with { Surface = null }) with
        {
            AltimeterSetting = null,
            IsWet = true,
            Type = Some.RunwayType with { Corrections = new RunwayCorrections() },
            Air = Some.Surface(0, 0, 20) with { WindAssumed = true, TemperatureAssumed = true },
        };
        Assert.Equal(
            [
                "No altimeter setting known at XAND: the elevation was taken as pressure altitude.",
                "No surface wind known at XAND: calm.",
                "No surface temperature known at XAND: the standard atmosphere.",
                "Surface of runway 09 not stated: taken as paved.",
                "No wet takeoff correction in the book: the dry distance holds.",
            ], Use(RunwayPlanner.Takeoff(request)).Assumptions.AsEnumerable());
    }

    [Fact]
    public void The_factor_of_the_rules_comes_last_and_does_not_lengthen_the_corrected_distance()
    {
        var use = Use(RunwayPlanner.Landing(Plain with { Rules = Plain.Rules with { LandingFactor = 1 / 0.7 } }));
        Assert.Equal(1450, use.CorrectedDistance.Value, 6);
        Assert.Equal(1450 / 0.7, use.Required.Value, 6);
        Assert.False(use.Fits);
    }

    [Fact]
    public void The_threshold_elevation_and_the_pressure_make_the_pressure_altitude()
    {
        var use = Use(RunwayPlanner.Takeoff(With(Some.Runway("09", 90, 4000) with { ThresholdElevation = new Feet(2000) })));
        Assert.Equal(2000, use.PressureAltitude.Value, 3);
        Assert.Equal(1650, use.TableDistance.Value, 3);
        var low = Use(RunwayPlanner.Takeoff(Plain with { AltimeterSetting = new Hectopascals(983) }));
        Assert.InRange(low.PressureAltitude.Value, 800, 900);
    }

    [Fact]
    public void Clearway_counts_for_the_distance_and_the_run_must_hold_the_roll()
    {
        var clearway = Use(RunwayPlanner.Takeoff(With(Some.Runway("09", 90, 1000) with { TakeoffDistance = new Feet(1500) })));
        Assert.Equal(1500, clearway.Available.Value);
        Assert.True(clearway.Fits);
        Assert.Equal(50, clearway.Margin.Value, 6);
        var run = Use(RunwayPlanner.Takeoff(With(Some.Runway("09", 90, 700) with { TakeoffDistance = new Feet(1500) })));
        Assert.False(run.Fits);
        Assert.Equal(-25, run.Margin.Value, 6);
        Assert.Equal(6800, Assert.NotNull(run.GreatestWeight).Value, 3);
    }

    [Fact]
    public void A_tabled_accelerate_stop_distance_must_fit_into_that_available()
    {
        // Accelerate-stop 1.5 times the distance over the obstacle: 2,175 ft, with half of 10 kt headwind credited 2,066 ft.
        var table = Some.Table("Takeoff of Skua 9", ["weight [lb]", "pressure altitude [ft]", "temperature [°C]"],
            ["ground roll [ft]", "over obstacle [ft]", "accelerate-stop distance [ft]"],
        [
            .. from weight in new double[] { 6000, 8000 }
               from altitude in new double[] { 0, 8000 }
               from temperature in new double[] { 0, 40 }
               let distance = 1000 + (0.25 * (weight - 6000)) + (0.1 * altitude) + (10 * temperature)
               select Some.Row([weight, altitude, temperature], distance / 2, distance, distance * 1.5),
        ]);
        var type = Some.RunwayType with { Tables = Some.RunwayType.Tables with { Takeoff = Some.Flaps(("10", table)) } };
        RunwayUse On(Batch.Flight.Fleet.Runway runway, double headwindKt) =>
            Use(RunwayPlanner.Takeoff(With(runway) with { Type = type, Air = Some.Surface(90, headwindKt, 20) }));
        var runway = Some.Runway("09", 90, 2000);
        var calm = On(runway, 0);
        Assert.Equal(2175, Assert.NotNull(calm.CorrectedStop).Value, 6);
        Assert.Equal((-175, false), (Math.Round(calm.Margin.Value, 6), calm.Fits));
        Assert.Equal(6000 + ((2000 / 1.5) - 1200) / 0.25, Assert.NotNull(calm.GreatestWeight).Value, 3);
        Assert.Equal(125, On(runway with { AccelerateStop = new Feet(2300) }, 0).Margin.Value, 6);
        var windy = On(runway, 10);
        Assert.Equal(2175 * 0.95, Assert.NotNull(windy.CorrectedStop).Value, 6);
        Assert.Contains(windy.Assumptions,
            said => said.StartsWith("The accelerate-stop distance is corrected as the takeoff distance", StringComparison.Ordinal));
        Assert.Null(Use(RunwayPlanner.Takeoff(With(runway))).CorrectedStop);
        Assert.Null(Use(RunwayPlanner.Landing(With(runway) with { Type = type })).CorrectedStop);
    }

    [Fact]
    public void The_runway_into_the_wind_is_taken_if_it_fits_else_the_one_that_lacks_least()
    {
        var request =
            Plain with { Airport = Plain.Airport with { Runways = [Some.Runway("09", 90, 2000), Some.Runway("27", 270, 1500), Some.Runway("18", 180, 5000)] } };
        Assert.Equal("27", Use(RunwayPlanner.Takeoff(request with { Air = Some.Surface(270, 8, 20) })).Runway.Ident);
        Assert.Equal("18", Use(RunwayPlanner.Takeoff(request)).Runway.Ident);
        Assert.Equal("18",
            Use(RunwayPlanner.Takeoff(request with { Air = Some.Surface(270, 8, 40), Rules = request.Rules with { TakeoffFactor = 1.25 } })).Runway.Ident);
        var none = request with { Rules = request.Rules with { TakeoffFactor = 5 }, Air = Some.Surface(270, 8, 20) };
        Assert.Equal("18", Use(RunwayPlanner.Takeoff(none)).Runway.Ident);
    }

    [Fact]
    public void Closed_and_unlighted_runways_are_passed_over()
    {
        var request =
            Plain with { Airport = Plain.Airport with { Runways = [Some.Runway("09", 90, 3000) with { Lighted = false }, Some.Runway("27", 270, 2000)] } };
        Assert.Equal("09", Use(RunwayPlanner.Takeoff(request)).Runway.Ident);
        Assert.Equal("27", Use(RunwayPlanner.Takeoff(request with { NeedsLights = true })).Runway.Ident);
        var dark = Use(RunwayPlanner.Takeoff(request with { NeedsLights = true, ClosedRunways = ["27"] }));
        Assert.Equal("09", dark.Runway.Ident);
        Assert.Equal("No open runway of XAND is lighted.", Assert.Single(dark.Assumptions));
        Assert.Equal("Every runway of XAND is closed by notice.", Why(RunwayPlanner.Takeoff(request with { ClosedRunways = ["9", "27"] })));
    }

    [Fact]
    public void A_named_runway_that_is_closed_or_unknown_is_not_computed()
    {
        Assert.Equal("Runway 09 of XAND is closed by notice.", Why(RunwayPlanner.Takeoff(Plain with { NamedRunway = "9", ClosedRunways = ["09"] })));
        Assert.Equal("XAND has no runway 13; it has 09, 27.", Why(RunwayPlanner.Takeoff(Plain with { NamedRunway = "13" })));
    }

    [Fact]
    public void Without_runways_or_tables_nothing_is_computed()
    {
        Assert.Equal("The book gives no runways of XAND.", Why(RunwayPlanner.Landing(Plain with { Airport = Some.Xand })));
        Assert.Equal("The book gives no landing table of Skua 9.",
            Why(RunwayPlanner.Landing(Plain with { Type = Some.RunwayType with { Tables = new PerformanceTables() } })));
    }

    [Fact]
    public void Of_several_flaps_the_one_with_the_shortest_distance_is_taken()
    {
        var tables = Some.RunwayType.Tables with
        {
            Takeoff =
            Some.Flaps(("0", Some.DistanceTable("Takeoff, flap 0", 1.2)), ("15", Some.DistanceTable("Takeoff, flap 15", 0.9)))
        };
        var use = Use(RunwayPlanner.Takeoff(Plain with { Type = Some.RunwayType with { Tables = tables } }));
        Assert.Equal("15", use.Flap);
        Assert.Equal(1450 * 0.9, use.Required.Value, 6);
    }

    [Fact]
    public void Beyond_the_table_nothing_is_computed_unless_the_operator_allows_the_edge()
    {
        var hot = Plain with { Air = Some.Surface(0, 0, 45) };
        Assert.Equal("Takeoff of Skua 9 ends at temperature 40 °C; 45 °C was asked.", Why(RunwayPlanner.Takeoff(hot)));
        var edge = Use(RunwayPlanner.Takeoff(hot with { MayUseTableEdge = true }));
        Assert.Equal(1650, edge.Required.Value, 6);
        Assert.Equal("Takeoff of Skua 9 ends at temperature 40 °C; 45 °C was asked: the values at the edge were taken.", Assert.Single(edge.Assumptions));
    }

    [Fact]
    public void Lighter_lower_or_colder_than_the_table_its_lowest_values_hold_and_that_is_said()
    {
        var use =
            Use(RunwayPlanner.Landing(Plain with { Weight = new Pounds(5500), Air = Some.Surface(0, 0, -10), AltimeterSetting = new Hectopascals(1030) }));
        Assert.Equal(1000, use.Required.Value, 6);
        Assert.Equal(3, use.Assumptions.Length);
        Assert.StartsWith("Landing of Skua 9 begins at weight 6,000 lb; 5,500 lb was asked", use.Assumptions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_cold_day_does_not_hide_that_the_weight_is_beyond_the_table() =>
        Assert.Equal("Takeoff of Skua 9 ends at weight 8,000 lb; 8,100 lb was asked.",
            Why(RunwayPlanner.Takeoff(Plain with { Weight = new Pounds(8100), Air = Some.Surface(0, 0, -10) })));

    [Fact]
    public void Speeds_are_those_at_the_weight_without_the_blank_ones()
    {
        var use = Use(RunwayPlanner.Takeoff(Plain));
        Assert.Equal([new NamedSpeed("VR", new Knots(75)), new NamedSpeed("V50", new Knots(86))], use.Speeds.AsEnumerable());
        Assert.Empty(Use(RunwayPlanner.Landing(Plain)).Speeds);
        var light = Use(RunwayPlanner.Takeoff(Plain with { Weight = new Pounds(5900) }));
        Assert.Empty(light.Speeds);
        Assert.Contains("Speeds of Skua 9 begins at weight 6,000 lb; 5,900 lb was asked: no speeds.", light.Assumptions);
    }

    [Fact]
    public void The_greatest_weight_and_the_highest_temperature_are_where_the_distance_fills_the_runway()
    {
        var use = Use(RunwayPlanner.Takeoff(With(Some.Runway("09", 90, 1550))));
        Assert.Equal(7400, Assert.NotNull(use.GreatestWeight).Value, 3);
        Assert.Equal(30, Assert.NotNull(use.HighestTemperature).Value, 3);
        var longer = Use(RunwayPlanner.Takeoff(With(Some.Runway("09", 90, 9000))));
        Assert.Equal(8000, Assert.NotNull(longer.GreatestWeight).Value);
        Assert.Equal(40, Assert.NotNull(longer.HighestTemperature).Value);
        var shorter = Use(RunwayPlanner.Takeoff(With(Some.Runway("09", 90, 900))));
        Assert.Null(shorter.GreatestWeight);
        Assert.Null(shorter.HighestTemperature);
        Assert.False(shorter.Fits);
    }

    [Fact]
    public void A_weight_whose_curve_ends_below_the_field_is_no_greatest_weight()
    {
        var table = Some.Table("Takeoff", ["weight [lb]", "pressure altitude [ft]", "temperature [°C]"], ["ground roll [ft]", "over obstacle [ft]"],
            ([6000, 0, 20], [500, 1000]), ([6000, 8000, 20], [700, 1400]), ([7000, 0, 20], [600, 1200]), ([7000, 2000, 20], [650, 1300]));
        var request = With(Some.Runway("09", 90, 9000) with { ThresholdElevation = new Feet(4000) }) with
        {
            Weight = new Pounds(6000),
            Type = Some.RunwayType with { Tables = new PerformanceTables { Takeoff = Some.Flaps(("", table)) } },
        };
        Assert.Equal(6000, Assert.NotNull(Use(RunwayPlanner.Takeoff(request)).GreatestWeight).Value);
    }

    [Fact]
    public void The_greatest_weight_planned_again_fits_and_one_pound_more_does_not()
    {
        var days = Gen.Select(Gen.Double[1100, 2400], Gen.Double[-2, 2], Gen.Double[-10, 40], Gen.Double[0, 360], Gen.Double[0, 25], Gen.Double[990, 1035],
            Gen.Double[1, 1.6]);
        days.Sample((lengthFt, slope, temperatureC, windFrom, windKt, setting, factor) =>
        {
            var request = With(Some.Runway("09", 90, lengthFt) with { SlopePercent = slope, TakeoffDistance = new Feet(lengthFt + 100) }) with
            {
                Air = Some.Surface(windFrom, windKt, temperatureC),
                AltimeterSetting = new Hectopascals(setting),
                Rules = new RunwayRules { TakeoffFactor = factor, LandingFactor = factor, TakeoffCitation = "a", LandingCitation = "b" },
            };
            foreach (var plan in new[] { RunwayPlanner.Takeoff, (Func<RunwayRequest, RunwayResult>)RunwayPlanner.Landing })
            {
                if (Use(plan(request)).GreatestWeight is not { } greatest) continue;
                Assert.True(Use(plan(request with { Weight = greatest })).Fits);
                if (greatest.Value < 7999) Assert.False(Use(plan(request with { Weight = greatest + new Pounds(1) })).Fits);
            }
        }, iter: 300);
    }

    [Fact]
    public void Heavier_higher_or_hotter_is_never_shorter_where_the_table_rises()
    {
        var steps = Gen.Double[0, 120].Array[27];
        var queries = Gen.Select(steps, Gen.Double[6000, 8000], Gen.Double[0, 8000], Gen.Double[0, 40], Gen.Double[0, 500], Gen.Int[0, 2]);
        queries.Sample((rises, weight, altitude, temperature, more, axis) =>
        {
            var request = With(Some.Runway("09", 90, 9000)) with
            {
                Type = Some.RunwayType with { Tables = new PerformanceTables { Takeoff = Some.Flaps(("", Rising(rises))) } },
                MayUseTableEdge = true,
                AltimeterSetting = null,
            };
            double Required(double lb, double ft, double c) => Use(RunwayPlanner.Takeoff(request with
            {
                Weight = new Pounds(lb),
                Airport = request.Airport with { Elevation = new Feet(ft) },
                Air = Some.Surface(0, 0, c),
            })).Required.Value;
            var worse = axis switch
            {
                0 => Required(weight + more, altitude, temperature),
                1 => Required(weight, altitude + more, temperature),
                _ => Required(weight, altitude, temperature + (more / 50)),
            };
            Assert.True(worse >= Required(weight, altitude, temperature) - 1e-6);
        }, iter: 300);
    }

    // A table that rises on every axis: each cell is the greatest of its lower neighbours plus a step.
    private static PerformanceTable Rising(double[] rises)
    {
        double[] weights = [6000, 7000, 8000], altitudes = [0, 4000, 8000], temperatures = [0, 20, 40];
        var cells = new double[3, 3, 3];
        var rows = new List<(double[], double[])>();
        for (var w = 0; w < 3; w++)
        {
            for (var a = 0; a < 3; a++)
            {
                for (var t = 0; t < 3; t++)
                {
                    var below = Math.Max(w > 0 ? cells[w - 1, a, t] : 1000, Math.Max(a > 0 ? cells[w, a - 1, t] : 1000, t > 0 ? cells[w, a, t - 1] : 1000));
                    cells[w, a, t] = below + rises[(w * 9) + (a * 3) + t];
                    rows.Add(([weights[w], altitudes[a], temperatures[t]], [cells[w, a, t] / 2, cells[w, a, t]]));
                }
            }
        }

        return Some.Table("Takeoff", ["weight [lb]", "pressure altitude [ft]", "temperature [°C]"], ["ground roll [ft]", "over obstacle [ft]"], [.. rows]);
    }

    private static RunwayRequest With(Batch.Flight.Fleet.Runway runway) => Plain with { Airport = Plain.Airport with { Runways = [runway] } };

    private static RunwayUse Use(RunwayResult result) => Assert.IsType<RunwayResult.Computed>(result).Use;

    private static string Why(RunwayResult result) => Assert.IsType<RunwayResult.NotComputed>(result).Why;
}
