using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests;

/// <summary>
/// Every check, every input that it says it needs: a leg for which it passes, and the same leg without that input, for which it must not pass. Where a
/// documented value stands in for an empty cell the list says so with the reason. A check, or an input of one, that is not in the table fails the first test.
/// </summary>
public sealed class MissingInputTests
{
    private const string ThePlan = "the plan";

    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static Forecasts Fair { get; } = Ask.Fair("XAND", "XBEL", "XDUN");

    /// <summary>A leg in its week with what is forecast.</summary>
    private sealed record Situation(LegPlan.Planned Plan, Func<PlannedWeek, PlannedWeek> Week, Forecasts Forecasts, string Rules)
    {
        public ImmutableArray<Finding> Ask(string check) =>
            [.. WeekChecker.CheckLeg(Plan, Week(SomePlans.Week(Plan)), RuleSet.Load(Rules), Forecasts).Findings.Where(finding => finding.Check == check)];

        public Situation With(Func<LegPlan.Planned, LegPlan.Planned> change) => this with { Plan = change(Plan) };

        public Situation Where(Func<PlannedWeek, PlannedWeek> change) => this with { Week = week => change(Week(week)) };

        public Situation Input(Func<OperatorWeek, OperatorWeek> change) => Where(week => week with { Input = change(week.Input) });

        public Situation Operator(Func<Operator, Operator> change) => Input(input => input with { Operator = change(input.Operator) });

        public Situation Type(Func<AircraftType, AircraftType> change) => With(plan => plan with { Type = change(plan.Type) });

        public Situation Aircraft(Func<Aircraft, Aircraft> change) => With(plan => plan with { Aircraft = change(plan.Aircraft) });

        public Situation From(Func<Airport, Airport> change) => With(plan => plan with { From = change(plan.From) });

        public Situation To(Func<Airport, Airport> change) => With(plan => plan with { To = change(plan.To) });

        public Situation Captain(Func<CrewMember, CrewMember?> change) =>
            With(plan => plan with { Captain = plan.Captain is { } captain ? change(captain) : null });

        public Situation Without(string airport) =>
            this with { Forecasts = Forecasts with { ByAirport = Forecasts.ByAirport.Remove(airport), Issues = Forecasts.Issues.Remove(airport) } };
    }

    private sealed record Case(string Check, string Need, Situation Passes, Func<Situation, Situation> Lacks);

    private static Situation Good(Func<LegPlan.Planned, LegPlan.Planned>? change = null, string rules = "us-charter") =>
        new(change is null ? Leg : change(Leg), week => week, Fair, rules);

    private static Situation Visual { get; } = Good(plan => plan with { Rules = FlightRules.Vfr });

    private static Situation WithSecond { get; } = Good(plan => plan with { Leg = plan.Leg with { SecondPilot = "DEF" }, SecondPilot = SomePlans.Pilot("DEF") })
        .Input(input => input with { Logged = [.. input.Logged, SomePlans.Logged("DEF", new LocalDate(2026, 1, 1), 1)] });

    /// <summary>Two pilots, the captain with 9 h 15 min in the 24 hours: more than one may fly, less than two.</summary>
    private static Situation LongDay { get; } = WithSecond.Input(input => input with
    {
        Logged = [.. input.Logged, SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-1), 8) with { DutyOn = Leg.Times.OffBlocks - Duration.FromHours(22),
            DutyOff = Leg.Times.OffBlocks - Duration.FromHours(12) }],
    });

    private static Situation NoAlternate { get; } = Good(plan => plan with { Alternates = [], Leg = plan.Leg with { Alternate = "" } });

    private static Situation High { get; } = Good(plan => plan with { Profile = SomePlans.Profile(plan.Route, 24_000) });

    /// <summary>The leg over a sea: land at both airports only, so that the middle lies beyond gliding reach with vests not enough to say so.</summary>
    private static Situation OverSea { get; } = High.Type(type => type with { GlideRatio = 60 }).Input(input => input with
    {
        Land = [SomePlans.Square("West", 40, 42, -41, -39), SomePlans.Square("East", 40, 42, -37, -35)],
    });

    private static Situation Night { get; } =
        Good(plan => plan with { Daylight = plan.Daylight with { Night = Duration.FromMinutes(30), IsNightLanding = true, IsNightTakeoff = true } });

    /// <summary>The same hours later, so that the sun is down all the time.</summary>
    private static Situation DeepNight { get; } = Good(plan => plan.Later(Duration.FromHours(15)));

    private static Situation ByRunway(Func<RunwayUse, RunwayUse> change) =>
        Good(plan => plan with
        {
            Departure = new RunwayResult.Computed(change(SomePlans.Use())),
            Arrival = new RunwayResult.Computed(change(SomePlans.Use()))
        });

    private static Situation NoRunway(Situation situation) =>
        situation.With(plan => plan with
        {
            Departure = new RunwayResult.NotComputed("there is no table"),
            Arrival = new RunwayResult.NotComputed("there is no table")
        });

    private static Situation Runways(Situation situation, Func<RunwayUse, RunwayUse> change) => situation.With(plan => plan with
    {
        Departure = plan.Departure is RunwayResult.Computed takeoff ? new RunwayResult.Computed(change(takeoff.Use)) : plan.Departure,
        Arrival = plan.Arrival is RunwayResult.Computed landing ? new RunwayResult.Computed(change(landing.Use)) : plan.Arrival,
    });

    private static Situation ColdAir(Situation situation) => Runways(situation, use => use with { IsTemperatureAssumed = true });

    private static Situation StillAir(Situation situation) => Runways(situation, use => use with { IsWindAssumed = true });

    private static Situation Untested(Situation situation, string when) =>
        situation.With(plan => plan with { Load = plan.Load with { Tests = [.. plan.Load.Tests.Where(test => when.Length > 0 && test.When != when)] } });

    private static Situation Assumed(Situation situation, LoadItemKind kind) => situation.With(plan => plan with
    {
        Load = plan.Load with { Items = [.. plan.Load.Items.Select(item => item with { IsAssumed = item.IsAssumed || item.Kind == kind })] },
    });

    private static Situation Unlogged(Situation situation) => situation.Input(input => input with { Logged = [] });

    private static Situation Untimed(Situation situation) => situation.Input(
        input => input with { Logged = [.. input.Logged.Select(row => row with { DutyOn = null, DutyOff = null, FlightTime = Duration.FromHours(1) })] });

    private static LoggedDuty Long { get; } = SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-1), 9) with { Overrun = Duration.FromMinutes(20) };

    private static Situation Overran { get; } = Good().Input(input => input with { Logged = [SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2), Long] });

    private static Case[] Crew(string check) => [new(check, "Crew", Good(), it => it.Captain(_ => null))];

    private static Situation European { get; } = Good(rules: "eu-commercial");

    private static Situation Crossing { get; } = Good(plan =>
        plan with
        {
            To = plan.To with { Country = "Elsewhere" },
            Leg = plan.Leg with
            {
                ManifestSent = plan.Times.OffBlocks - Duration.FromMinutes(120),
                CrewManifestSent = plan.Times.OffBlocks - Duration.FromMinutes(120)
            }
        });

    private static Situation Fogged(string rules) => new(
        Leg with { Leg = Leg.Leg with { TakeoffAlternate = "XDUN" }, From = Leg.From with { ApproachMinimum = new Feet(800) }, To = Leg.To, Profile = Fast },
        week => week,
        Fair.And(Ask.Forecast("XAND", 700, 2000)),
        rules);

    /// <summary>A profile so fast that XDUN, 220 NM off, is within every limit for a takeoff alternate.</summary>
    private static FlightProfile Fast { get; } = Leg.Profile with { Slices = [.. Leg.Profile.Slices.Select(slice => slice with { TrueAirspeedKt = 600 })] };

    private static Situation Warm(bool isAssumed) => Good(plan => plan with
    {
        Aircraft = plan.Aircraft with { IcingProtection = false },
        Profile = plan.Profile with
        {
            Slices = [.. plan.Profile.Slices.Select(
            (slice, index) => slice with { Air = slice.Air with { Temperature = new Celsius(20), TemperatureAssumed = isAssumed && index == 0 } })]
        },
    });

    private static Notice RunwayClosed { get; } = new()
    {
        Subject = "XBEL 27",
        Effect = NoticeEffect.RunwayClosed,
        Text = "closed",
        From = Some.Noon - Duration.FromHours(9),
        To = Some.Noon + Duration.FromHours(9),
        Origin = SomePlans.Row("week.xlsx/Notices", 2)
    };

    private static ImmutableArray<ChainStep> Nowhere(ImmutableArray<ChainStep> steps) => [.. steps.Select(step => step with { StandsAt = "" })];

    /// <summary>The duty before the leg reports so early that the day before decides.</summary>
    private static PlannedWeek Early(PlannedWeek week) => week with
    {
        Crew = [.. week.Crew.Select(one => one with { Duties = [.. one.Duties.Select(duty => duty with { Report = duty.Report - Duration.FromHours(4) })] })],
    };

    private static readonly Case[] Cases =
    [
        new("FUEL-04", "Holding table, where the rules name a holding time", Good(plan => plan with { Fuel = plan.Fuel with { Aboard = new Pounds(1900) } },
            "icao-annex-6"), it => it.Type(type => type with { Tables = new PerformanceTables() })),
        new("FUEL-05", "Holding table", Good(plan => plan with { Alternates = [], Fuel = plan.Fuel with { Aboard = new Pounds(1900) } }, "icao-annex-6"),
            it => it.With(plan => plan with { Fuel = plan.Fuel with { Alternate = Pounds.Zero } })),
        new("FUEL-06", "Types: usable fuel", Good(), it => it.Type(type => type with { UsableFuel = null })),
        new("FUEL-08", "Types: fuel", Good(), it => it.Type(type => type with { Fuel = null })),
        new("FUEL-08", "Types: fuel density", Good(), it => it.Type(type => type with { FuelDensity = null })),
        new("FUEL-09", "Airports: fuel", Good(), it => it.With(plan => plan with { Fuel = plan.Fuel with { IsSoldHere = null } })),
        new("FUEL-09", "Legs: fuel aboard, of the first leg", Good(), it => it.With(plan => plan with { Fuel = plan.Fuel with { IsBeforeKnown = false } })),
        new("FUEL-10", "Airports: fuel, at the destination", Good(plan => plan with { Fuel = plan.Fuel with { NeededAfterLanding = new Pounds(400) } }),
            it => it.With(plan => plan with { Fuel = plan.Fuel with { NeededAfterLanding = Pounds.Zero } }).To(to => to with { FuelsSold = null })
                .Where(week => SomePlans.Week([.. week.Legs, SomePlans.Planned(2).Between("XBEL", "XAND").Later(Duration.FromHours(4))]))),
        new("ALT-01", "Bulletins: forecast at the destination", Good(), it => it.Without("XBEL")),
        new("ALT-01", "Airports: approach minimum", Good(), it => it.To(to => to with { ApproachMinimum = null })),
        new("ALT-01", "Airports: approach visibility", Good(), it => it.To(to => to with { ApproachVisibilityM = null })),
        new("ALT-02", "Legs: alternate", Good().Without("XBEL"), it => it.With(plan => plan with { Alternates = [] })),
        new("ALT-02", "else Bulletins: forecast at the destination", NoAlternate, it => it.Without("XBEL")),
        new("ALT-02", "else Airports: instrument approach", NoAlternate, it => it.To(to => to with { ApproachKind = "" })),
        new("ALT-02", "else Airports: approach minimum", NoAlternate, it => it.To(to => to with { ApproachMinimum = null })),
        new("ALT-02", "else Airports: approach visibility", NoAlternate, it => it.To(to => to with { ApproachVisibilityM = null })),
        new("ALT-02", "else Runways",
            (NoAlternate with { Rules = "eu-commercial" })
                .To(to => to with { Runways = [SomePlans.Runway, SomePlans.Runway with { Ident = "18", TrueBearing = TrueDegrees.Of(180) }] }),
            it => it.To(to => to with { Runways = [] })),
        new("ALT-03", "Bulletins: forecast at the alternate", Good(), it => it.Without("XDUN")),
        new("ALT-03", "Bulletins: forecast at the takeoff alternate",
            Good(plan => plan with { Alternates = [], Leg = plan.Leg with { TakeoffAlternate = "XDUN" } }), it => it.Without("XDUN")),
        new("ALT-03", "Airports: approach minimum, where the rules add to it", European,
            it => it.Input(input => input with { Airports = input.Airports.SetItem("XDUN", input.Airports["XDUN"] with { ApproachMinimum = null }) })),
        new("ALT-03", "Airports: approach visibility, where the rules add to it", European,
            it => it.Input(input => input with { Airports = input.Airports.SetItem("XDUN", input.Airports["XDUN"] with { ApproachVisibilityM = null }) })),
        new("ALT-03", "Airports: instrument approach", Good(),
            it => it.Input(input => input with { Airports = input.Airports.SetItem("XDUN", input.Airports["XDUN"] with { ApproachKind = "" }) })),
        new("ALT-04", "Bulletins: forecast at the departure", Good(), it => it.Without("XAND")),
        new("ALT-04", "Airports: approach minimum", Good(), it => it.From(airport => airport with { ApproachMinimum = null })),
        new("ALT-04", "Airports: approach visibility", Good(), it => it.From(airport => airport with { ApproachVisibilityM = null })),
        new("ALT-04", "Airports: takeoff visibility", Good(rules: "eu-commercial"), it => it.From(airport => airport with { TakeoffVisibilityM = null })),
        new("ALT-04", "Legs: takeoff alternate, where a return could not land", Fogged("us-charter"),
            it => it.With(plan => plan with { Leg = plan.Leg with { TakeoffAlternate = "" }, To = plan.To with { Ident = "XAND" }, Alternates = [] })),
        new("ALT-04", "Types: engines", Fogged("eu-commercial"), it => it.Type(type => type with { Engines = null })),
        new("ALT-05", "Airports: instrument approach", Good(), it => it.To(to => to with { ApproachKind = "" })),
        new("ALT-05", "Airports: instrument approach, at the departure", Good(), it => it.From(airport => airport with { ApproachKind = "" })),
        new("ALT-06", "Crew: hours in type", Good(), it => it.Captain(pilot => pilot with { HoursInType = null })),
        new("ALT-07", "Bulletins: forecast", Good(), it => it.Without("XBEL")),
        new("ALT-07", "Bulletins: forecast at the alternate", Good(), it => it.Without("XDUN")),
        new("ALT-07", "Bulletins: forecast at the takeoff alternate",
            Good(plan => plan with { Alternates = [], Leg = plan.Leg with { TakeoffAlternate = "XDUN" } }), it => it.Without("XDUN")),
        new("ALT-07", "Bulletins: time of issue", Good(),
            it =>
                it with { Forecasts = it.Forecasts with { Issues = it.Forecasts.Issues.SetItem("XBEL", it.Forecasts.Issues["XBEL"] with { Issued = null }) } }),
        new("ALT-07", "Bulletins: source", Good(),
            it => it with { Forecasts = it.Forecasts with { Issues = it.Forecasts.Issues.SetItem("XBEL", it.Forecasts.Issues["XBEL"] with { Source = "" }) } }),
        new("ALT-07", "Operator: weather sources", Good(), it => it.Operator(op => op with { WeatherSources = [] })),
        new("WB-01", "Types: zero-fuel maximum weight", Good(), it => it.Type(type => type with { MaximumZeroFuel = null })),
        new("WB-02", "Types: ramp maximum weight", Good(), it => it.Type(type => type with { MaximumRamp = null })),
        new("WB-03", "Types: takeoff maximum weight", Good(), it => it.Type(type => type with { MaximumTakeoff = null })),
        new("WB-04", "Aircraft: arm or moment", Good(), it => Untested(it.Aircraft(aircraft => aircraft with { BasicEmptyMoment = null }), "")),
        new("WB-04", "Stations", Good(), it => Untested(it.Type(type => type with { Stations = [] }), "")),
        new("WB-04", "FuelArms", Good(), it => Untested(it.Type(type => type with { FuelMoments = [] }), "")),
        new("WB-04", "Envelope: takeoff", Good(), it => Untested(it, "takeoff")),
        new("WB-05", "Types: landing maximum weight", Good(), it => it.Type(type => type with { MaximumLanding = null })),
        new("WB-05", "Aircraft: arm or moment", Good(), it => Untested(it.Aircraft(aircraft => aircraft with { BasicEmptyMoment = null }), "")),
        new("WB-05", "Stations", Good(), it => Untested(it.Type(type => type with { Stations = [] }), "")),
        new("WB-05", "FuelArms", Good(), it => Untested(it.Type(type => type with { FuelMoments = [] }), "")),
        new("WB-05", "Envelope: takeoff", Good(), it => Untested(Untested(it, "takeoff"), "during the flight")),
        new("WB-06", "Types: seats, or Stations: seats", Good(), it => it.Type(type => type with { Seats = null, Stations = [] })),
        new("WB-07", "Stations: maximum of a bag station", Good(), it => it.With(plan => plan with { Load =
            plan.Load with { Stations = [.. plan.Load.Stations.Select(load => load with { Station = load.Station with { Maximum = null } })] } })),
        new("WB-08", "Manifest: weight", Good(), it => Assumed(it, LoadItemKind.Passenger)),
        new("WB-08", "Manifest: bags", Good(), it => Assumed(it, LoadItemKind.Bags)),
        new("WB-08", "Manifest: weight basis, or Operator: passenger weights, where the rules ask for allowances", European,
            it => it.Operator(op => op with { PassengerWeights = "" })),
        new("WB-08", "Crew: weight",
            Good(plan => plan with { Load = plan.Load with { Items = [.. plan.Load.Items, plan.Load.Items[0] with { Kind = LoadItemKind.Pilot }] } }),
            it => Assumed(it, LoadItemKind.Pilot)),
        new("WB-09", "Aircraft: weighed on, or weighing due", Good(), it => it.Aircraft(aircraft => aircraft with { WeighedOn = null, WeighingDue = null })),
        new("PERF-01", "Takeoff table", Good(), NoRunway),
        new("PERF-01", "Runways", Good(), NoRunway),
        new("PERF-01", "temperature at the departure", Good(), ColdAir),
        new("PERF-01", "wind at the departure", Good(), StillAir),
        new("PERF-02", "Takeoff table", Good(), NoRunway),
        new("PERF-02", "Runways", Good(), NoRunway),
        new("PERF-02", "temperature at the departure", Good(), ColdAir),
        new("PERF-02", "wind at the departure", Good(), StillAir),
        new("PERF-03", "Landing table", Good(), NoRunway),
        new("PERF-03", "Runways", Good(), NoRunway),
        new("PERF-03", "temperature at the destination", Good(), ColdAir),
        new("PERF-03", "wind at the destination", Good(), StillAir),
        new("PERF-04", "Landing table", Good(), NoRunway),
        new("PERF-04", "Runways", Good(), NoRunway),
        new("PERF-04", "temperature at the destination", Good(), ColdAir),
        new("PERF-04", "wind at the destination", Good(), StillAir),
        new("PERF-04", "Types: certification category, of two engines or more",
            Good(plan => plan with { Alternates = [], Type = plan.Type with { Engines = 2, Certification = CertificationCategory.Normal } }),
            it => it.Type(type => type with { Certification = null })),
        new("PERF-05", "Landing table", Good(), NoRunway),
        new("PERF-05", "Runways", Good(), NoRunway),
        new("PERF-05", "temperature at the destination", Good(), ColdAir),
        new("PERF-05", "wind at the destination", Good(), StillAir),
        new("PERF-05", "Types: wet landing correction",
            ByRunway(use => use with { IsWet = true }).Type(type => type with { Corrections = new RunwayCorrections { LandingWet = 0.1, TakeoffWet = 0.1 } }),
            it => it.Type(type => type with { Corrections = new RunwayCorrections() })),
        new("PERF-06", "wind at the departure", Good(), StillAir),
        new("PERF-06", "wind at the destination", Good(), StillAir),
        new("PERF-06", "Takeoff and Landing table", Good(), NoRunway),
        new("PERF-06", "Runways: surface", Good(), it => Runways(it, use => use with { Runway = use.Runway with { Surface = null } })),
        new("PERF-06", "Types: correction for slope",
            ByRunway(use => use with { Runway = use.Runway with { SlopePercent = 1 } })
                .Type(type => type with { Corrections = new RunwayCorrections { TakeoffUpslopePerPercent = 0.05 } }),
            it => it.Type(type => type with { Corrections = new RunwayCorrections() })),
        new("PERF-06", "Types: correction for a tailwind",
            ByRunway(use => use with { Headwind = new Knots(-3) })
                .Type(type => type with { Corrections = new RunwayCorrections { TakeoffTailwindPerKnot = 0.02, LandingTailwindPerKnot = 0.02 } }),
            it => it.Type(type => type with { Corrections = new RunwayCorrections() })),
        new("PERF-06", "Types: correction for a wet runway",
            ByRunway(use => use with { IsWet = true }).Type(type => type with { Corrections = new RunwayCorrections { LandingWet = 0.1, TakeoffWet = 0.1 } }),
            it => it.Type(type => type with { Corrections = new RunwayCorrections() })),
        new("PERF-07", "Runways", Good(), NoRunway),
        new("PERF-07", "wind at the departure", Good(),
            it => it.With(plan => plan with { Departure = new RunwayResult.Computed(SomePlans.Use() with { IsWindAssumed = true }) })),
        new("PERF-07", "wind at the destination", Good(),
            it => it.With(plan => plan with { Arrival = new RunwayResult.Computed(SomePlans.Use() with { IsWindAssumed = true }) })),
        new("PERF-08", "Airports: lighting, or Runways: lighted", Night,
            it => Runways(it, use => use with { Runway = use.Runway with { Lighted = null } }).From(airport => airport with { Lighting = "" })
                .To(to => to with { Lighting = "" })),
        new("ENR-01", "Land", OverSea, it => it.Input(input => input with { Land = [] })),
        new("ENR-01", "Types: glide ratio", OverSea, it => it.Type(type => type with { GlideRatio = null })),
        new("ENR-02", "Land", OverSea.Type(type => type with { GlideRatio = 10 }), it => it.Input(input => input with { Land = [] })),
        new("ENR-02", "Aircraft: overwater kit", OverSea.Type(type => type with { GlideRatio = 10 }),
            it => it.Aircraft(aircraft => aircraft with { OverwaterKit = "" })),
        new("ENR-03", "Airways: minimum altitude, or AltitudeGrid", Good(),
            it => it.With(plan => plan with { Route = SomePlans.Direct(plan.From, plan.To, minimumFt: null) })),
        new("ENR-04", "Bulletins: forecast at the departure", Visual, it => it.Without("XAND")),
        new("ENR-04", "Bulletins: forecast at the destination", Visual, it => it.Without("XBEL")),
        new("ENR-05", "Types: pressurised", High, it => it.Type(type => type with { Pressurised = null })),
        new("ENR-05", "Aircraft: oxygen", High, it => it.Aircraft(aircraft => aircraft with { Oxygen = null })),
        new("ENR-05", "Aircraft: quick-donning masks, high up in a pressurised cabin",
            Good(plan => plan with { Profile = SomePlans.Profile(plan.Route, 26_000) }),
            it => it.Aircraft(aircraft => aircraft with { QuickDonningMasks = null })),
        new("ENR-06", "Aircraft: icing protection", Good(), it => it.Aircraft(aircraft => aircraft with { IcingProtection = null })),
        new("ENR-06", "Winds: temperature on the way", Warm(false), _ => Warm(true)),
        new("ENR-07", "Bulletins: forecast at the departure", Visual, it => it.Without("XAND")),
        new("ENR-07", "Bulletins: forecast at the destination", Visual, it => it.Without("XBEL")),
        new("ENR-07", "Airports: airspace", (Visual with { Forecasts = Fair.And(Ask.Forecast("XBEL", 900, 4000)) }).To(to => to with { Airspace = "G" }),
            it => it.To(to => to with { Airspace = "" })),
        new("ENR-08", "Types: ceiling", Good(), it => it.Type(type => type with { Ceiling = null })),
        new("ENR-08", "Types: equipment",
            Good(plan => plan with { Type = plan.Type with { Ceiling = new Feet(41_000) }, Profile = SomePlans.Profile(plan.Route, 33_000) }),
            it => it.Type(type => type with { Equipment = "" })),
        new("CREW-01", "Logged", Good(), Unlogged),
        new("CREW-01", "Crew: types, of the second pilot", LongDay,
            it => it.With(plan => plan with { SecondPilot = SomePlans.Pilot("DEF") with { Types = [] } })),
        new("CREW-01", "Crew: seats, of the second pilot", LongDay,
            it => it.With(plan => plan with { SecondPilot = SomePlans.Pilot("DEF") with { MayAssist = null } })),
        new("CREW-02", "Logged", Good(), it => Unlogged(it).With(plan => plan.Later(-Duration.FromHours(2))).Where(week => Early(week))),
        new("CREW-02", "Logged: duty on and off", Good(), it => Untimed(it).Where(week => Early(week))),
        new("CREW-02", "Operator: report", Good(), it => it.Operator(op => op with { Report = null })),
        new("CREW-02", "Operator: release", Good(), it => it.Operator(op => op with { Release = null })),
        new("CREW-03", "Logged", Good(), Unlogged),
        new("CREW-04", "Logged", Overran, Unlogged),
        new("CREW-04", "Logged: overrun, where more was flown than one pilot may", Overran,
            it => it.Input(input => input with { Logged = [.. input.Logged.Select(row => row with { Overrun = null })] })),
        new("CREW-04", "Logged: duty off", Overran,
            it => it.Input(input => input with { Logged = [.. input.Logged.Select(row => row with { DutyOff = null })] })),
        new("CREW-04", "Operator: report", Overran, it => it.Operator(op => op with { Report = null })),
        new("CREW-05", "Logged", Good(), Unlogged),
        .. Crew("CREW-06"),
        new("CREW-06", "Crew: certificate", Good(), it => it.Captain(pilot => pilot with { Certificate = "" })),
        new("CREW-06", "Crew: instrument rating", Good(), it => it.Captain(pilot => pilot with { InstrumentRating = null })),
        new("CREW-06", "Crew: hours", Good(), it => it.Captain(pilot => pilot with { Hours = null })),
        new("CREW-06", "Crew: cross-country hours", Good(), it => it.Captain(pilot => pilot with { CrossCountryHours = null })),
        new("CREW-06", "Crew: night hours", Good(), it => it.Captain(pilot => pilot with { NightHours = null })),
        new("CREW-06", "Crew: instrument hours", Good(), it => it.Captain(pilot => pilot with { InstrumentHours = null })),
        new("CREW-06", "Crew: approaches in 6 months, of the second pilot, under part 91 of the captain", WithSecond,
            it => it.With(plan => plan with { SecondPilot = SomePlans.Pilot("DEF") with { RecentApproaches = null } })),
        .. Crew("CREW-07"),
        new("CREW-07", "Crew: competency check until", Good(), it => it.Captain(pilot => pilot with { CompetencyUntil = null })),
        new("CREW-07", "Crew: instrument check until", Good(), it => it.Captain(pilot => pilot with { InstrumentUntil = null })),
        new("CREW-07", "Crew: line check until", Good(), it => it.Captain(pilot => pilot with { LineCheckUntil = null })),
        .. Crew("CREW-08"),
        new("CREW-08", "Crew: third last landing", Good().Captain(pilot => pilot with { ThirdLastNightLanding = null }),
            it => it.Captain(pilot => pilot with { ThirdLastLanding = null })),
        new("CREW-08", "Types: required pilots, without passengers",
            Good(plan => plan with { Purpose = LegPurpose.Ferry, Load = plan.Load with { Passengers = 0 }, Type = plan.Type with { RequiredPilots = 2 } }),
            it => it.Type(type => type with { RequiredPilots = null })),
        new("CREW-08", "Crew: third last night landing", DeepNight, it => it.Captain(pilot => pilot with { ThirdLastNightLanding = null })),
        .. Crew("CREW-09"),
        new("CREW-09", "Crew: medical until", Good(), it => it.Captain(pilot => pilot with { MedicalUntil = null })),
        new("CREW-10", "Types: required pilots", Good(), it => it.Type(type => type with { RequiredPilots = null })),
        new("CREW-10", "Types: seats", Good(), it => it.Type(type => type with { Seats = null })),
        new("CREW-10", "Aircraft: autopilot, with one pilot", Good(), it => it.Aircraft(aircraft => aircraft with { AutopilotForOnePilot = null })),
        new("CREW-11", "Aircraft: home", Good(),
            it => it.Where(week => week with { Aircraft = [.. week.Aircraft.Select(one => one with { Steps = Nowhere(one.Steps) })] })),
        new("CREW-11", "Crew: base", Good(),
            it => it.Where(week => week with { Crew = [.. week.Crew.Select(one => one with { Steps = Nowhere(one.Steps) })] })),
        .. Crew("CREW-12"),
        new("CREW-12", "Crew: types", Good(), it => it.Captain(pilot => pilot with { Types = [] })),
        new("CREW-12", "Crew: seats", Good(), it => it.Captain(pilot => pilot with { MayCommand = null })),
        new("CREW-13", "Operator: report", European, it => it.Operator(op => op with { Report = null })),
        new("CREW-13", "Crew", European, it => it.Captain(_ => null)),
        new("CREW-13", "Crew: base", European, it => it.Captain(pilot => pilot with { Base = "" })),
        new("CREW-14", "Logged", European, Unlogged),
        new("CREW-14", "Logged: duty on and off", European, it => it.Input(input =>
            input with { Logged = [.. input.Logged, SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-3), 2) with { DutyOn = null, DutyOff = null }] })),
        new("CREW-14", "Operator: report", European, it => it.Operator(op => op with { Report = null })),
        new("CREW-14", "Operator: release", European, it => it.Operator(op => op with { Release = null })),
        new("CREW-15", "Logged", European, Unlogged),
        new("CREW-15", "Logged: duty on and off", European,
            it => it.Input(input => input with { Logged = [.. input.Logged.Select(row => row with { DutyOn = null, DutyOff = null })] })),
        new("CREW-15", "Operator: report", European, it => it.Operator(op => op with { Report = null })),
        new("CREW-15", "Operator: release", European, it => it.Operator(op => op with { Release = null })),
        new("CREW-16", "Logged", European, Unlogged),
        new("CREW-16", "Logged: duty on and off", European, it => it.Input(input => input with { Logged =
            [SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-30), 1), .. Enumerable.Range(1, 12)
                .Select(day => SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-day), 1) with { DutyOn = null, DutyOff = null })] })),
        new("CREW-16", "Operator: report", European, it => it.Operator(op => op with { Report = null })),
        new("CREW-16", "Operator: release", European, it => it.Operator(op => op with { Release = null })),
        new("CREW-15", "Crew: base", European, it => it.Captain(pilot => pilot with { Base = "" })),
        new("ACFT-01", "Aircraft: hours", Good(), it => it.Aircraft(aircraft => aircraft with { Hours = null })),
        new("ACFT-01", "Aircraft: next inspection at", Good(), it => it.Aircraft(aircraft => aircraft with { NextInspectionAt = null })),
        new("ACFT-01", "Aircraft: annual due", Good(), it => it.Aircraft(aircraft => aircraft with { AnnualDue = null })),
        new("ACFT-02", "Aircraft: altimeter-static due", Good(), it => it.Aircraft(aircraft => aircraft with { AltimeterStaticDue = null })),
        new("ACFT-02", "Aircraft: transponder due", Good(), it => it.Aircraft(aircraft => aircraft with { TransponderDue = null })),
        new("ACFT-02", "Aircraft: ELT due", Good(), it => it.Aircraft(aircraft => aircraft with { ElectronicLocatorDue = null })),
        new("ACFT-05", "Aircraft: VOR checked on", Good(), it => it.Aircraft(aircraft => aircraft with { VorCheckedOn = null })),
        new("ACFT-03", "Aircraft: status", Good(), it => it.Aircraft(aircraft => aircraft with { Status = "" })),
        new("ACFT-04", "Aircraft: IFR equipment", Good(), it => it.Aircraft(aircraft => aircraft with { InstrumentEquipment = null })),
        new("ACFT-04", "Aircraft: night equipment", Night, it => it.Aircraft(aircraft => aircraft with { NightEquipment = null })),
        new("ACFT-04", "Aircraft: second power source", Good(), it => it.Aircraft(aircraft => aircraft with { SecondPowerSource = null })),
        new("ACFT-04", "Aircraft: engine trend monitoring", Good(), it => it.Aircraft(aircraft => aircraft with { TrendMonitoring = null })),
        new("ACFT-04", "Types: equipment, high up", High, it => it.Type(type => type with { Equipment = "" })),
        new("ACFT-04", "Aircraft: TAWS", Good(), it => it.Aircraft(aircraft => aircraft with { TerrainWarning = "" })),
        new("ADM-01", "Operator: briefing topics", Good(), it => it.Operator(op => op with { BriefingTopics = [] })),
        new("ADM-01", "Land", Good().Operator(op => op with { BriefingTopics = op.BriefingTopics.Remove("ditching") }),
            it => it.Input(input => input with { Land = [] })),
        new("ADM-02", "Legs: flight plan, or Operator: flight following", Good(), it => it.Operator(op => op with { FlightFollowing = "" })),
        new("ADM-03", "Airports: country", Crossing, it => it.To(to => to with { Country = "" })),
        new("ADM-03", "Legs: manifest sent", Crossing, it => it.With(plan => plan with { Leg = plan.Leg with { ManifestSent = null } })),
        new("ADM-03", "Legs: crew manifest sent, on a leg for hire", Crossing,
            it => it.With(plan => plan with { Leg = plan.Leg with { CrewManifestSent = null } })),
        new("ADM-08", "Logged", Good(), Unlogged),
        new("ADM-08", "Logged: airports", Good(), it => it.Input(input => input with { Logged = [.. input.Logged.Select(row => row with { Airports = [] })] })),
        new("ADM-04", "Airports: opens", Good().To(to => to with { Opens = new LocalTime(6, 0), Closes = new LocalTime(22, 0) }),
            it => it.To(to => to with { Opens = null })),
        new("ADM-04", "Airports: closes", Good().To(to => to with { Opens = new LocalTime(6, 0), Closes = new LocalTime(22, 0) }),
            it => it.To(to => to with { Closes = null })),
        new("ADM-05", "every sheet", Good(), it => it.With(plan => plan with { Leg =
            plan.Leg with { Doubts = [new Problem { State = State.Fail, Cell = "week.xlsx/Legs/R2", Text = "a cell could not be read." }] } })),
        new("ADM-07", "Runways", Good().Input(input => input with { Notices = [RunwayClosed] }).To(
            to => to with { Runways = [SomePlans.Runway, SomePlans.Runway with { Ident = "27" }] }), NoRunway),
    ];

    /// <summary>Inputs for which something documented stands in, with the reason; the answer may stay a pass.</summary>
    private static readonly (string Check, string Need, string Reason)[] StandIns =
    [
        ("FUEL-03", "Legs: alternate", "without an alternate the reserve is that to the destination; that one is missing is the answer of ALT-02"),
        ("FUEL-04", "Operator: contingency", "the share of the rules holds; 14 CFR names none, and the answer is then not applicable"),
        ("FUEL-07", "Operator: landing fuel", "an operator need not set one; the answer is then not applicable"),
        ("FUEL-08", "Aircraft: fuel burn bias", "the column says: empty for nothing more"),
        ("FUEL-09", "Notices", "no row is no notice"),
        ("WB-01", "Manifest", "no row is nobody aboard; a weight that is not stated is the answer of WB-08"),
        ("WB-01", "Cargo", "no row is no cargo"),
        ("WB-05", "Envelope: landing, zero fuel", "the takeoff envelope holds, which is not wider; the leg says so among its assumptions"),
        ("WB-06", "Manifest", "no row is nobody aboard"),
        ("WB-07", "Stations: maximum of a row", "a row of seats is limited by its seats"),
        ("WB-07", "Manifest: bags", "a standard weight stands in, and WB-08 says so"),
        ("WB-07", "Cargo", "no row is no cargo"),
        ("PERF-01", "altimeter setting", "the elevation is taken as pressure altitude; the leg says so among its assumptions"),
        ("PERF-02", "altimeter setting", "the elevation is taken as pressure altitude; the leg says so among its assumptions"),
        ("PERF-03", "altimeter setting", "the elevation is taken as pressure altitude; the leg says so among its assumptions"),
        ("PERF-04", "altimeter setting", "the elevation is taken as pressure altitude; the leg says so among its assumptions"),
        ("PERF-05", "altimeter setting", "the elevation is taken as pressure altitude; the leg says so among its assumptions"),
        ("PERF-04", "Bulletins: rain", "no rain forecast is a dry runway; that there is no forecast is the answer of ALT-01 and ALT-07"),
        ("PERF-05", "Bulletins: rain", "no rain forecast is a dry runway; that there is no forecast is the answer of ALT-01 and ALT-07"),
        ("PERF-06", "Runways: slope", "the column says: empty for level"),
        ("PERF-08", "Notices", "no row is no notice"),
        ("ENR-02", "Types: glide ratio", "no reach at all is taken, the stricter"),
        ("ENR-08", "Aircraft: ceiling", "the column says: where lower than the type's"),
        ("ACFT-05", "Types: equipment", "it counts as with VOR and without satellite navigation, the stricter"),
        ("CREW-05", "Logged: duty on and off", "a logged day without times counts as on duty all day, the stricter"),
        ("CREW-11", "Operator: turnaround", "the 45 minutes of the rule file hold"),
        ("ACFT-03", "Aircraft: deferred items", "the column says: empty for none"),
        ("ACFT-03", "Notices", "no row is no notice"),
        ("ADM-04", "Airports: quiet hours", "the column says: empty for none"),
        ("ADM-07", "Notices", "no row is no notice"),
    ];

    public static TheoryData<string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var one in Cases) rows.Add(one.Check, one.Need);
            return rows;
        }
    }

    [Fact]
    public void Every_input_of_every_check_is_in_the_table_once()
    {
        var declared = AllChecks.List.SelectMany(check => check.Needs.Where(need => need != ThePlan).Select(need => $"{check.Id} {need}"))
            .Order(StringComparer.Ordinal);
        var told = Cases.Select(one => $"{one.Check} {one.Need}").Concat(StandIns.Select(one => $"{one.Check} {one.Need}")).Order(StringComparer.Ordinal);
        Assert.Equal(declared, told);
        Assert.All(StandIns, one => Assert.NotEmpty(one.Reason));
        Assert.All(AllChecks.List, check => Assert.NotEmpty(check.Needs));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_check_without_an_input_does_not_pass(string check, string need)
    {
        var one = Assert.Single(Cases, one => one.Check == check && one.Need == need);
        var before = one.Passes.Ask(check);
        Assert.True(before.Any(finding => finding.Verdict == Verdict.Pass) && before[0].Verdict is Verdict.Pass or Verdict.Note,
            $"{check} does not pass with its inputs: {before[0].Verdict} {before[0].Text}");
        var after = one.Lacks(one.Passes).Ask(check);
        Assert.True(after[0].Verdict is Verdict.NotChecked or Verdict.Caution or Verdict.Fail, $"{check} without '{need}': {after[0].Verdict} {after[0].Text}");
        Assert.True(after[0].Verdict != Verdict.NotChecked || after[0].Text.StartsWith("Not checked: ", StringComparison.Ordinal), after[0].Text);
    }

    [Fact]
    public void A_leg_that_could_not_be_planned_passes_nothing()
    {
        var plan = SomePlans.Unplanned(1, Some.Noon);
        var finding = Assert.Single(WeekChecker.CheckLeg(plan, SomePlans.Week(plan), RuleSet.Load("us-charter"), Fair).Findings);
        Assert.Equal((Verdict.Fail, "ADM-05"), (finding.Verdict, finding.Check));
    }
}
