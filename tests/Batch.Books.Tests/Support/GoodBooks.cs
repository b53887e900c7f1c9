namespace Batch.Books.Tests.Support;

/// <summary>An operator book and a week book of an invented operator in which every sheet is filled and nothing is wrong.</summary>
internal static class GoodBooks
{
    public static SomeBook Operator() => new(
        ("Operator",
        [
            ["Item", "Value"], ["Name", "Greywater Air"], ["Home base", "XAND"], ["Rule set", "us-charter"], ["Report [min]", 60], ["Release [min]", 30.0],
            ["Turnaround [min]", 40],
            ["Taxi out [min]", 8], ["Taxi in [min]", 5], ["Contingency [%]", 5], ["Least landing fuel [min]", 45], ["Uplift rounding [lb]", 50],
            ["Outside tables", "stop"],
            ["Adult weight [lb]", 195], ["Contact", "ops@greywater.example"], ["Motto", "slow is smooth"],
        ]),
        ("Types",
        [
            ["Type", "Engine", "Engines", "Fuel", "Density [lb/USG]", "Required pilots", "Seats", "Pressurised", "Ceiling [ft]", "Ramp [lb]", "Takeoff [lb]",
                "Landing [lb]", "Zero-fuel [lb]", "Usable fuel [lb]",
                "Taxi fuel [lb]", "Approach fuel [lb]", "Approach time [min]", "Glide ratio", "Approach category", "ICAO type designator", "ICAO equipment",
                "Takeoff headwind credit [%/kt]", "Takeoff grass [%]", "Certification category"],
            ["Skua 9", "turboprop", 1, "Jet A-1", 6.7, 1, 9, "yes", 30000, 10450, 10400, 9900, 9000, 2700, 60, 50, 5, 15.5, "B", "SKU9", "SDGRY/S", 1.0, 20,
                "commuter"],
            ["Plover", "piston", 2, "Avgas", 6.0, 1, 6, "no", 20000, 6800, 6750, 6400, null, 1000, 20, 15, 4, 11, "A", "PLVR", "SG/C", 0.8, 15, null],
        ]),
        ("Aircraft",
        [
            ["Registration", "Type", "Basic empty weight [lb]", "Arm [in]", "Moment [lb in]", "Pilots included", "Weighed on", "Fuel burn bias [%]", "Home",
                "Hours [h]", "Landings", "Next inspection at [h]", "Annual due", "Autopilot for one pilot", "Overwater kit", "Oxygen [min]",
                "Quick-donning masks", "VOR checked on", "Status"],
            ["X-SKUA", "Skua 9", 6100, 221.5, null, 1, new DateTime(2025, 3, 4), 2, "XAND", 4210.4, 5120, 4300, new DateTime(2027, 2, 28), true, "rafts", 60,
                "yes", new DateTime(2026, 11, 20), "in service"],
            ["X-PLOV", "Plover", 4300, null, 421400, 0, new DateTime(2024, 6, 1), -1, "XBEL", 9120, 11000, 9150, new DateTime(2027, 1, 31), false, "vests",
                null, null, null, "in service"],
        ]),
        ("Stations",
        [
            ["Type", "Station", "Kind", "Arm [in]", "Seats", "Maximum [lb]", "Fill order"],
            ["Skua 9", "Cockpit", "crew", 133, 2, 500, null], ["Skua 9", "Row 1", "seat", 190, 2, 500, 1], ["Skua 9", "Aft bay", "bags", 330, 0, 400, 1],
            ["Plover", "Cockpit", "crew", 80, 2, 400, null], ["Plover", "Nose", "bags", 30, 0, 150, 1],
        ]),
        ("FuelArms", [["Type", "Fuel [lb]", "Moment [lb in]"], ["Skua 9", 0, 0], ["Skua 9", 1000, 215000], ["Skua 9", 2700, 583200], ["Plover", 0, 0],
            ["Plover", 1000, 96000]]),
        ("Envelope",
        [
            ["Type", "Case", "Weight [lb]", "Arm [in]"],
            ["Skua 9", "takeoff", 6000, 205], ["Skua 9", "takeoff", 10450, 216], ["Skua 9", "takeoff", 10450, 232], ["Skua 9", "takeoff", 6000, 232],
            ["Skua 9", "zero fuel", 6000, 205], ["Skua 9", "zero fuel", 9000, 214], ["Skua 9", "zero fuel", 9000, 232],
            ["Plover", "takeoff", 4000, 90], ["Plover", "takeoff", 6800, 95], ["Plover", "takeoff", 6800, 104], ["Plover", "takeoff", 4000, 104],
        ]),
        ("Climb",
        [
            ["Type", "Weight [lb]", "Altitude [ft]", "Time [min]", "Fuel [lb]", "Distance [NM]"],
            ["Skua 9", 9000, 0, 0, 0, 0], ["Skua 9", 9000, 20000, 12, 110, 30], ["Skua 9", 10400, 0, 0, 0, 0], ["Skua 9", 10400, 20000, 15, 140, 38],
        ]),
        ("Cruise",
        [
            ["Type", "Setting", "ISA deviation [°C]", "Altitude [ft]", "TAS [kt]", "Fuel flow [lb/h]"],
            ["Skua 9", "Normal", 0, 10000, 230, 460], ["Skua 9", "Normal", 0, 20000, 245, 400], ["Skua 9", "Normal", 20, 10000, 226, 455],
            ["Skua 9", "Normal", 20, 20000, 238, 390],
            ["Skua 9", "Long range", 0, 10000, 190, 340], ["Skua 9", "Long range", 0, 20000, 205, 300],
            ["Plover", "65 percent", 0, 6000, 170, 150], ["Plover", "65 percent", 0, 12000, 176, 146],
        ]),
        ("Descent", [["Type", "Altitude [ft]", "Time [min]", "Fuel [lb]", "Distance [NM]"], ["Skua 9", 0, 0, 0, 0], ["Skua 9", 20000, 13, 60, 50]]),
        ("Holding", [["Type", "Weight [lb]", "Altitude [ft]", "Fuel flow [lb/h]"], ["Skua 9", 9000, 1500, 330], ["Skua 9", 9000, 10000, 300]]),
        ("Takeoff",
        [
            ["Type", "Flap", "Weight [lb]", "Pressure altitude [ft]", "Temperature [°C]", "Ground roll [ft]", "Over obstacle [ft]"],
            ["Skua 9", "15", 9000, 0, 0, 1100, 1700], ["Skua 9", "15", 9000, 0, 30, 1300, 2000], ["Skua 9", "15", 10400, 0, 0, 1500, 2300],
            ["Skua 9", "15", 10400, 0, 30, 1800, 2700],
        ]),
        ("Landing",
        [
            ["Type", "Flap", "Weight [lb]", "Pressure altitude [ft]", "Temperature [°C]", "Ground roll [ft]", "Over obstacle [ft]"],
            ["Skua 9", "40", 9900, 0, 0, 1000, 1900], ["Skua 9", "40", 9900, 0, 30, 1100, 2050],
        ]),
        ("Speeds", [["Type", "Flap", "Weight [lb]", "VR [kt]", "VREF [kt]"], ["Skua 9", "15", 9000, 75, null], ["Skua 9", "15", 10400, 81, null],
            ["Skua 9", "40", 9900, null, 84]]),
        ("Airports",
        [
            ["Ident", "Name", "Latitude", "Longitude", "Elevation [ft]", "Time zone", "Fuel", "Fuel price [/USG]", "Opens", "Closes", "Quiet hours", "Lighting",
                "Tower or CTAF frequency", "Handler", "Handler mail", "Instrument approach"],
            ["XAND", "Andra", 41.5, -70.25, 120, "America/New_York", "Jet A-1, Avgas", 5.25, new TimeSpan(6, 0, 0), new TimeSpan(22, 0, 0), "22:00-06:00",
                "yes", "118.55", "Quay Ramp", "ramp@quay.example", "ILS 200 ft 800 m"],
            ["XBEL", "Bellport", "42 30 00 N", "071 15 00 W", 300, "America/New_York", "Avgas", 6, null, null, null, "on request", "122.8", null, null,
                "RNP 420 ft 1500 m"],
            ["XCOR", "Corrie", 40.9, -72.1, 45, "America/New_York", "none", null, null, null, null, "none", null, null, null, "none"],
        ]),
        ("Runways",
        [
            ["Airport", "Runway", "True bearing [deg]", "TORA [ft]", "TODA [ft]", "ASDA [ft]", "LDA [ft]", "Threshold elevation [ft]", "Slope [%]", "Surface",
                "Lighted"],
            ["XAND", "09", 77, 5000, 5200, 5000, 4800, 118, 0.4, "paved", "yes"], ["XAND", "27", 257, 5000, null, null, 5000, 120, -0.4, "paved", "yes"],
            ["XBEL", "18L", 166, 3800, null, null, 3800, null, 0, "grass", "no"], ["XCOR", "05", 38, 4200, null, null, 4200, null, null, "paved", "no"],
        ]),
        ("Fixes", [["Ident", "Latitude", "Longitude", "Kind", "Name", "Frequency"], ["NORRA", "41 50 N", "70 45 W", "waypoint", null, null],
            ["TIDES", 42.1, -71, "VOR", "Tides", "113.4"], ["TIDES", 39, -60, "NDB", "Tides South", "320"]]),
        ("Airways",
            [["Airway", "Sequence", "Fix", "Minimum altitude [ft]", "Direction"], ["V12", 10, "NORRA", 4000, "both"], ["V12", 20, "TIDES", null, null]]),
        ("Land",
            [["Name", "Ring", "Sequence", "Latitude", "Longitude"], ["Mainland", 1, 1, 41, -73], ["Mainland", 1, 2, 43, -73], ["Mainland", 1, 3, 43, -70]]),
        ("AltitudeGrid", [["South", "West", "Size [deg]", "Minimum altitude [ft]"], [41, -71, 1, 2500], [42, -72, 1, 3100]]),
        ("Crew",
        [
            ["Code", "Name", "Mail", "Weight [lb]", "Base", "Types", "Seats", "Medical until", "Competency until", "Hours [h]", "Third last landing"],
            ["MOR", "Ida Morrow", "mor@greywater.example", 180, "XAND", "Skua 9, Plover", "captain, second pilot", new DateTime(2027, 6, 30),
                new DateTime(2027, 3, 31), 5200, new DateTime(2026, 11, 20)],
            ["TAN", "Per Tanner", "tan@greywater.example", 165, "XBEL", "Skua 9", "second pilot", new DateTime(2027, 5, 31), new DateTime(2027, 1, 31), 900,
                new DateTime(2026, 11, 21)],
        ]),
        ("Logged", [["Crew", "Date", "Flight time [h]", "Duty on [UTC]", "Duty off [UTC]", "Airports"], ["MOR", new DateTime(2026, 12, 4), 4.5, "1100Z",
            "2015Z", "XBEL, xand"], ["TAN", new DateTime(2026, 12, 5), "3:30", new TimeSpan(22, 0, 0), new TimeSpan(4, 0, 0)]]),
        ("Checks", [["Check", "On", "State", "Value", "Reason"], ["FUEL-01", "yes", "fail", "45", "our own habit"]]));

    public static SomeBook Week() => new(
        ("Legs",
        [
            ["Trip", "Leg", "Date", "Off blocks", "Aircraft", "From", "To", "Alternate", "Second alternate", "Route", "Backup route", "Level", "Setting",
                "Rules", "Purpose", "Captain", "Second pilot", "Fuel plan",
                "Fuel aboard [lb]", "Taxi [min]", "Departure runway", "Arrival runway", "Remarks", "Override", "Hangar"],
            ["T101", 1, new DateTime(2026, 12, 7), new TimeSpan(7, 30, 0), "X-SKUA", "XAND", "XBEL", "XCOR", null, "NORRA V12 TIDES", null, "FL160", "Normal",
                "IFR", "charter", "MOR", "TAN", "minimum+200", 800, 10, "09", "18L", "early", "the chief pilot agreed", "north"],
            ["T101", 2, new DateTime(2026, 12, 7), new TimeSpan(15, 0, 0), "X-SKUA", "XBEL", "XAND", null, null, null, null, "auto", "auto", "IFR", "charter",
                "MOR", null, "150 USG", null, null, null, null, null, null, null],
            ["T102", 1, new DateTime(2026, 12, 8), "1930Z", "X-PLOV", "XBEL", "XCOR", null, null, null, null, 6000, null, "VFR", "ferry", "MOR", null, "full",
                600, null, null, null, null, null, "south"],
        ]),
        ("Manifest",
        [
            ["Trip", "Legs", "Name", "Category", "Weight [lb]", "Bags [lb]", "Bag count", "Seat", "Notes", "Weight basis"],
            ["T101", "all", "Ansel Quill", "man", 190, 40, 2, "Row 1", null, "with allowances"],
            ["T101", "1", "Bea Thorn", "woman", null, 20, 1, null, "no nuts", null], ["T101", "2", "Cy Marsh", "child", 70, null, null, null, null, "stated"],
        ]),
        ("Cargo", [["Trip", "Legs", "What", "Weight [lb]", "Station", "Notes"], ["T102", null, "Spare wheel", 85, "Nose", null]]),
        ("Winds",
        [
            ["Place", "From [UTC]", "To [UTC]", "Altitude [ft]", "Direction [deg]", "Speed [kt]", "Temperature [°C]"],
            ["all", "2026-12-07T06:00Z", "2026-12-09T06:00Z", 10000, 270, 30, -5], ["NORRA", new DateTime(2026, 12, 7, 6, 0, 0),
                new DateTime(2026, 12, 8, 6, 0, 0), 20000, 280, 55, -22], ["4130N07015W", null, null, 5000, 360, 10, null],
        ]),
        ("Bulletins", [["Text", "Received"], ["METAR XAND 071151Z 27010KT 10SM CLR 05/M02 A3001", "2026-12-07T11:55Z"]]),
        ("Notices", [["Subject", "From", "To", "Effect", "Text"], ["XBEL 18L", "2026-12-08T12:00Z", "2026-12-08T18:00Z", "runway closed", "mowing"]]));

    /// <summary>Reads both books as workbooks called operator.xlsx and week.xlsx, changed first.</summary>
    public static Flight.Week.OperatorWeek Read(Action<SomeBook, SomeBook>? change = null)
    {
        using var folder = new TempFolder();
        var (operatorBook, week) = (Operator(), Week());
        change?.Invoke(operatorBook, week);
        return BookReader.Read([operatorBook.SaveXlsx(folder.File("operator.xlsx")), week.SaveXlsx(folder.File("week.xlsx"))]);
    }
}
