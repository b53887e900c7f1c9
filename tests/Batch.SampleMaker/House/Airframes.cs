using Batch.SampleMaker.Books;
using Batch.SampleMaker.Types;

namespace Batch.SampleMaker.House;

/// <summary>The six aircraft.</summary>
public static class Airframes
{
    public static ImmutableArray<OneAircraft> All { get; } =
    [
        new("Q-HAA", HaldenH9.Name, 6350, 213.0, 0, 1.5) { Hours = 4211.6, Landings = 5120, NextInspectionAt = 4290, Kit = "vests", Remark = "" },
        new("Q-HAB", HaldenH9.Name, 6582, 211.6, 1, -0.5) { Hours = 2876.2, Landings = 3344, NextInspectionAt = 2950, Kit = "vests", Remark = "" },
        new("Q-BRA", BraskB6.Name, 3948, 106.5, 0, 0.0) { Hours = 6120.4, Landings = 8205, NextInspectionAt = 6190, Kit = "rafts", Remark = "" },
        new("Q-BRB", BraskB6.Name, 4012, 106.8, 0, 3.0) { Hours = 7433.0, Landings = 9870, NextInspectionAt = 7446, Kit = "vests", IsForNight = false,
            Remark = "Reading light row 2 (allowed for flight)" },
        new("Q-TOA", TovaneT10.Name, 7690, 190.0, 0, 0.0) { Hours = 5544.8, Landings = 6022, NextInspectionAt = 5650, Kit = "rafts", Remark = "" },
        new("Q-TOB", TovaneT10.Name, 7745, 190.4, 0, 2.0) { Hours = 8102.3, Landings = 9415, NextInspectionAt = 8200, Kit = "rafts", Remark = "" },
    ];

    public static OneAircraft Of(string registration) => All.First(aircraft => aircraft.Registration == registration);

    public static SheetTable Sheet(IEnumerable<OneAircraft> fleet) => SheetTable.Of(
        "Aircraft",
        [
            new("Registration", 12), new("Type", 13), Whole("Basic empty weight [lb]"), Tenths("Arm [in]"), Whole("Pilots included"), Date("Weighed on"),
            Tenths("Fuel burn bias [%]"), Whole("Ceiling [ft]"),
            new("Home", 8), Tenths("Hours [h]"), Whole("Landings"), Tenths("Next inspection at [h]"), Date("Annual due"), Date("Altimeter-static due"),
            Date("Transponder due"), Date("ELT due"), Date("VOR checked on"), Date("Weighing due"),
            new("Autopilot for one pilot", 11), new("Overwater kit", 10), Whole("Oxygen [min]"), new("Quick-donning masks", 11), new("Icing protection", 10),
            new("IFR equipment", 10), new("Night equipment", 10), new("Second power source", 10), new("Engine trend monitoring", 11), new("TAWS", 7),
            new("Deferred items", 36), new("Status", 12),
        ],
        fleet.Select((aircraft, index) => new object?[]
        {
            aircraft.Registration, aircraft.Type, aircraft.EmptyLb, aircraft.ArmIn, aircraft.PilotsIncluded, new LocalDate(2025, 2 + (index % 6), 14),
            aircraft.BurnBiasPercent, null,
            "XAND", aircraft.Hours, aircraft.Landings, aircraft.NextInspectionAt, new LocalDate(2027, 3 + (index % 6), 30), new LocalDate(2027, 5, 31),
            new LocalDate(2027, 5, 31), new LocalDate(2027, 1, 31).PlusMonths(index % 6),
            new LocalDate(2026, 11, 16).PlusDays(index % 6), new LocalDate(2028, 2 + (index % 6), 28), "yes", aircraft.Kit, 150,
            aircraft.Type == BraskB6.Name ? "no" : "yes", "yes", "yes", aircraft.IsForNight ? "yes" : "no", "yes", aircraft.Type == BraskB6.Name ? "no" : "yes",
            aircraft.Type == BraskB6.Name ? "none" : "B", aircraft.Remark, "in service",
        }));

    private static Column Whole(string header) => new(header, 11, CellFormat.Whole);

    private static Column Tenths(string header) => new(header, 11, CellFormat.Tenths);

    private static Column Date(string header) => new(header, 12, CellFormat.Date);
}
