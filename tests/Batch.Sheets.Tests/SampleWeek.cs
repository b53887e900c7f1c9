using Batch.Checks;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Sheets.Tests;

/// <summary>
/// A checked week made by hand: a trip that passes with a caution, one that fails, one that could not be planned and a row that could not be read.
/// </summary>
internal static class SampleWeek
{
    public static RunFacts Facts { get; } = new() { MadeAt = Instant.FromUtc(2026, 12, 3, 16, 20), ToolVersion = "0.1.0" };

    public static CheckedWeek Made { get; } = Make();

    private static CheckedWeek Make()
    {
        var airports = Airports();
        var legs = Legs();
        var broken = new BrokenLeg
        {
            Key = new LegKey("row 17", 0),
            Aircraft = "XQ-SKB",
            From = "XAND",
            Date = new LocalDate(2026, 12, 9),
            Captain = "ANA",
            Problems = [new Problem { State = State.Fail, Cell = "week.xlsx/Legs/G17", Text = "To is empty.", Expected = "an airport ident" }],
        };
        var input = new OperatorWeek
        {
            Inputs = [new InputBook("operator.xlsx", new string('a', 64)), new InputBook("week.xlsx", new string('b', 64))],
            Operator = new Operator { Name = "Skerry Air & Sons", HomeBase = "XAND", Contact = "ops@skerry.example", RuleSet = "us-charter" },
            Types = Named(("Skua 9", SampleFleet.Type)),
            Fleet = Named(("XQ-SKA", SampleFleet.Aircraft)),
            Airports = airports,
            Crew = Named([.. SampleFleet.Crew.Select(person => (person.Code, person))]),
            Legs = legs,
            BrokenLegs = [broken],
            Manifest =
            [
                Passenger("T101", "Mia Tarn", PersonCategory.Woman, 142, "quiet seat"),
                Passenger("T101", "Olaf <script>alert(1)</script> Reed", PersonCategory.Adult, null, ""),
                Passenger("T101", "Ida Voss", null, null, "") with { Legs = LegSelection.Of([(1, 1)]) },
            ],
            Cargo = [new CargoLine { Trip = "T101", Legs = LegSelection.All, What = "Pump parts", Weight = new Pounds(120), Station = "Aft hold",
                Notes = "boxed" }],
            Notices = [new Notice { Subject = "XBEL 09", From = Instant.FromUtc(2026, 12, 7, 10, 0), To = Instant.FromUtc(2026, 12, 7, 20, 0),
                Effect = NoticeEffect.NoLights, Text = "Edge lights 09/27 out of service" }],
            Problems =
            [
                new Problem { State = State.Fail, Cell = "week.xlsx/Legs/G17", Text = "To is empty.", Expected = "an airport ident" },
                new Problem { State = State.Caution, Cell = "week.xlsx/Legs/F7", Text = "XADN is not in Airports; did you mean XAND?", Read = "XADN",
                    Expected = "XAND" },
                new Problem { State = State.Note, Cell = "week.xlsx/Legs/R1", Text = "Column 'Caterer' is not known; it is kept for templates.",
                    Read = "Caterer" },
            ],
        };
        var route = ImmutableArray.Create<(string, double, double, double?)>(("NORRA", 41.5, -69.6, 9_400), ("TIDES", 41.9, -68.4, 6_100),
            ("WHARF", 42.02, -68.1, 4_000));
        var first = SampleLeg.Planned(legs[0], airports["XAND"], airports["XBEL"], route);
        var second = SampleLeg.Planned(legs[1], airports["XBEL"], airports["XAND"], [.. route.Reverse()]);
        var third = SampleLeg.Planned(legs[2], airports["XAND"], airports["XDEL"]);
        var unplanned = new LegPlan.Unplanned
        {
            Leg = legs[3],
            Why = "The route element NORRO is not known.",
            Where = "after XAND",
            Cells = ["week.xlsx/Legs/L6"],
            Expected = "Did you mean NORRA?"
        };
        return new CheckedWeek
        {
            RuleSet = "us-charter 2026-09",
            DutyTables = [Duty(first, second, third)],
            Plan = new PlannedWeek
            {
                Input = input,
                Legs = [first, second, third, unplanned, new LegPlan.Unplanned { Broken = broken, Why = "To is empty.", Cells = ["week.xlsx/Legs/G17"] }],
                Aircraft = [AircraftWeek(first, second, third)],
                Crew = [CrewWeek(first, second, third)]
            },
            Legs =
            [
                new CheckedLeg { Plan = first, Findings = [SampleFindings.Caution, SampleFindings.NotChecked, SampleFindings.Note,
                    SampleFindings.Pass("WB-03", "Takeoff weight", 9_050, 8_412, "lb"), SampleFindings.Pass("PERF-01", "Takeoff distance", 3_212, 3_940, "ft"),
                    SampleFindings.DoesNotApply] },
                new CheckedLeg { Plan = second, Findings = [SampleFindings.Pass("WB-03", "Takeoff weight", 9_050, 8_390, "lb")] },
                new CheckedLeg { Plan = third, Findings = [SampleFindings.Fail, SampleFindings.Caution] },
                new CheckedLeg { Plan = unplanned, Findings = [] },
                new CheckedLeg { Plan = new LegPlan.Unplanned { Broken = broken, Why = "To is empty.", Cells = ["week.xlsx/Legs/G17"] }, Findings = [] },
            ],
        };
    }

    private static ImmutableSortedDictionary<string, Airport> Airports()
    {
        Runway Way(string ident, double bearing, double length) => new()
        {
            Ident = ident,
            TrueBearing = TrueDegrees.Of(bearing),
            TakeoffRun = new Feet(length),
            LandingDistance = new Feet(length),
            SlopePercent = 0.4,
            Surface = RunwaySurface.Paved,
            Lighted = true
        };
        return Named(
            ("XAND", SampleFleet.Airport("XAND", "Andholm", 41.25, -70.9, 312, SampleFleet.East) with { Runways = [Way("09", 78, 3_940)] }),
            ("XBEL", SampleFleet.Airport("XBEL", "Bellsund", 42.12, -67.2, 120, SampleFleet.Islands) with { Runways = [Way("27L", 258, 5_100)] }),
            ("XCOR", SampleFleet.Airport("XCOR", "Cormo", 42.6, -68.0, 44, SampleFleet.Islands)),
            ("XDEL", SampleFleet.Airport("XDEL", "Delvig", 40.1, -69.2, 20, SampleFleet.East)));
    }

    private static ImmutableArray<Leg> Legs() =>
    [
        One("T101", 1, "XAND", "XBEL", new LocalDateTime(2026, 12, 7, 9, 30), SampleFleet.East) with { Route = "NORRA V12 TIDES WHARF",
            BackupRoute = "DCT TIDES DCT", Remarks = "Meet & greet at the north gate" },
        One("T101", 2, "XBEL", "XAND", new LocalDateTime(2026, 12, 7, 18, 10), SampleFleet.Islands) with { Route = "WHARF TIDES V12 NORRA" },
        One("T102", 1, "XAND", "XDEL", new LocalDateTime(2026, 12, 8, 7, 15), SampleFleet.East),
        One("T103", 1, "XAND", "XCOR", new LocalDateTime(2026, 12, 8, 13, 0), SampleFleet.East) with { Route = "NORRO" },
    ];

    private static Leg One(string trip, int number, string from, string to, LocalDateTime off, DateTimeZone zone) => new()
    {
        Key = new LegKey(trip, number),
        OffBlocksLocal = off,
        OffBlocks = off.InZoneLeniently(zone).ToInstant(),
        Aircraft = "XQ-SKA",
        From = from,
        To = to,
        Alternate = "XCOR",
        Captain = "ANA",
        SecondPilot = "BEN",
        Extra = ImmutableSortedDictionary<string, string>.Empty.Add("Caterer", "none"),
        Doubts = number == 1 && trip == "T101"
            ? [new Problem { State = State.Caution, Cell = "week.xlsx/Legs/F7", Text = "XADN is not in Airports; did you mean XAND?", Read = "XADN",
                Expected = "XAND" }]
            : [],
    };

    private static ManifestLine Passenger(string trip, string name, PersonCategory? category, double? lb, string notes) => new()
    {
        Trip = trip,
        Legs = LegSelection.All,
        Name = name,
        Category = category,
        Weight = lb is { } known ? new Pounds(known) : null,
        Bags = new Pounds(32),
        BagCount = 1,
        Seat = "Row 1",
        Notes = notes,
    };

    private static AircraftWeek AircraftWeek(params ImmutableArray<LegPlan.Planned> legs) => new()
    {
        Registration = "XQ-SKA",
        Steps = Steps(legs),
        Block = legs.Aggregate(Duration.Zero, (sum, leg) => sum + leg.Times.Block),
        Air = legs.Aggregate(Duration.Zero, (sum, leg) => sum + leg.Times.Air),
        Landings = legs.Length,
        Uplift = legs.Aggregate(Pounds.Zero, (sum, leg) => sum + leg.Fuel.Uplift),
        Burned = legs.Aggregate(Pounds.Zero, (sum, leg) => sum + leg.Fuel.Taxi + leg.Fuel.Trip),
    };

    private static CrewWeek CrewWeek(params ImmutableArray<LegPlan.Planned> legs) => new()
    {
        Code = "ANA",
        Steps = Steps(legs),
        Duties =
        [
            new DutyDay { Report = legs[0].Times.OffBlocks - Duration.FromHours(1), Release = legs[1].Times.OnBlocks
                + Duration.FromMinutes(30), Legs = [legs[0].Key, legs[1].Key], FlightTime = legs[0].Times.Block + legs[1].Times.Block, NightLandings = 1 },
            new DutyDay { Report = legs[2].Times.OffBlocks - Duration.FromHours(1), Release = legs[2].Times.OnBlocks
                + Duration.FromMinutes(30), Legs = [legs[2].Key], FlightTime = legs[2].Times.Block, NightLandings = 0, RestBefore = Duration.FromHours(13.5) },
        ],
        FlightTime = legs.Aggregate(Duration.Zero, (sum, leg) => sum + leg.Times.Block),
    };

    private static DutyTable Duty(LegPlan.Planned first, LegPlan.Planned second, LegPlan.Planned third)
    {
        var week = CrewWeek(first, second, third);
        ImmutableArray<DutyLimit> limits =
        [
            new DutyLimit { Key = "flightIn24Hours", Name = "flight time in 24 hours", At = second.Key, From = second.Times.OnBlocks - Duration.FromHours(24),
                Until = second.Times.OnBlocks, Used = 2.37, Limit = 8, Citation = "14 CFR 135.267(b)" },
            new DutyLimit { Key = "flightIn7Days", Name = "flight time in 7 days", At = second.Key, From = second.Times.OnBlocks - Duration.FromHours(168),
                Until = second.Times.OnBlocks, Used = 2.37, Unknown = "Nothing is logged before this week." },
            new DutyLimit { Key = "duty", Name = "duty", At = second.Key, From = week.Duties[0].Report, Until = week.Duties[0].Release, Used = 7.35, Limit = 14,
                Citation = "14 CFR 135.267(c)", IsBasisUnconfirmed = true },
            new DutyLimit { Key = "restIn24Hours", Name = "longest rest in the 24 hours before the release", At = third.Key,
                From = third.Times.OnBlocks - Duration.FromHours(24), Until = third.Times.OnBlocks, Used = 9.5, Limit = 10, IsLeast = true,
                Citation = "14 CFR 135.267(d)" },
        ];
        DutyPeriod Period(DutyDay duty, LegPlan.Planned from, LegPlan.Planned to) => new()
        {
            Report = duty.Report,
            Release = duty.Release,
            From = from.From.Ident,
            To = to.To.Ident,
            ReportZone = from.From.Zone,
            ReleaseZone = to.To.Zone,
            Legs = duty.Legs,
            FlightTime = duty.FlightTime,
            NightLandings = duty.NightLandings,
            RestBefore = duty.RestBefore,
            Limits = limits,
        };
        return new DutyTable
        {
            Code = "ANA",
            Member = SampleFleet.Crew[0],
            LoggedFrom = new LocalDate(2026, 11, 2),
            Periods = [Period(week.Duties[0], first, second), Period(week.Duties[1], third, third)],
            Limits = limits,
            FlightTime = week.FlightTime
        };
    }

    private static ImmutableArray<ChainStep> Steps(ImmutableArray<LegPlan.Planned> legs) =>
    [
        .. legs.Select((leg, index) => new ChainStep
        {
            Leg = leg.Key, From = leg.Leg.From, To = leg.Leg.To, OffBlocks = leg.Times.OffBlocks, OnBlocks = leg.Times.OnBlocks,
            Before = index == 0 ? null : legs[index - 1].Key, StandsAt = index == 0 ? "XAND" : legs[index - 1].Leg.To,
            Ground = index == 0 ? null : leg.Times.OffBlocks - legs[index - 1].Times.OnBlocks,
        }),
    ];

    private static ImmutableSortedDictionary<string, T> Named<T>(params (string Name, T Value)[] items) =>
        items.ToImmutableSortedDictionary(item => item.Name, item => item.Value, StringComparer.OrdinalIgnoreCase);
}
