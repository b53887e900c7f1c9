using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Flight.Week;

namespace Batch.Testing;

/// <summary>
/// A planned leg with every figure set by hand, independent of the planner: XAND to XBEL eastbound at 15,000 ft under IFR, charter, by day, with everything
/// just right. Tests change one thing of it with <c>with</c>.
/// </summary>
public static class SomePlans
{
    /// <summary>Name of the type.</summary>
    public const string TypeName = "Skua 9";

    /// <summary>The day of the leg.</summary>
    public static readonly LocalDate Date = Some.Day;

    /// <summary>Column letters of the Legs sheet by field, for cells in findings.</summary>
    private static readonly ImmutableDictionary<string, string> LegColumns = ImmutableDictionary<string, string>.Empty
        .Add(nameof(Leg.OffBlocks), "D").Add(nameof(Leg.Aircraft), "E").Add(nameof(Leg.From), "F").Add(nameof(Leg.To), "G").Add(nameof(Leg.Alternate), "H")
        .Add(nameof(Leg.Route), "I").Add(nameof(Leg.Level), "J").Add(nameof(Leg.Captain), "K").Add(nameof(Leg.SecondPilot), "L").Add(nameof(Leg.FuelPlan), "M")
        .Add(nameof(Leg.FuelAboard), "N").Add(nameof(Leg.DepartureRunway), "O").Add(nameof(Leg.ArrivalRunway), "P");

    /// <summary>A row of a sheet whose columns are not named.</summary>
    public static Origin Row(string sheet, int row) => new(sheet, row, ImmutableDictionary<string, string>.Empty);

    /// <summary>A single-engine turboprop, pressurised, nine seats.</summary>
    public static AircraftType Type() => new()
    {
        Name = TypeName,
        Engine = EngineKind.Turboprop,
        Engines = 1,
        Fuel = FuelKind.JetA1,
        FuelDensity = 6.7,
        RequiredPilots = 1,
        Seats = 9,
        Pressurised = true,
        Ceiling = new Feet(30_000),
        MaximumRamp = new Pounds(9040),
        MaximumTakeoff = new Pounds(9000),
        MaximumLanding = new Pounds(8600),
        MaximumZeroFuel = new Pounds(8000),
        UsableFuel = new Pounds(2000),
        TaxiFuel = new Pounds(40),
        GlideRatio = 15,
        Equipment = "SDGRWY/LB1",
        Stations = [Front, Rear, Hold],
        FuelMoments = [new FuelMoment(new Pounds(0), PoundInches.Zero), new FuelMoment(new Pounds(2000), new PoundInches(400_000))],
        Tables = new PerformanceTables { Holding = HoldingTable },
        Envelopes = [Box(EnvelopeCase.Takeoff), Box(EnvelopeCase.Landing), Box(EnvelopeCase.ZeroFuel)],
        Origin = Row("operator.xlsx/Types", 2),
    };

    /// <summary>Holding at 360 lb/h whatever the weight and altitude.</summary>
    public static PerformanceTable HoldingTable { get; } = PerformanceTable.TryCreate(
        "Holding of " + TypeName, ["weight [lb]", "pressure altitude [ft]"], ["fuel flow [lb/h]"],
        [new TableRow([double.NaN, 0], [360], Origin.None), new TableRow([double.NaN, 20_000], [360], Origin.None)], out var table, out _)
            && table is not null
        ? table
        : throw new InvalidOperationException("The holding table of the test type is broken");

    /// <summary>Front seats.</summary>
    public static Station Front { get; } = new()
    {
        Name = "Row 1",
        Kind = StationKind.Seat,
        Arm = new Inches(190),
        Seats = 2,
        Maximum = new Pounds(500),
        Origin = Row("operator.xlsx/Stations", 2)
    };

    /// <summary>Rear seats.</summary>
    public static Station Rear { get; } = new()
    {
        Name = "Row 2",
        Kind = StationKind.Seat,
        Arm = new Inches(220),
        Seats = 2,
        Maximum = new Pounds(500),
        Origin = Row("operator.xlsx/Stations", 3)
    };

    /// <summary>Baggage hold.</summary>
    public static Station Hold { get; } =
        new() { Name = "Hold", Kind = StationKind.Bags, Arm = new Inches(250), Maximum = new Pounds(100), Origin = Row("operator.xlsx/Stations", 4) };

    /// <summary>The aircraft.</summary>
    public static Aircraft Aircraft() => new()
    {
        Registration = "X-ABCD",
        Type = TypeName,
        BasicEmptyWeight = new Pounds(5000),
        BasicEmptyMoment = new PoundInches(1_000_000),
        PilotsIncluded = 1,
        WeighedOn = new LocalDate(2025, 3, 10),
        Home = "XAND",
        Hours = 1200,
        NextInspectionAt = 1280,
        AnnualDue = new LocalDate(2027, 3, 31),
        AltimeterStaticDue = new LocalDate(2027, 3, 31),
        TransponderDue = new LocalDate(2027, 3, 31),
        ElectronicLocatorDue = new LocalDate(2027, 3, 31),
        VorCheckedOn = Date.PlusDays(-10),
        AutopilotForOnePilot = true,
        OverwaterKit = "rafts",
        Oxygen = Duration.FromMinutes(180),
        QuickDonningMasks = true,
        IcingProtection = true,
        InstrumentEquipment = true,
        NightEquipment = true,
        SecondPowerSource = true,
        TrendMonitoring = true,
        TerrainWarning = "B",
        Status = "in service",
        Origin = Row("operator.xlsx/Aircraft", 2),
    };

    /// <summary>A captain, qualified for everything.</summary>
    public static CrewMember Pilot(string code = "ABC") => new()
    {
        Code = code,
        Name = "Some Pilot",
        Base = "XAND",
        Types = [TypeName],
        MayCommand = true,
        MayAssist = true,
        MedicalUntil = new LocalDate(2027, 3, 31),
        CompetencyUntil = new LocalDate(2027, 3, 31),
        InstrumentUntil = new LocalDate(2026, 12, 31),
        LineCheckUntil = new LocalDate(2027, 3, 31),
        Hours = 4000,
        HoursInType = 800,
        Certificate = "commercial",
        InstrumentRating = true,
        CrossCountryHours = 2500,
        NightHours = 400,
        InstrumentHours = 300,
        RecentApproaches = 12,
        ThirdLastLanding = new LocalDate(2026, 7, 1),
        ThirdLastNightLanding = new LocalDate(2026, 7, 1),
        Origin = Row("operator.xlsx/Crew", 2),
    };

    /// <summary>An airport with a lighted runway 09 of 4,000 ft, fuel, an approach, no hours.</summary>
    public static Airport Airport(Airport plain) => plain with
    {
        FuelsSold = [FuelKind.JetA1, FuelKind.Avgas],
        Lighting = "yes",
        ApproachKind = "ILS",
        ApproachMinimum = new Feet(200),
        ApproachVisibilityM = 800,
        TakeoffVisibilityM = 800,
        Airspace = "D",
        Country = "Somewhere",
        Runways = [Runway],
        Origin = Row("operator.xlsx/Airports", 2),
    };

    /// <summary>Runway 09, 4,000 ft.</summary>
    public static Runway Runway { get; } = new()
    {
        Ident = "09",
        TrueBearing = TrueDegrees.Of(90),
        TakeoffRun = new Feet(4000),
        LandingDistance = new Feet(4000),
        Surface = RunwaySurface.Paved,
        Lighted = true,
        Origin = Row("operator.xlsx/Runways", 2),
    };

    /// <summary>The leg as read.</summary>
    public static Leg AsRead(int number = 1) => new()
    {
        Key = new LegKey("T101", number),
        OffBlocksLocal = Date.At(new LocalTime(11, 50)),
        OffBlocks = Some.Noon - Duration.FromMinutes(10),
        Aircraft = "X-ABCD",
        From = "XAND",
        To = "XBEL",
        Alternate = "XDUN",
        Level = new Feet(15_000),
        Rules = FlightRules.Ifr,
        Purpose = LegPurpose.Charter,
        Captain = "ABC",
        FuelPlan = new FuelPlan.Minimum(Pounds.Zero),
        FuelAboard = new Pounds(500),
        Origin = new Origin("week.xlsx/Legs", 1 + number, LegColumns),
    };

    /// <summary>The rules a test leg was planned by.</summary>
    public static PlanningRules Rules { get; } = new()
    {
        Name = "made by hand",
        Fuel = new FuelRules
        {
            FinalReserveDay = Duration.FromMinutes(45),
            FinalReserveNight = Duration.FromMinutes(45),
            FinalReserveBasis = ReserveBasis.Cruise,
            FinalReserveCitation = "made by hand",
        },
        Runway = new RunwayRules { TakeoffCitation = "made by hand", LandingCitation = "made by hand" },
        Weights = new StandardWeights
        {
            Adult = new Pounds(195),
            Man = new Pounds(205),
            Woman = new Pounds(184),
            Child = new Pounds(87),
            Infant = new Pounds(30),
            Pilot = new Pounds(210),
            Bag = new Pounds(30),
            Source = "made by hand",
        },
    };

    /// <summary>The fuel: taxi 40, trip 640, alternate 160, final reserve 300 lb (45 min at 400 lb/h), exactly that aboard.</summary>
    public static FuelLadder Fuel() => new()
    {
        Taxi = new Pounds(40),
        Trip = new Pounds(640),
        Contingency = Pounds.Zero,
        Alternate = new Pounds(160),
        FinalReserve = new Pounds(300),
        FinalReserveTime = Duration.FromMinutes(45),
        FinalReserveFlow = new PoundsPerHour(400),
        Additional = Pounds.Zero,
        Discretionary = Pounds.Zero,
        NeededAfterLanding = Pounds.Zero,
        Before = new Pounds(500),
        IsBeforeKnown = true,
        IsSoldHere = true,
        Uplift = new Pounds(640),
        Aboard = new Pounds(1140),
        Most = new Pounds(2000),
        MostBoundBy = "tank",
        Rounds = 4,
        IsConverged = true,
    };

    /// <summary>The load: two passengers and a bag at stated weights; well inside everything.</summary>
    public static LoadSheet Load() => new()
    {
        BasicEmpty = new WeightAndBalance(new Pounds(5000), new PoundInches(1_000_000)),
        Items =
        [
            new LoadItem { What = "A", Kind = LoadItemKind.Passenger, Category = "adult", Station = "Row 1", Weight = new Pounds(180), Arm = new Inches(190),
                TakesSeat = true, Cell = "week.xlsx/Manifest/E2" },
            new LoadItem { What = "B", Kind = LoadItemKind.Passenger, Category = "adult", Station = "Row 2", Weight = new Pounds(170), Arm = new Inches(220),
                TakesSeat = true, Cell = "week.xlsx/Manifest/E3" },
            new LoadItem { What = "bags", Kind = LoadItemKind.Bags, Station = "Hold", Weight = new Pounds(50), Arm = new Inches(250),
                Cell = "week.xlsx/Manifest/F2" },
        ],
        Stations = [new StationLoad(Front, new Pounds(180), 1), new StationLoad(Rear, new Pounds(170), 1), new StationLoad(Hold, new Pounds(50), 0)],
        Pilots = 1,
        Passengers = 2,
        Occupants = 2,
        OccupantWeight = new Pounds(350),
        Baggage = new Pounds(50),
        Payload = new Pounds(400),
        WithoutSeat = 0,
        WithoutStation = Pounds.Zero,
        ZeroFuel = At(5400),
        Ramp = At(6540),
        Takeoff = At(6500),
        Landing = At(5860),
        BurnLine = [new EnvelopePoint(new Pounds(6500), new Inches(201)), new EnvelopePoint(new Pounds(5400), new Inches(201))],
        Tests = [Test("takeoff", EnvelopeCase.Takeoff, 6500), Test("landing", EnvelopeCase.Landing, 5860), Test("zero fuel", EnvelopeCase.ZeroFuel, 5400),
            Test("during the flight", EnvelopeCase.Takeoff, 6000)],
        HasMoments = true,
    };

    /// <summary>A weight with its centre of gravity at 201 in.</summary>
    public static WeightAndBalance At(double weightLb) => new(new Pounds(weightLb), new PoundInches(weightLb * 201));

    /// <summary>An envelope test at an arm between the limits 195 and 205 in, up to 9,000 lb.</summary>
    public static EnvelopeTest Test(string when, EnvelopeCase @case, double weightLb, double armIn = 201) => new()
    {
        Case = @case,
        When = when,
        Point = new EnvelopePoint(new Pounds(weightLb), new Inches(armIn)),
        IsInside = armIn is >= 195 and <= 205 && weightLb <= 9000,
        ArmMargin = new Inches(Math.Min(armIn - 195, 205 - armIn)),
        ForwardLimit = new Inches(195),
        AftLimit = new Inches(205),
        WeightMargin = new Pounds(9000 - weightLb),
    };

    /// <summary>Runway 09 used with a corrected distance; 4,000 ft are there, calm.</summary>
    public static RunwayUse Use(double correctedFt = 2000) => new()
    {
        Runway = Runway,
        IsNamed = false,
        Weight = new Pounds(6500),
        PressureAltitude = Feet.Zero,
        Temperature = new Celsius(15),
        WindFrom = new TrueDegrees(90),
        WindSpeed = new Knots(0),
        Headwind = new Knots(0),
        Crosswind = new Knots(0),
        TableDistance = new Feet(correctedFt),
        TableRoll = new Feet(correctedFt / 2),
        Factors = [],
        CorrectedDistance = new Feet(correctedFt),
        Required = new Feet(correctedFt),
        Available = new Feet(4000),
    };

    /// <summary>The leg, planned.</summary>
    public static LegPlan.Planned Planned(int number = 1)
    {
        var from = Airport(Some.Xand);
        var to = Airport(Some.Xbel);
        var takeoff = Some.Noon;
        var landing = takeoff + Duration.FromMinutes(60);
        var leg = AsRead(number);
        var route = Direct(from, to);
        return new LegPlan.Planned
        {
            Leg = leg,
            Aircraft = Aircraft(),
            Type = Type(),
            From = from,
            To = to,
            Captain = Pilot(),
            Rules = FlightRules.Ifr,
            Purpose = LegPurpose.Charter,
            Planning = Rules,
            Times = new LegTimes(leg.OffBlocks, takeoff, takeoff + Duration.FromMinutes(10), landing - Duration.FromMinutes(10), landing,
                landing + Duration.FromMinutes(5)),
            Route = route,
            Profile = Profile(route, 15_000),
            Log = [],
            Fuel = Fuel(),
            Load = Load(),
            PayloadSpare = new Pounds(2500),
            PayloadSpareBoundBy = "takeoff weight",
            Departure = new RunwayResult.Computed(Use()),
            Arrival = new RunwayResult.Computed(Use()),
            Alternates = [Alternate],
            Options = [],
            Daylight = new Daylight
            {
                Departure = Sun.On(Date, from.Zone, from.Position),
                Destination = Sun.On(Date, to.Zone, to.Position),
                Night = Duration.Zero,
                IsNightTakeoff = false,
                IsNightLanding = false,
            },
            Assumptions = [],
        };
    }

    /// <summary>The filed alternate.</summary>
    public static AlternatePlan Alternate { get; } = new()
    {
        Airport = "XDUN",
        Distance = new NauticalMiles(60),
        Level = new Feet(10_000),
        Time = Duration.FromMinutes(20),
        Fuel = new Pounds(160),
        MagneticCourse = MagneticDegrees.Of(200),
        IsFarthest = true,
    };

    /// <summary>A direct route with a minimum altitude of 5,000 ft and no variation.</summary>
    public static FlownRoute Direct(Airport from, Airport to, double? minimumFt = 5000)
    {
        var path = new GeodesicPath(from.Position, to.Position);
        return new FlownRoute
        {
            Text = "",
            Elements = ["DCT"],
            Segments =
            [
                new RouteSegment
                {
                    From = new RoutePoint { Ident = from.Ident, Position = from.Position, Kind = "airport" },
                    To = new RoutePoint { Ident = to.Ident, Position = to.Position, Kind = "airport" },
                    Via = "DCT",
                    Path = path,
                    Start = NauticalMiles.Zero,
                    VariationDeg = 0,
                    MinimumAltitude = minimumFt is { } minimum ? new Feet(minimum) : null,
                    MinimumSource = minimumFt is null ? "" : "altitude grid",
                },
            ],
            Length = path.Length,
        };
    }

    /// <summary>Climb over the first sixth of the route, cruise at a level, descent over the last sixth.</summary>
    public static FlightProfile Profile(FlownRoute route, double levelFt)
    {
        var length = route.Length.Value;
        var path = route.Segments[0].Path;
        ProfileSlice Slice(FlightPhase phase, double start, double end, double startFt, double endFt) => new()
        {
            Phase = phase,
            Segment = 0,
            StartNm = start * length,
            EndNm = end * length,
            StartFt = startFt,
            EndFt = endFt,
            Hours = end - start,
            BurnLb = 640 * (end - start),
            AirNm = (end - start) * length,
            Air = new AirSample(TrueDegrees.Of(0), new Knots(0), new Celsius(-15), WindAssumed: false, TemperatureAssumed: false),
            TrueAirspeedKt = length,
            GroundSpeedKt = length,
            TrueCourseDeg = path.InitialCourse.Value,
            TrueHeadingDeg = path.InitialCourse.Value,
        };
        return new FlightProfile
        {
            Level = new Feet(levelFt),
            Setting = "normal",
            TakeoffWeight = new Pounds(6500),
            Slices = [Slice(FlightPhase.Climb, 0, 1.0 / 6, 0, levelFt), Slice(FlightPhase.Cruise, 1.0 / 6, 5.0 / 6, levelFt, levelFt),
                Slice(FlightPhase.Descent, 5.0 / 6, 1, levelFt, 0)],
            TopOfClimb = new ProfilePoint(new NauticalMiles(length / 6), Duration.FromMinutes(10), path.At(length / 6).Point, new Feet(levelFt)),
            TopOfDescent = new ProfilePoint(new NauticalMiles(length * 5 / 6), Duration.FromMinutes(50), path.At(length * 5 / 6).Point, new Feet(levelFt)),
            Distance = route.Length,
            AirDistance = route.Length,
            Time = Duration.FromMinutes(60),
            TripFuel = new Pounds(640),
            CruiseFlow = new PoundsPerHour(400),
        };
    }

    /// <summary>A leg that could not be planned.</summary>
    public static LegPlan.Unplanned Unplanned(int number, Instant offBlocks, string from = "XAND", string to = "XBEL") => new()
    {
        Leg = AsRead(number) with { OffBlocks = offBlocks, From = from, To = to },
        Why = "the route element NORA is not known",
        Expected = "NORRA",
        Cells = ["week.xlsx/Legs/I9"],
    };

    /// <summary>The same leg at another time, the planned times moved with it.</summary>
    public static LegPlan.Planned Later(this LegPlan.Planned plan, Duration by) => plan with
    {
        Leg = plan.Leg with { OffBlocks = plan.Leg.OffBlocks + by },
        Times = new LegTimes(plan.Times.OffBlocks + by, plan.Times.Takeoff + by, plan.Times.TopOfClimb + by, plan.Times.TopOfDescent + by,
            plan.Times.Landing + by, plan.Times.OnBlocks + by),
    };

    /// <summary>The same leg between two airports; its route and figures stay.</summary>
    public static LegPlan.Planned Between(this LegPlan.Planned plan, string from, string to) => plan with
    {
        Leg = plan.Leg with { From = from, To = to },
        From = plan.From with { Ident = from },
        To = plan.To with { Ident = to },
    };

    /// <summary>A week of legs, its chains made in time order.</summary>
    public static PlannedWeek Week(params LegPlan[] legs) => new()
    {
        Input = new OperatorWeek
        {
            Operator = new Operator
            {
                Name = "Some Charter",
                HomeBase = "XAND",
                Report = Duration.FromMinutes(60),
                Release = Duration.FromMinutes(30),
                Turnaround = Duration.FromMinutes(45),
                FlightFollowing = "filed",
                PassengerWeights = "weighed",
                WeatherSources = ["weather service"],
                BriefingTopics = ["smoking", "belts", "seat backs", "doors", "survival equipment", "extinguishers", "ditching", "oxygen"]
            },
            Types = ImmutableSortedDictionary<string, AircraftType>.Empty.Add(TypeName, Type()),
            Fleet = ImmutableSortedDictionary<string, Aircraft>.Empty.Add("X-ABCD", Aircraft()),
            Airports = ImmutableSortedDictionary<string, Airport>.Empty.Add("XAND", Airport(Some.Xand)).Add("XBEL", Airport(Some.Xbel))
                .Add("XDUN", Airport(Some.Xdun)),
            Land = [Square("Everywhere", 36, 43, -42, -34)],
            Crew = ImmutableSortedDictionary<string, CrewMember>.Empty.Add("ABC", Pilot()),
            Logged = [Logged("ABC", new LocalDate(2025, 7, 1), 2), Visit("ABC", Date.PlusDays(-40)), DayOff("ABC")],
        },
        Legs = [.. legs],
        Aircraft = [.. legs.GroupBy(leg => LegOf(leg).Aircraft, StringComparer.Ordinal).Select(group => new AircraftWeek
        {
            Registration = group.Key,
            Steps = Chain(group),
            Block = Duration.Zero,
            Air = Duration.Zero,
            Landings = group.Count(),
            Uplift = Pounds.Zero,
            Burned = Pounds.Zero,
        })],
        Crew = [.. legs.SelectMany(leg => new[] { LegOf(leg).Captain, LegOf(leg).SecondPilot }).Where(code => code.Length > 0).Distinct(StringComparer.Ordinal)
            .Select(code => Crew(code, legs))],
    };

    /// <summary>The row that says that the day before the leg is off, up to which the log is kept.</summary>
    public static LoggedDuty DayOff(string code) => Logged(code, Date.PlusDays(-1), 0) with { DutyOn = null, DutyOff = null };

    /// <summary>A logged day without flight time on which the airports of the leg were landed at.</summary>
    public static LoggedDuty Visit(string code, LocalDate date) => Logged(code, date, 0) with { Airports = ["XAND", "XBEL"] };

    /// <summary>A logged day with a duty from 08:00 to 16:00 UTC.</summary>
    public static LoggedDuty Logged(string code, LocalDate date, double hours) => new()
    {
        Crew = code,
        Date = date,
        FlightTime = Duration.FromHours(hours),
        DutyOn = date.At(new LocalTime(8, 0)).InUtc().ToInstant(),
        DutyOff = date.At(new LocalTime(16, 0)).InUtc().ToInstant(),
        Origin = Row("operator.xlsx/Logged", 2),
    };

    /// <summary>Land between two parallels and two meridians.</summary>
    public static LandRing Square(string name, double south, double north, double west, double east) =>
        new(name, 1, [new GeoPoint(south, west), new GeoPoint(north, west), new GeoPoint(north, east), new GeoPoint(south, east)]);

    private static CrewWeek Crew(string code, LegPlan[] legs)
    {
        var own = legs.Where(leg => LegOf(leg).Captain == code || LegOf(leg).SecondPilot == code).ToImmutableArray();
        var duties = own.OfType<LegPlan.Planned>().OrderBy(leg => leg.Times.OffBlocks).GroupBy(leg => leg.Times.OffBlocks.InUtc().Date)
            .Select(day => new DutyDay
            {
                Report = day.First().Times.OffBlocks - Duration.FromMinutes(60),
                Release = day.Last().Times.OnBlocks + Duration.FromMinutes(30),
                Legs = [.. day.Select(leg => leg.Key)],
                FlightTime = Duration.FromTicks(day.Sum(leg => leg.Times.Block.BclCompatibleTicks)),
                NightLandings = 0,
            });
        return new CrewWeek { Code = code, Steps = Chain(own), Duties = [.. duties], FlightTime = Duration.Zero };
    }

    private static Leg LegOf(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => planned.Leg,
        LegPlan.Unplanned { Leg: { } leg } => leg,
        _ => throw new ArgumentException("A test week is made of legs that could be read", nameof(plan)),
    };

    private static ImmutableArray<ChainStep> Chain(IEnumerable<LegPlan> legs)
    {
        var steps = ImmutableArray.CreateBuilder<ChainStep>();
        foreach (var plan in legs.OrderBy(plan => LegOf(plan).OffBlocks).ThenBy(plan => plan.Key))
        {
            var leg = LegOf(plan);
            var before = steps.LastOrDefault();
            steps.Add(new ChainStep
            {
                Leg = plan.Key,
                From = leg.From,
                To = leg.To,
                OffBlocks = leg.OffBlocks,
                OnBlocks = (plan as LegPlan.Planned)?.Times.OnBlocks,
                Before = before?.Leg,
                StandsAt = before?.To ?? "XAND",
                Ground = before?.OnBlocks is { } onBlocks ? leg.OffBlocks - onBlocks : null,
            });
        }

        return steps.ToImmutable();
    }

    private static Envelope Box(EnvelopeCase @case) => new()
    {
        Case = @case,
        Vertices =
        [
            new EnvelopePoint(new Pounds(4000), new Inches(195)), new EnvelopePoint(new Pounds(9000), new Inches(195)),
            new EnvelopePoint(new Pounds(9000), new Inches(205)), new EnvelopePoint(new Pounds(4000), new Inches(205)),
        ],
        Origin = Row("operator.xlsx/Envelope", 2),
    };
}
