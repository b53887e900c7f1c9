using Batch.SampleMaker.Books;
using Batch.SampleMaker.House;
using Batch.SampleMaker.Land;
using Batch.SampleMaker.Network;
using Batch.SampleMaker.Tables;
using Batch.SampleMaker.Types;
using Batch.SampleMaker.Week;

namespace Batch.SampleMaker;

/// <summary>The two books of the sample.</summary>
public static class Sample
{
    public static Book OperatorBook(IReadOnlyList<OneAircraft> fleet, IReadOnlyList<OnePilot> pilots, LocalDate loggedSince) => new()
    {
        Name = "operator",
        ReadMe =
        [
            "Operator book of Harrow Sound Air Charter",
            "Everything in this book is invented: land, airports, airways, aircraft types, figures, people. Not for navigation.",
            "It changes seldom: the fleet with its performance tables, the airports and airways, the pilots, the operator's own settings.",
            "Headers are found by name; the unit stands in square brackets. Columns may be moved or added.",
            "The performance tables were computed from simple formulas, not taken from any manual.",
            "The week book beside it holds the trips of Monday 7 to Sunday 13 December 2026.",
        ],
        Sheets =
        [
            HouseSheets.Operator(), TypeSheets.Types(), Airframes.Sheet(fleet), TypeSheets.Stations(), TypeSheets.FuelArms(), TypeSheets.Envelope(),
            .. PerformanceSheets.All(TypeSheets.All),
            AirportSheets.Airports(), AirportSheets.Runways(), Waypoints.Sheet(), AirwaySheet.Sheet(), LandSheets.Land(), LandSheets.AltitudeGrid(),
            Pilots.Sheet(pilots), Pilots.Logged(pilots, loggedSince), HouseSheets.Checks(),
        ],
    };

    public static Book WeekBook(IReadOnlyList<OneTrip> trips, string note) => new()
    {
        Name = "week",
        ReadMe =
        [
            "Week book: Monday 7 to Sunday 13 December 2026",
            "Everything in this book is invented: places, trips, people, weather. Not for navigation.",
            "Legs: one row a leg. Off blocks is local time at the departure. Times in other sheets are UTC where the header says so.",
            "Manifest and Cargo: who and what flies on which legs (all, 1, 1-3, 1,3).",
            "Winds, Bulletins, Notices: what is known of the weather and of closures.",
            note,
        ],
        Sheets = [LegSheet.Sheet(trips), ManifestSheets.Manifest(trips), ManifestSheets.Cargo(trips), WeatherSheets.Winds(), WeatherSheets.Bulletins(),
            WeatherSheets.Notices()],
    };

    public static ImmutableArray<OneTrip> Trips() => [.. FirstHalf.Trips, .. SecondHalf.Trips];
}
