using Batch.SampleMaker.Books;

namespace Batch.SampleMaker.Week;

/// <summary>The Legs sheet.</summary>
public static class LegSheet
{
    public static SheetTable Sheet(IEnumerable<OneTrip> trips) => SheetTable.Of(
        "Legs",
        [
            new("Trip", 8), Whole("Leg", 6), new("Date", 12, CellFormat.Date), new("Off blocks", 9, CellFormat.Time), new("Aircraft", 10), new("From", 7),
            new("To", 7), new("Alternate", 10),
            new("Second alternate", 10), new("Route", 34), new("Backup route", 20), new("Level", 8), new("Setting", 11), new("Rules", 7), new("Purpose", 10),
            new("Captain", 9), new("Second pilot", 9),
            new("Fuel plan", 14), Whole("Fuel aboard [lb]", 10), Whole("Taxi [min]", 7), new("Departure runway", 11), new("Arrival runway", 9),
            new("Takeoff alternate", 10), new("Flight plan", 9), new("Manifest sent [UTC]", 17, CellFormat.UtcDateTime),
            new("Crew manifest sent [UTC]", 17, CellFormat.UtcDateTime), new("Remarks", 40),
        ],
        trips.SelectMany(trip => trip.Legs).OrderBy(leg => leg.Date).ThenBy(leg => leg.Trip, StringComparer.Ordinal).ThenBy(leg => leg.Number)
            .Select(leg => new object?[]
        {
            leg.Trip, leg.Number, leg.Date, leg.Off, leg.Aircraft, leg.From, leg.To, leg.Alternate,
            leg.SecondAlternate, leg.Route, leg.BackupRoute, leg.Level, leg.Setting, leg.Rules, leg.Purpose, leg.Captain, leg.SecondPilot,
            leg.FuelPlan, leg.FuelAboardLb, leg.TaxiMin, leg.DepartureRunway, leg.ArrivalRunway, leg.TakeoffAlternate, leg.FlightPlan, leg.ManifestSent,
            leg.CrewManifestSent, leg.Remarks,
        }));

    private static Column Whole(string header, double width) => new(header, width, CellFormat.Whole);
}
