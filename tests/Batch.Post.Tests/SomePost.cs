namespace Batch.Post.Tests;

/// <summary>Small runs and ledgers.</summary>
internal static class SomePost
{
    public static readonly Instant MadeAt = Instant.FromUtc(2026, 12, 3, 15, 0);

    private static readonly IReadOnlySet<string> NoTrips = new HashSet<string>(StringComparer.OrdinalIgnoreCase);

    /// <summary>T101/1 of RIM, Mon 7 Dec 14:30 to 16:02 UTC, XAND (New York) to XBEL (Chicago), three passengers.</summary>
    public static LegFacts Facts(string trip = "T101", int leg = 1) => new()
    {
        Trip = trip,
        Leg = leg,
        Aircraft = "Q-HAA",
        From = "XAND",
        To = "XBEL",
        FromZone = "America/New_York",
        ToZone = "America/Chicago",
        OffBlocks = Instant.FromUtc(2026, 12, 7, 19, 30) + Duration.FromHours(4 * (leg - 1)),
        OnBlocks = Instant.FromUtc(2026, 12, 7, 21, 2) + Duration.FromHours(4 * (leg - 1)),
        Captain = "RIM",
        SecondPilot = "",
        Passengers = 3,
        Load = "a1",
        Route = "AND V12 BEL",
        LevelFt = 21_000,
        Alternates = "XFEN",
        BlockFuelLb = 1240,
        ZeroFuelLb = 7435,
        TakeoffLb = 8630,
        LandingLb = 8210,
        DepartureRunway = "28",
        ArrivalRunway = "27",
        State = "pass",
        Details = "d1",
    };

    public static LegRecord Leg(LegFacts facts) =>
        new() { Trip = facts.Trip, Number = facts.Leg, Captain = facts.Captain, SecondPilot = facts.SecondPilot, OffBlocks = facts.OffBlocks, Facts = facts };

    public static LegRecord Unplanned(string trip, int number, string captain = "RIM", Instant? offBlocks = null) =>
        new() { Trip = trip, Number = number, Captain = captain, OffBlocks = offBlocks, Trouble = "The route element NORRO is not known." };

    public static WeekRecord Week(params ImmutableArray<LegRecord> legs) => new()
    {
        MadeAt = MadeAt,
        Operator = "Harrow Sound",
        OperatorMail = "ops@harrow-sound.example",
        Legs = legs,
        Persons = [new PersonRecord { Code = "RIM", Name = "Rima Ostrelle", Mail = "rima@harrow-sound.example" },
            new PersonRecord { Code = "SOR", Name = "Soren Valdike", Mail = "soren@harrow-sound.example" }],
    };

    public static WeekRecord Week(params ImmutableArray<LegFacts> legs) => Week([.. legs.Select(Leg)]);

    public static CrewIssue Issue(WeekRecord week, Ledger ledger, string person = "RIM", params string[] cancelled) =>
        CrewIssues.Of(week, ledger, cancelled.Length == 0 ? NoTrips : cancelled.ToHashSet(StringComparer.OrdinalIgnoreCase))
            .Single(issue => issue.Person.Code == person);

    /// <summary>The ledger after everything that was due of some runs was issued, one run after another.</summary>
    public static Ledger Issued(params ReadOnlySpan<WeekRecord> weeks)
    {
        using var folder = new TemporaryFolder();
        foreach (var week in weeks)
        {
            using var pen = LedgerPen.Open(folder.File("issued.jsonl"), NodaTime.SystemClock.Instance);
            foreach (var issue in CrewIssues.Of(week, pen.Ledger, NoTrips).Where(issue => issue.IsDue)) Send(pen, issue, week.MadeAt);
        }

        return Ledger.Read(folder.File("issued.jsonl"));
    }

    public static LedgerPacket Packet(CrewIssue issue, Instant at) => new()
    {
        Person = issue.Person.Code,
        To = issue.Person.Mail,
        Revision = issue.Revision,
        Fingerprint = issue.Fingerprint,
        MessageId = issue.Fingerprint + "@harrow-sound.example",
        At = at,
        Outcome = LedgerOutcome.Begun,
        Legs = issue.Legs,
        Dropped = issue.Dropped,
    };

    private static void Send(LedgerPen pen, CrewIssue issue, Instant at)
    {
        var packet = Packet(issue, at);
        pen.Begin(packet);
        pen.HandOver(packet.MessageId);
        pen.Issue(packet.MessageId, "250 taken");
    }
}
