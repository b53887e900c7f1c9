using Batch.SampleMaker.Books;

namespace Batch.SampleMaker.House;

/// <summary>The sheets of the operator's own settings.</summary>
public static class HouseSheets
{
    public static SheetTable Operator() => SheetTable.Of(
        "Operator",
        [new("Item", 26), new("Value", 44)],
        [
            ["Name", "Harrow Sound Air Charter (invented)"],
            ["Home base", "XAND"],
            ["Rule set", "us-charter"],
            ["Report [min]", 60],
            ["Release [min]", 30],
            ["Turnaround [min]", 45],
            ["Taxi out [min]", 8],
            ["Taxi in [min]", 5],
            ["Contingency [%]", 5],
            ["Least landing fuel [min]", 50],
            ["Uplift rounding [lb]", 10],
            ["Outside tables", "edge"],
            ["Adult weight [lb]", 190],
            ["Man weight [lb]", 205],
            ["Woman weight [lb]", 178],
            ["Child weight [lb]", 88],
            ["Infant weight [lb]", 28],
            ["Pilot weight [lb]", 195],
            ["Bag weight [lb]", 30],
            ["Weather sources", "National weather service, Airport observer"],
            ["Flight following", "filed"],
            ["Briefing topics", "smoking, belts, seat backs, doors, survival equipment, extinguishers, ditching, oxygen"],
            ["Contact", "Dispatch, Harrow Sound, +000 555 0100, dispatch@harrow-sound.example"],
            ["Mail from", "dispatch@harrow-sound.example"],
            ["Sheet language", "en"],
            ["Currency", "VLM"],
            ["Scenario squall-line", "35 kt, 45 min"],
            ["Weight unit", "lb"],
            ["Fuel unit", "lb"],
            ["Distance unit", "NM"],
            ["Runway unit", "ft"],
            ["Altitude unit", "ft"],
            ["Temperature unit", "°C"],
            ["Speed unit", "kt"],
        ]);

    public static SheetTable Checks() => SheetTable.Of(
        "Checks",
        [new("Check", 11), new("On", 7), new("State", 10), new("Value", 10), new("Reason", 70)],
        [
            ["CREW-11", "yes", "fail", "", "The chief pilot wants no leg released whose crew is somewhere else"],
            ["ADM-04", "yes", "fail", "", "No movements outside the hours of an airport; the exception is arranged before the leg is entered"],
            ["PERF-07", "yes", "caution", "18 kt", "Captains here are checked to 18 kt of crosswind each year"],
        ]);
}
