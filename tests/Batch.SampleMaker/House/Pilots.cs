using Batch.SampleMaker.Books;
using Batch.SampleMaker.Network;
using Batch.SampleMaker.Types;

namespace Batch.SampleMaker.House;

/// <summary>The nine pilots and what they flew before.</summary>
public static class Pilots
{
    private const string Captain = "captain";
    private const string Both = "captain, second pilot";

    public static ImmutableArray<OnePilot> All { get; } =
    [
        Pilot("RIM", "Rima Ostrelle", 148, HaldenH9.Name, Captain, 3, 3850, 940),
        Pilot("SOR", "Soren Valdike", 196, HaldenH9.Name, Captain, 4, 2610, 410),
        Pilot("TES", "Tessa Murrowin", 139, BraskB6.Name, Captain, 5, 2240, 620),
        Pilot("ULR", "Ulric Fenwarden", 204, BraskB6.Name, Captain, 6, 5105, 1530) with { Certificate = "airline transport" },
        Pilot("VAR", "Vara Kestlin", 152, TovaneT10.Name, Captain, 3, 6420, 1210) with { Certificate = "airline transport" },
        Pilot("WEN", "Wendel Oakmarsh", 187, $"{TovaneT10.Name}, {HaldenH9.Name}", "second pilot", 4, 1310,
            230) with { MedicalUntil = new LocalDate(2027, 1, 10) },
        Pilot("YLA", "Yla Drostandel", 144, TovaneT10.Name, Captain, 5, 4730, 880),
        Pilot("ZAN", "Zane Corrowby", 178, $"{TovaneT10.Name}, {BraskB6.Name}", Both, 6, 1985, 340) with { LineCheckUntil = new LocalDate(2026, 12, 31),
            NightHours = 92 },
        Pilot("KAI", "Kaia Merrowdun", 150, $"{TovaneT10.Name}, {HaldenH9.Name}", Both, 3, 3020, 505),
    ];

    public static SheetTable Sheet(IEnumerable<OnePilot> pilots) => SheetTable.Of(
        "Crew",
        [
            new("Code", 7), new("Name", 20), new("Mail", 34), new("Weight [lb]", 9, CellFormat.Whole), new("Base", 8), new("Types", 24), new("Seats", 22),
            Date("Medical until"), Date("Competency until"),
            Date("Instrument check until"), Date("Line check until"), new("Hours [h]", 9, CellFormat.Whole), new("Hours in type [h]", 9, CellFormat.Whole),
            new("Certificate", 16), new("Instrument rating", 11),
            new("Cross-country hours [h]", 10, CellFormat.Whole), new("Night hours [h]", 9, CellFormat.Whole), new("Instrument hours [h]", 11,
                CellFormat.Whole), new("Approaches in 6 months", 11, CellFormat.Whole), Date("Third last landing"), Date("Third last night landing"),
        ],
        pilots.Select(pilot => new object?[]
        {
            pilot.Code, pilot.Name, pilot.Name.ToLowerInvariant()
                .Replace(' ', '.') + "@harrow-sound.example", pilot.WeightLb, "XAND", pilot.Types, pilot.Seats, pilot.MedicalUntil, pilot.CompetencyUntil,
            pilot.InstrumentUntil, pilot.LineCheckUntil, pilot.Hours, pilot.HoursInType, pilot.Certificate, "yes",
            pilot.Hours * 6 / 10, pilot.NightHours, pilot.Hours * 9 / 100, 6 + (pilot.HoursInType % 9), pilot.ThirdLastLanding, pilot.ThirdLastNightLanding,
        }));

    /// <summary>
    /// What the pilots flew from a day on to the Saturday before the week, four days in seven; the Sunday before it is off, and a row says so.
    /// </summary>
    /// <param name="pilots">Pilots.</param>
    /// <param name="since">First day.</param>
    public static SheetTable Logged(IEnumerable<OnePilot> pilots, LocalDate since) => SheetTable.Of(
        "Logged",
        [new("Crew", 8), Date("Date"), new("Flight time [h]", 10, CellFormat.Tenths), new("Duty on [UTC]", 17, CellFormat.UtcDateTime),
            new("Duty off [UTC]", 17, CellFormat.UtcDateTime), new("Overrun [min]", 9, CellFormat.Whole), new("Airports", 22)],
        from pilot in pilots.Select((pilot, index) => (pilot.Code, Index: index))
        let sunday = Period.DaysBetween(since, new LocalDate(2026, 12, 6))
        from day in Enumerable.Range(0, sunday + 1)
        where day == sunday || (day + pilot.Index) % 7 is 0 or 1 or 3 or 4
        let date = since.PlusDays(day)
        let flight = Math.Round(1.8 + (0.7 * ((day * 3) + (pilot.Index * 5)) % 4.1), 1)
        let dutyOn = date.AtMidnight().PlusHours(8 + ((day + pilot.Index) % 3)).InUtc().ToInstant()
        select day == sunday
            ? [pilot.Code, date, 0.0, null, null, null, null]
            : new object?[] { pilot.Code, date, flight, dutyOn, dutyOn + Duration.FromMinutes(240 + (Math.Round(flight * 12) * 5)), null,
                $"{Sites.All[1 + ((day + (pilot.Index * 3)) % (Sites.All.Length - 1))].Ident}, XAND" });

    /// <summary>A pilot with checks that run for some months.</summary>
    /// <param name="code">Code.</param>
    /// <param name="name">Name.</param>
    /// <param name="weightLb">Weight [lb].</param>
    /// <param name="types">Types, with commas.</param>
    /// <param name="seats">Seats, with commas.</param>
    /// <param name="month">Month of 2027 around which the checks fall due, 3 to 6.</param>
    /// <param name="hours">Flight hours.</param>
    /// <param name="hoursInType">Flight hours in type.</param>
    public static OnePilot Pilot(string code, string name, int weightLb, string types, string seats, int month, int hours, int hoursInType) =>
        new(code, name, weightLb, types, seats)
        {
            MedicalUntil = new LocalDate(2027, month, 28),
            CompetencyUntil = new LocalDate(2027, month + 1, 30),
            InstrumentUntil = new LocalDate(2027, 1 + (month % 4), 28),
            LineCheckUntil = new LocalDate(2027, month + 2, 30),
            Hours = hours,
            HoursInType = hoursInType,
            NightHours = hours * 12 / 100,
            ThirdLastLanding = new LocalDate(2026, 11, 20 + month),
            ThirdLastNightLanding = new LocalDate(2026, 10, 12 + month),
        };

    private static Column Date(string header) => new(header, 13, CellFormat.Date);
}
