namespace Batch.SampleMaker.Week;

/// <summary>The trips from Monday to Wednesday.</summary>
public static class FirstHalf
{
    private static readonly LocalDate Monday = new(2026, 12, 7);
    private static readonly LocalDate Tuesday = new(2026, 12, 8);
    private static readonly LocalDate Wednesday = new(2026, 12, 9);

    public static ImmutableArray<OneTrip> Trips { get; } =
    [
        new TripDraft("T101", Monday, "Q-HAA", "RIM")
            .Leg("XAND", "XBEL", "08:30", leg => leg with { Alternate = "XFEN", Route = "AND V12 BEL", BackupRoute = "AND V15 BEL", Level = "FL210",
                Setting = "Normal", FuelAboardLb = 700, DepartureRunway = "28" })
            .Leg("XBEL", "XAND", "16:30", leg => leg with { Alternate = "XFEN", Route = "BEL V12 AND", BackupRoute = "BEL V15 AND", Level = "FL200" })
            .Carries("all", "M W C C A A I")
            .Done(),
        new TripDraft("T102", Monday, "Q-HAB", "SOR")
            .Leg("XAND", "XCOR", "09:15", leg => leg with { Alternate = "XAND", Route = "AND V12 COR", Level = "FL160", FuelAboardLb = 820 })
            .Leg("XCOR", "XELM", "11:30", leg => leg with { Alternate = "XAND", Route = "COR V21 ELMIA", Remarks = "No Jet A-1 at Elmsey" })
            .Leg("XELM", "XAND", "14:30", leg => leg with { Alternate = "XFEN", Route = "ELMIA V30 AND", Level = "FL110" })
            .Carries("1", "A M W")
            .Carries("2-3", "M A A W")
            .Loads("1", "Mail sacks", 85)
            .Done(),
        new TripDraft("T103", Monday, "Q-BRA", "TES")
            .Leg("XAND", "XELM", "09:30", leg => leg with { Rules = "VFR", Level = "6500", FuelPlan = "minimum+100", FuelAboardLb = 300 })
            .Leg("XELM", "XAND", "13:30", leg => leg with { Rules = "VFR", Level = "5500" })
            .Carries("all", "M W A C")
            .Done(),
        new TripDraft("T104", Monday, "Q-BRB", "ULR")
            .Leg("XAND", "XFEN", "10:00", leg => leg with { Rules = "VFR", Level = "7500", FuelAboardLb = 280 })
            .Leg("XFEN", "XIVE", "12:00", leg => leg with { Rules = "VFR", Level = "5500", Remarks = "Grass, no fuel" })
            .Leg("XIVE", "XAND", "15:30", leg => leg with { Rules = "VFR", Level = "8500" })
            .Carries("1-2", "M M W")
            .Carries("3", "A W")
            .Done(),
        new TripDraft("T105", Monday, "Q-TOA", "VAR", "WEN")
            .Leg("XAND", "XMAR", "08:00", leg => leg with { Alternate = "XNOR", Route = "AND V12 COR W5 MAR", Level = "FL260", FuelPlan = "carry",
                FuelAboardLb = 900, TaxiMin = 12, ManifestSent = Instant.FromUtc(2026, 12, 7, 6, 30), CrewManifestSent = Instant.FromUtc(2026, 12, 7, 6, 30) })
            .Leg("XMAR", "XAND", "14:00", leg => leg with { Alternate = "XFEN", Route = "MAR W5 COR V12 AND", Level = "FL270",
                ManifestSent = Instant.FromUtc(2026, 12, 7, 17, 10), CrewManifestSent = Instant.FromUtc(2026, 12, 7, 17, 10) })
            .Carries("1", "M W A A M C C")
            .Carries("2", "A W A")
            .Done(),
        new TripDraft("T106", Monday, "Q-TOB", "YLA", "ZAN")
            .Leg("XAND", "XFEN", "14:00", leg => leg with { Route = "AND V15 FEN", Level = "FL110", FuelPlan = "minimum+200", FuelAboardLb = 850,
                Remarks = "Client asks for no alternate" })
            .Leg("XFEN", "XAND", "17:30", leg => leg with { Alternate = "XBEL", Route = "FEN V15 AND", Level = "FL120" })
            .Carries("all", "M W A A I")
            .Done(),

        new TripDraft("T107", Tuesday, "Q-HAA", "RIM")
            .Leg("XAND", "XDUN", "09:30", leg => leg with { Alternate = "XAND", Route = "AND V34 DUN", Level = "FL130" })
            .Leg("XDUN", "XCOR", "13:00", leg => leg with { Alternate = "XAND", Route = "DUN V21 COR", Level = "FL200", Setting = "Long range" })
            .Leg("XCOR", "XAND", "16:00", leg => leg with { Alternate = "XFEN", Route = "COR V12 AND" })
            .Carries("1", "A A M W C")
            .Carries("2", "M A")
            .Carries("2-3", "W W A")
            .Loads("1", "Medical samples", 25, "", "Keep upright")
            .Done(),
        new TripDraft("T108", Tuesday, "Q-HAB", "SOR")
            .Leg("XAND", "XKEL", "10:00", leg => leg with { Alternate = "XELM", Route = "AND V30 KEL", Level = "FL140" })
            .Leg("XKEL", "XAND", "15:00", leg => leg with { Alternate = "XCOR", Route = "KEL V30 AND", Level = "FL130" })
            .Carries("1", "M W A A C I")
            .Carries("2", "M M")
            .Done(),
        new TripDraft("T109", Tuesday, "Q-BRA", "TES")
            .Leg("XAND", "XJUN", "10:00", leg => leg with { Rules = "VFR", Level = "4500", FuelPlan = "full", Remarks = "Gravel; fuel for three legs" })
            .Leg("XJUN", "XHOL", "12:00", leg => leg with { Rules = "VFR", Level = "6500" })
            .Leg("XHOL", "XAND", "15:00", leg => leg with { Rules = "VFR", Level = "5500" })
            .Carries("1", "M M")
            .Carries("2-3", "M A W")
            .Done(),
        new TripDraft("T110", Tuesday, "Q-BRB", "ULR")
            .Leg("XAND", "XFEN", "09:00", leg => leg with { Alternate = "XAND", Route = "AND V15 FEN", Level = "9000" })
            .Leg("XFEN", "XAND", "13:00", leg => leg with { Alternate = "XBEL", Route = "FEN V15 AND", Level = "8000" })
            .Carries("all", "M A")
            .Loads("1", "Winch motor", 260, "Aft baggage", "Strapped on its pallet")
            .Done(),
        new TripDraft("T111", Tuesday, "Q-TOA", "VAR", "WEN")
            .Leg("XAND", "XOST", "08:30", leg => leg with { Alternate = "XUMB", SecondAlternate = "XFEN", Route = "AND W9 OST",
                BackupRoute = "AND V15 FEN W8 OST", Level = "FL250", FuelPlan = "full" })
            .Leg("XOST", "XAND", "17:30", leg => leg with { Alternate = "XFEN", Route = "OST W9 AND", Level = "FL260", Remarks = "Lands at night" })
            .Carries("1", "A A M M W")
            .Carries("2", "M W W A C C I")
            .Done(),
        new TripDraft("T112", Tuesday, "Q-TOB", "YLA")
            .Leg("XAND", "XBEL", "09:00",
                leg => leg with { Alternate = "XFEN", Route = "AND V12 SENNA DCT IVORA V21 BEL", Level = "FL190", ArrivalRunway = "27" })
            .Leg("XBEL", "XAND", "17:50", leg => leg with { Alternate = "XFEN", Route = "BEL V12 AND", Level = "FL200", Remarks = "Lands at night" })
            .Carries("all", "M W A A")
            .Loads("1", "Court papers", 40)
            .Done(),

        new TripDraft("T113", Wednesday, "Q-HAB", "SOR")
            .Leg("XAND", "XOST", "10:00", leg => leg with { Alternate = "XUMB", Route = "AND W9 OST", Level = "FL170" })
            .Leg("XOST", "XAND", "13:30", leg => leg with { Alternate = "XFEN", Route = "OST W9 AND", Level = "FL260", Purpose = "ferry" })
            .Carries("1", "M W A")
            .Done(),
        new TripDraft("T114", Wednesday, "Q-BRA", "TES")
            .Leg("XAND", "XFEN", "09:30", leg => leg with { Alternate = "XBEL", Route = "AND V15 FEN", Level = "9000", FuelPlan = "90 USG" })
            .Leg("XFEN", "XAND", "14:00", leg => leg with { Alternate = "XBEL", Route = "FEN V15 AND", Level = "8000" })
            .Carries("all", "M W A C C")
            .Done(),
        new TripDraft("T115", Wednesday, "Q-TOA", "VAR", "WEN")
            .Leg("XAND", "XBEL", "07:30", leg => leg with { Alternate = "XFEN", Route = "AND V12 BEL", Purpose = "ferry" })
            .Leg("XBEL", "XQUI", "10:00", leg => leg with { Alternate = "XBEL", Route = "BEL W11 QUI", Level = "FL230", Remarks = "No fuel at Quill" })
            .Leg("XQUI", "XBEL", "14:00", leg => leg with { Alternate = "XFEN", Route = "QUI W11 BEL", Level = "FL220" })
            .Leg("XBEL", "XAND", "16:30", leg => leg with { Alternate = "XFEN", Route = "BEL V12 AND", Purpose = "ferry" })
            .Carries("2", "M W A A")
            .Carries("3", "M M A A")
            .Loads("2", "Weather instruments", 150)
            .Done(),
        new TripDraft("T116", Wednesday, "Q-TOB", "YLA", "ZAN")
            .Leg("XAND", "XOST", "09:00",
                leg => leg with { Alternate = "XFEN", Route = "AND V15 GALVO 4000N03800W OST", Level = "FL250", FuelPlan = "1100 lb" })
            .Leg("XOST", "XAND", "14:00", leg => leg with { Alternate = "XFEN", Route = "OST W9 AND", Level = "FL260" })
            .Carries("1", "M W A C")
            .Carries("2", "A A M W W")
            .Done(),
    ];
}
