using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Flight.Week;

namespace Batch.Sheets.Tests;

/// <summary>A planned leg made by hand: figures that fit each other, computed by no planner.</summary>
internal static class SampleLeg
{
    private const double LevelFt = 14_000;
    private const double ClimbNm = 28;
    private const double DescentNm = 39;
    private static readonly DateTimeZone Utc = DateTimeZone.Utc;

    public static LegPlan.Planned Planned(Leg leg, Airport from, Airport to,
        params ImmutableArray<(string Ident, double Lat, double Lon, double? MinimumFt)> fixes)
    {
        var route = Route(leg, from, to, fixes);
        var profile = Profile(route, from, to);
        var fuel = Fuel(profile);
        var load = Load(fuel);
        var takeoff = leg.OffBlocks + Duration.FromMinutes(8);
        var landing = takeoff + profile.Time;
        return new LegPlan.Planned
        {
            Leg = leg,
            Aircraft = SampleFleet.Aircraft,
            Type = SampleFleet.Type,
            From = from,
            To = to,
            Captain = SampleFleet.Crew[0],
            SecondPilot = SampleFleet.Crew[1],
            Rules = FlightRules.Ifr,
            Purpose = LegPurpose.Charter,
            Planning = Rules,
            Times = new LegTimes(leg.OffBlocks, takeoff, takeoff + profile.TopOfClimb.Elapsed, takeoff + profile.TopOfDescent.Elapsed, landing,
                landing + Duration.FromMinutes(6)),
            Route = route,
            Profile = profile,
            Log = Log(route, profile, fuel, takeoff),
            Fuel = fuel,
            Load = load,
            PayloadSpare = new Pounds(312.4),
            PayloadSpareBoundBy = "zero-fuel weight",
            Departure = new RunwayResult.Computed(Runway(from.Runways[0], load.Takeoff.Weight, 2_050, 3_280, 1) with
            {
                TableStop = new Feet(3_400),
                CorrectedStop = new Feet(3_329.3),
                StopAvailable = from.Runways[0].TakeoffRun
            }),
            Arrival = to.Runways.IsEmpty
                ? new RunwayResult.NotComputed("Runways has no row for " + to.Ident + ".")
                : new RunwayResult.Computed(Runway(to.Runways[0], load.Landing.Weight, 1_320, 2_310, 1 / 0.7)),
            Alternates = [new AlternatePlan { Airport = "XCOR", Distance = new NauticalMiles(47.3), Level = new Feet(6_000), Time = Duration.FromMinutes(21),
                Fuel = new Pounds(131.2), MagneticCourse = MagneticDegrees.Of(312), IsFarthest = true }],
            Options = Options(leg),
            Daylight = Sun(takeoff),
            Assumptions = ["Two passengers at the standard weight of an adult, 190 lb (no weight in week.xlsx/Manifest/6).",
                "Fuel before fuelling is not known: taken as none."],
            Notes = ["NORRA stands twice in Fixes; the one 61 NM from XAND makes the shorter route and is taken."],
        };
    }

    private static PlanningRules Rules { get; } = new()
    {
        Name = "us-charter 2026-09",
        Fuel = new FuelRules
        {
            FinalReserveDay = Duration.FromMinutes(45),
            FinalReserveNight = Duration.FromMinutes(45),
            FinalReserveBasis = ReserveBasis.Cruise,
            FinalReserveCitation = "14 CFR 135.223(a)(3)",
            ContingencyFraction = 0.05,
            ContingencyCitation = "operator policy",
            AlternateCitation = "14 CFR 135.223(a)(2)",
        },
        Runway = new RunwayRules { LandingFactor = 1 / 0.7, TakeoffCitation = "14 CFR 91.103(b)", LandingCitation = "operator policy, 70 %" },
        Weights = new StandardWeights
        {
            Adult = new(190),
            Man = new(200),
            Woman = new(179),
            Child = new(82),
            Infant = new(30),
            Pilot = new(190),
            Bag = new(30),
            Source = "operator"
        },
    };

    private static FlownRoute Route(Leg leg, Airport from, Airport to, ImmutableArray<(string Ident, double Lat, double Lon, double? MinimumFt)> fixes)
    {
        var points =
            new List<(RoutePoint Point, double? MinimumFt)> { (new RoutePoint { Ident = from.Ident, Position = from.Position, Kind = "airport" }, 3_200) };
        points.AddRange(fixes.Select(fix => (new RoutePoint
        {
            Ident = fix.Ident,
            Position = new GeoPoint(fix.Lat, fix.Lon),
            Kind = "VOR",
            Name = fix.Ident,
            Frequency = "112.70"
        }, fix.MinimumFt)));
        points.Add((new RoutePoint { Ident = to.Ident, Position = to.Position, Kind = "airport" }, null));
        var segments = ImmutableArray.CreateBuilder<RouteSegment>();
        var start = 0.0;
        for (var k = 1; k < points.Count; k++)
        {
            var path = new GeodesicPath(points[k - 1].Point.Position, points[k].Point.Position);
            var minimum = points[k - 1].MinimumFt;
            segments.Add(new RouteSegment
            {
                From = points[k - 1].Point,
                To = points[k].Point,
                Via = k == 2 ? "V12" : "DCT",
                Path = path,
                Start = new NauticalMiles(start),
                VariationDeg = -12.4,
                MinimumAltitude = minimum is { } ft ? new Feet(ft) : null,
                MinimumSource = minimum is null ? "" : "altitude grid",
            });
            start += path.Length.Value;
        }
        return new FlownRoute
        {
            Text = leg.Route,
            Elements = [.. leg.Route.Split(' ', StringSplitOptions.RemoveEmptyEntries)],
            Segments = segments.ToImmutable(),
            Length = new NauticalMiles(start)
        };
    }

    private static FlightProfile Profile(FlownRoute route, Airport from, Airport to)
    {
        var length = route.Length.Value;
        var tod = length - DescentNm;
        GeoPoint At(double nm)
        {
            var segment = route.Segments.Last(candidate => candidate.Start.Value <= nm);
            return segment.Path.At(nm - segment.Start.Value).Point;
        }
        ProfileSlice Slice(FlightPhase phase, double a, double b, double fa, double fb, double kt, double lbPerHour) => new()
        {
            Phase = phase,
            Segment = 0,
            StartNm = a,
            EndNm = b,
            StartFt = fa,
            EndFt = fb,
            Hours = (b - a) / kt,
            BurnLb = (b - a) / kt * lbPerHour,
            AirNm = (b - a) * 1.08,
            Air = new AirSample(TrueDegrees.Of(260), new Knots(28), new Celsius(-9), WindAssumed: false, TemperatureAssumed: false),
            TrueAirspeedKt = kt + 18,
            GroundSpeedKt = kt,
            TrueCourseDeg = 78,
            TrueHeadingDeg = 80,
        };
        ImmutableArray<ProfileSlice> slices =
        [
            Slice(FlightPhase.Climb, 0, 12, from.Elevation.Value, 7_500, 142, 420),
            Slice(FlightPhase.Climb, 12, ClimbNm, 7_500, LevelFt, 158, 400),
            Slice(FlightPhase.Cruise, ClimbNm, tod, LevelFt, LevelFt, 214, 372),
            Slice(FlightPhase.Descent, tod, length, LevelFt, to.Elevation.Value, 196, 240),
        ];
        var hours = slices.Sum(slice => slice.Hours);
        return new FlightProfile
        {
            Level = new Feet(LevelFt),
            Setting = "normal",
            TakeoffWeight = new Pounds(8_412),
            Slices = slices,
            TopOfClimb = new ProfilePoint(new NauticalMiles(ClimbNm), Duration.FromHours(slices[0].Hours + slices[1].Hours), At(ClimbNm), new Feet(LevelFt)),
            TopOfDescent = new ProfilePoint(new NauticalMiles(tod), Duration.FromHours(hours - slices[3].Hours), At(tod), new Feet(LevelFt)),
            Distance = route.Length,
            AirDistance = new NauticalMiles(length * 1.08),
            Time = Duration.FromHours(hours + 0.05),
            TripFuel = new Pounds(slices.Sum(slice => slice.BurnLb) + 30),
            CruiseFlow = new PoundsPerHour(372),
        };
    }

    private static FuelLadder Fuel(FlightProfile profile)
    {
        var trip = profile.TripFuel;
        var required = new Pounds(40) + trip + (trip * 0.05) + new Pounds(131.2) + new Pounds(372 * 0.75);
        return new FuelLadder
        {
            Taxi = new Pounds(40),
            Trip = trip,
            Contingency = trip * 0.05,
            Alternate = new Pounds(131.2),
            FinalReserve = new Pounds(372 * 0.75),
            FinalReserveTime = Duration.FromMinutes(45),
            FinalReserveFlow = new PoundsPerHour(372),
            Additional = Pounds.Zero,
            Discretionary = new Pounds(100),
            NeededAfterLanding = Pounds.Zero,
            Before = new Pounds(420),
            IsBeforeKnown = true,
            IsSoldHere = true,
            Uplift = required + new Pounds(100) - new Pounds(420),
            Aboard = required + new Pounds(100),
            Most = new Pounds(1_904.6),
            MostBoundBy = "landing weight",
            Rounds = 4,
            IsConverged = true,
        };
    }

    private static LoadSheet Load(FuelLadder fuel)
    {
        var empty = new WeightAndBalance(SampleFleet.Aircraft.BasicEmptyWeight, SampleFleet.Aircraft.BasicEmptyMoment ?? default);
        LoadItem Item(string what, LoadItemKind kind, int station, double lb, bool assumed = false) => new()
        {
            What = what,
            Kind = kind,
            Category = kind == LoadItemKind.Passenger ? "adult" : "",
            Station = SampleFleet.Stations[station].Name,
            Weight = new Pounds(lb),
            Arm = SampleFleet.Stations[station].Arm,
            IsAssumed = assumed,
            TakesSeat = kind is LoadItemKind.Passenger or LoadItemKind.Pilot,
        };
        ImmutableArray<LoadItem> items =
        [
            Item("BEN", LoadItemKind.Pilot, 0, 185), Item("Mia Tarn", LoadItemKind.Passenger, 1, 142),
            Item("Olaf <b>Reed</b>", LoadItemKind.Passenger, 1, 190, assumed: true),
            Item("Ida Voss", LoadItemKind.Passenger, 2, 190, assumed: true), Item("Bags", LoadItemKind.Bags, 3, 96),
            Item("Pump parts", LoadItemKind.Cargo, 3, 120),
        ];
        var zero = items.Aggregate(empty, (state, item) => state.With(item.Weight, item.Arm));
        var tank = new Inches(203);
        var (ramp, takeoff, landing) = (zero.With(fuel.Aboard, tank), zero.With(fuel.Takeoff, tank), zero.With(fuel.Landing, tank));
        EnvelopeTest Test(string when, EnvelopeCase condition, WeightAndBalance state, double forward) => new()
        {
            Case = condition,
            When = when,
            Point = new EnvelopePoint(state.Weight, state.CentreOfGravity),
            IsInside = true,
            ArmMargin = new Inches(Math.Min(204 - state.CentreOfGravity.Value, state.CentreOfGravity.Value - forward)),
            ForwardLimit = new Inches(forward),
            AftLimit = new Inches(204),
            WeightMargin = new Pounds(9_050) - state.Weight,
        };
        return new LoadSheet
        {
            BasicEmpty = empty,
            Items = items,
            Stations = [.. SampleFleet.Stations.Select(station => new StationLoad(station,
                new Pounds(items.Where(item => item.Station == station.Name).Sum(item => item.Weight.Value)),
                items.Count(item => item.Station == station.Name && item.TakesSeat)))],
            Pilots = 2,
            Passengers = 3,
            Occupants = 4,
            OccupantWeight = new Pounds(707),
            Baggage = new Pounds(216),
            Payload = new Pounds(738),
            WithoutSeat = 0,
            WithoutStation = Pounds.Zero,
            ZeroFuel = zero,
            Ramp = ramp,
            Takeoff = takeoff,
            Landing = landing,
            BurnLine = [Point(takeoff), Point(landing), Point(zero)],
            Tests = [Test("takeoff", EnvelopeCase.Takeoff, takeoff, 182.4), Test("landing", EnvelopeCase.Landing, landing, 181),
                Test("zero fuel", EnvelopeCase.ZeroFuel, zero, 180.6)],
            HasMoments = true,
            Spread = new LoadSpread { Forward = Seated(-24), Aft = Seated(30), Assumption = "made by hand" },
        };

        // One of the passengers elsewhere.
        SeatingOutcome Seated(double inches) => new(
            zero.Moved(new Pounds(190), Inches.Zero, new Inches(inches)),
            takeoff.Moved(new Pounds(190), Inches.Zero, new Inches(inches)),
            landing.Moved(new Pounds(190), Inches.Zero, new Inches(inches)),
            [Test("takeoff", EnvelopeCase.Takeoff, takeoff.Moved(new Pounds(190), Inches.Zero, new Inches(inches)), 182.4)]);
    }

    private static EnvelopePoint Point(WeightAndBalance state) => new(state.Weight, state.CentreOfGravity);

    private static RunwayUse Runway(Runway runway, Pounds weight, double roll, double distance, double rule) => new()
    {
        Runway = runway,
        IsNamed = false,
        Flap = "20",
        Weight = weight,
        PressureAltitude = new Feet(412),
        Temperature = new Celsius(11),
        WindFrom = new TrueDegrees(runway.TrueBearing.Value - 55.8),
        WindSpeed = new Knots(13.5),
        Headwind = new Knots(7.6),
        Crosswind = new Knots(-11.2),
        TableDistance = new Feet(distance),
        TableRoll = new Feet(roll),
        Factors = [new RunwayFactor("8 kt headwind, half credited", 0.96), new RunwayFactor("upslope 0.4 %", 1.02)],
        CorrectedDistance = new Feet(distance * 0.96 * 1.02),
        Required = new Feet(distance * 0.96 * 1.02 * rule),
        Available = runway.TakeoffRun,
        GreatestWeight = new Pounds(8_930.7),
        HighestTemperature = new Celsius(34.8),
        Speeds = [new NamedSpeed("VR", new Knots(72)), new NamedSpeed("V50", new Knots(84))],
    };

    private static ImmutableArray<LogLine> Log(FlownRoute route, FlightProfile profile, FuelLadder fuel, Instant takeoff)
    {
        var stops = new List<(string Point, LogPointKind Kind, double Nm, double Ft)> { (route.From.Ident, LogPointKind.Airport, 0, 312) };
        stops.AddRange(route.Segments.SkipLast(1).Select(segment => (segment.To.Ident, LogPointKind.Fix, (segment.Start + segment.Length).Value, LevelFt)));
        stops.Add(("TOC", LogPointKind.TopOfClimb, profile.TopOfClimb.Distance.Value, LevelFt));
        stops.Add(("TOD", LogPointKind.TopOfDescent, profile.TopOfDescent.Distance.Value, LevelFt));
        stops.Add((route.To.Ident, LogPointKind.Airport, profile.Distance.Value, 120));
        var ordered = stops.OrderBy(stop => stop.Nm).ToArray();
        var lines = ImmutableArray.CreateBuilder<LogLine>();
        var (elapsed, remaining) = (Duration.Zero, fuel.Takeoff);
        for (var k = 0; k < ordered.Length; k++)
        {
            var (point, kind, nm, ft) = ordered[k];
            var before = k == 0 ? 0 : ordered[k - 1].Nm;
            var segment = route.Segments.Last(candidate => candidate.Start.Value <= Math.Max(0, nm - 0.001));
            var share = (nm - before) / profile.Distance.Value;
            var (time, burn) = (profile.Time * share, profile.TripFuel * share);
            elapsed += time;
            remaining -= burn;
            lines.Add(new LogLine
            {
                Point = point,
                Kind = kind,
                Position = segment.Path.At(nm - segment.Start.Value).Point,
                Via = k == 0 ? "" : segment.Via,
                TrueCourse = k == 0 ? null : segment.TrueCourse,
                MagneticCourse = k == 0 ? null : segment.MagneticCourse,
                VariationDeg = k == 0 ? null : segment.VariationDeg,
                Heading = k == 0 ? null : MagneticDegrees.Of(segment.MagneticCourse.Value + 3),
                Distance = new NauticalMiles(nm - before),
                Altitude = new Feet(ft),
                MinimumAltitude = segment.MinimumAltitude,
                WindFrom = k == 0 ? null : TrueDegrees.Of(262),
                WindSpeed = k == 0 ? null : new Knots(28),
                Temperature = k == 0 ? null : new Celsius(-9.4),
                TrueAirspeed = k == 0 ? null : new Knots(232),
                GroundSpeed = k == 0 ? null : new Knots(214),
                Time = time,
                Burn = burn,
                Remaining = remaining,
                Over = takeoff + elapsed,
                AlongRoute = new NauticalMiles(nm),
            });
        }
        return lines.ToImmutable();
    }

    private static ImmutableArray<LevelOption> Options(Leg leg) =>
    [
        .. new[] { 18_000.0, 16_000, 14_000, 12_000, 10_000, 8_000 }.Select(level => Option(level, leg.Route, isPlan: level == LevelFt, isBackup: false)),
        Option(LevelFt, "DCT TIDES DCT", isPlan: false, isBackup: true),
    ];

    private static LevelOption Option(double level, string route, bool isPlan, bool isBackup)
    {
        var lower = (14_000 - level) / 2_000;
        return new LevelOption
        {
            Level = new Feet(level),
            Route = route,
            IsPlan = isPlan,
            IsBackupRoute = isBackup,
            Time = Duration.FromMinutes(61 + (1.4 * lower) + (isBackup ? 7 : 0)),
            Trip = new Pounds(391 + (14 * lower) + (isBackup ? 44 : 0)),
            Landing = new Pounds(529 - (14 * lower) - (isBackup ? 44 : 0)),
            Margin = new Pounds(119 - (14 * lower) - (isBackup ? 44 : 0)),
            State = level < 9_000 ? State.Fail : State.Note,
            Why = level < 9_000 ? "below the minimum altitude 9,400 ft NORRA to TIDES" : "",
            CruiseHeadwind = new Knots(22 - (3 * lower)),
        };
    }

    private static Daylight Sun(Instant takeoff)
    {
        var day = takeoff.InZone(Utc).Date.AtStartOfDayInZone(Utc).ToInstant();
        SunDay Day(int shift) => new()
        {
            CivilDawn = day + Duration.FromMinutes(690 + shift),
            Sunrise = day + Duration.FromMinutes(721 + shift),
            Sunset = day + Duration.FromMinutes(1_288 + shift),
            CivilDusk = day + Duration.FromMinutes(1_319 + shift),
            DayState = SunState.Normal,
            CivilState = SunState.Normal,
        };
        return new Daylight { Departure = Day(0), Destination = Day(-9), Night = Duration.FromMinutes(12), IsNightTakeoff = false, IsNightLanding = true };
    }
}
