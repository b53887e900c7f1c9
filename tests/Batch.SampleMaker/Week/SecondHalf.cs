namespace Batch.SampleMaker.Week;

/// <summary>The trips from Thursday to Sunday.</summary>
public static class SecondHalf
{
    private static readonly LocalDate Thursday = new(2026, 12, 10);
    private static readonly LocalDate Friday = new(2026, 12, 11);
    private static readonly LocalDate Saturday = new(2026, 12, 12);
    private static readonly LocalDate Sunday = new(2026, 12, 13);

    public static ImmutableArray<OneTrip> Trips { get; } =
    [
        new TripDraft("T117", Thursday, "Q-HAA", "RIM")
            .Leg("XAND", "XFEN", "08:45", leg => leg with { Alternate = "XBEL", Route = "AND V15 FEN", Level = "FL130" })
            .Leg("XFEN", "XBEL", "11:30", leg => leg with { Alternate = "XAND", Route = "FEN V15 BEL" })
            .Leg("XBEL", "XAND", "15:00", leg => leg with { Alternate = "XFEN", Route = "BEL V12 AND", Level = "FL240" })
            .Carries("1", "M215@Row_5 M222@Row_4 M208@Row_4 A210@Row_3", 0)
            .Carries("2-3", "M W A C")
            .Loads("1", "Pump parts", 400, "Aft baggage")
            .Done(),
        new TripDraft("T118", Thursday, "Q-HAB", "SOR")
            .Leg("XAND", "XBEL", "10:00", leg => leg with { Alternate = "XFEN", Route = "AND V12 BEL", Level = "FL230", FuelPlan = "carry",
                Remarks = "Two-day trip, crew stays at Bellhaven" })
            .Leg("XBEL", "XAND", "11:00", leg => leg with { Date = Friday, Alternate = "XFEN", Route = "BEL V12 AND", BackupRoute = "BEL V21 DUN V34 AND",
                Level = "FL220", FuelPlan = "minimum+30 USG" })
            .Carries("all", "M W A A C")
            .Done(),
        new TripDraft("T119", Thursday, "Q-BRA", "TES")
            .Leg("XAND", "XGRA", "10:30", leg => leg with { Rules = "VFR", Level = "3500", FuelPlan = "480 lb", Remarks = "Grass, no fuel" })
            .Leg("XGRA", "XAND", "14:00", leg => leg with { Rules = "VFR", Level = "4500" })
            .Carries("1", "M W")
            .Carries("2", "M A W")
            .Done(),
        new TripDraft("T120", Thursday, "Q-TOA", "VAR", "WEN")
            .Leg("XAND", "XFEN", "10:00",
                leg => leg with { Alternate = "XBEL", Route = "AND V15 FEN", Level = "FL150", FuelPlan = "2950 lb", Remarks = "Fuel loaded for another trip" })
            .Leg("XFEN", "XAND", "14:00", leg => leg with { Alternate = "XBEL", Route = "FEN V15 AND", Level = "FL140" })
            .Carries("1", "M M W A A W")
            .Carries("2", "M W")
            .Done(),

        new TripDraft("T121", Friday, "Q-HAA", "RIM")
            .Leg("XAND", "XBEL", "09:00", leg => leg with { Alternate = "XFEN", Route = "AND V12 BEL", Level = "FL230", FuelPlan = "2540 lb" })
            .Leg("XBEL", "XAND", "14:30", leg => leg with { Alternate = "XFEN", Route = "BEL V12 AND", Level = "FL220" })
            .Carries("1", "M198 M201 M195 M205 A192 M196 W178 M204 M199", 30)
            .Carries("2", "M W A")
            .Done(),
        new TripDraft("T122", Friday, "Q-BRA", "TES")
            .Leg("XAND", "XBEL", "09:30", leg => leg with { Alternate = "XFEN", Route = "AND V12 BEL", Level = "9000" })
            .Leg("XBEL", "XAND", "15:00", leg => leg with { Alternate = "XFEN", Route = "BEL V12 AND", Level = "8000" })
            .Carries("all", "M172 W134 C58 C64", 15)
            .Carries("1", "W128 A151", 12)
            .Done(),
        new TripDraft("T123", Friday, "Q-TOB", "YLA", "ZAN")
            .Leg("XAND", "XCOR", "09:00", leg => leg with { Alternate = "XAND", Route = "AND V12 COR", Level = "FL160" })
            .Leg("XCOR", "XAND", "13:00", leg => leg with { Alternate = "XFEN", Route = "COR V12 AND", Level = "FL170" })
            .Carries("1", "M201 M196 A190 M204 W168 M210 M199 M195 A193", 14)
            .Carries("2", "M W A")
            .Loads("1", "Drill heads", 295, "Nose baggage")
            .Loads("1", "Drill rods", 250, "Aft baggage")
            .Loads("1", "Tool chest", 115, "Aft baggage")
            .Done(),
        new TripDraft("T124", Friday, "Q-TOA", "VAR", "WEN")
            .Leg("XAND", "XDUN", "10:00",
                leg => leg with { Alternate = "XAND", Route = "AND V34 DUN", Level = "5000", Remarks = "Client wants to see the hills" })
            .Leg("XDUN", "XAND", "15:00", leg => leg with { Alternate = "XFEN", Route = "DUN V34 AND", Level = "FL120" })
            .Carries("all", "M W A A C C")
            .Done(),

        new TripDraft("T125", Saturday, "Q-HAA", "RIM")
            .Leg("XAND", "XGRA", "11:00", leg => leg with { Rules = "VFR", Level = "3500", FuelPlan = "1500 lb" })
            .Leg("XGRA", "XAND", "14:00", leg => leg with { Rules = "VFR", Level = "4500" })
            .Carries("1", "M195 M188 W150 A172 A169 M201 W149 C70")
            .Carries("2", "M W")
            .Done(),
        new TripDraft("T126", Saturday, "Q-HAB", "SOR")
            .Leg("XAND", "XFEN", "21:35", leg => leg with { Alternate = "XBEL", Route = "AND V15 FEN", Level = "FL110", Remarks = "After the concert" })
            .Leg("XFEN", "XAND", "12:00", leg => leg with { Date = Sunday, Alternate = "XBEL", Route = "FEN V15 AND", Level = "FL120" })
            .Carries("all", "M W A A")
            .Done(),
        new TripDraft("T127", Saturday, "Q-BRA", "TES")
            .Leg("XAND", "XROA", "09:30", leg => leg with { Alternate = "XMAR", SecondAlternate = "XCOR", Route = "AND V30 KEL W7 ROA", Level = "10000" })
            .Carries("1", "M W")
            .Done(),
        new TripDraft("T128", Saturday, "Q-BRB", "ULR")
            .Leg("XAND", "XBEL", "10:00", leg => leg with { Alternate = "XFEN", Route = "AND V12 BEL", Level = "9000" })
            .Carries("all", "M W A")
            .Done(),
        new TripDraft("T129", Saturday, "Q-TOA", "VAR", "KAI")
            .Leg("XAND", "XROA", "09:00", leg => leg with { Alternate = "XSTA", SecondAlternate = "XMAR", Route = "AND V30 KEL W7 ROA", Level = "FL280",
                FuelPlan = "carry", ManifestSent = Instant.FromUtc(2026, 12, 12, 7, 30), CrewManifestSent = Instant.FromUtc(2026, 12, 12, 7, 30) })
            .Leg("XROA", "XMAR", "10:30", leg => leg with { Alternate = "XNOR", Route = "ROA W6 MAR", Level = "FL260" })
            .Leg("XMAR", "XAND", "14:00", leg => leg with { Alternate = "XFEN", Route = "MAR W5 COR V12 AND", Level = "FL270" })
            .Carries("1", "M W A A")
            .Carries("2-3", "M M W A A C")
            .Loads("1", "Ship spares", 120)
            .Done(),
        new TripDraft("T130", Saturday, "Q-TOB", "KAI")
            .Leg("XAND", "XBEL", "16:45", leg => leg with { Alternate = "XFEN", Route = "AND V12 BEL", Level = "FL190" })
            .Carries("1", "M W A")
            .Done(),

        new TripDraft("T131", Sunday, "Q-BRB", "ULR")
            .Leg("XBEL", "XIVE", "18:40", leg => leg with { Rules = "VFR", Level = "4500" })
            .Leg("XIVE", "XADN", "20:00", leg => leg with { Rules = "VFR", Level = "8500", Purpose = "ferry" })
            .Carries("1", "M W")
            .Done(),
        new TripDraft("T133", Thursday, "Q-BRB", "ZAN")
            .Leg("XAND", "XFEN", "09:30", leg => leg with { Alternate = "XBEL", Route = "AND V15 FEN", Level = "9000", Remarks = "Captain for the first time" })
            .Leg("XFEN", "XAND", "13:00", leg => leg with { Rules = "VFR", Level = "8500", FlightPlan = "none" })
            .Carries("all", "M W A")
            .Done(),
        new TripDraft("T132", Sunday, "Q-TOB", "YLA", "ZAN")
            .Leg("XAND", "XFEN", "11:00", leg => leg with { Alternate = "XBEL", Route = "AND V15 FEN", Level = "FL130" })
            .Carries("1", "M W A A C I")
            .Done(),
    ];
}
