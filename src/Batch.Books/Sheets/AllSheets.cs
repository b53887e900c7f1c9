using Batch.Books.Headers;

namespace Batch.Books.Sheets;

/// <summary>Every declared sheet, in the order in which they are offered.</summary>
internal static class AllSheets
{
    /// <summary>The sheet of explanations in the books made by this program.</summary>
    public const string Explanations = "Read me";

    /// <summary>The sheet of idents that the drop-downs of a starter week book offer.</summary>
    public const string Lists = "Lists";

    /// <summary>Names of the sheet of findings in a checked workbook: the second where the user has a sheet of the first name.</summary>
    public static readonly ImmutableArray<string> FindingsNames = ["Findings", "Findings (tripbatch)"];

    /// <summary>What the headers of the computed columns in a checked workbook begin with.</summary>
    public const string ResultPrefix = "tripbatch ";

    /// <summary>Sheets made by this program that hold no data and are passed over.</summary>
    public static readonly ImmutableArray<string> PassedOver = [Explanations, Lists, .. FindingsNames];

    /// <summary>The sheets.</summary>
    public static readonly ImmutableArray<SheetPlan> Plans =
    [
        LegsSheet.Plan, ManifestSheet.Plan, CargoSheet.Plan, WindsSheet.Plan, BulletinsSheet.Plan, NoticesSheet.Plan,
        OperatorSheet.Plan, TypesSheet.Plan, AircraftSheet.Plan, StationsSheet.Plan, FuelArmsSheet.Plan, EnvelopeSheet.Plan,
        TableSheets.Climb, TableSheets.Cruise, TableSheets.Descent, TableSheets.Holding, TableSheets.Takeoff, TableSheets.Landing, SpeedsSheet.Plan,
        AirportsSheet.Plan, RunwaysSheet.Plan, FixesSheet.Plan, AirwaysSheet.Plan, LandSheet.Plan, AltitudeGridSheet.Plan,
        CrewSheet.Plan, LoggedSheet.Plan, ChecksSheet.Plan,
    ];
}
