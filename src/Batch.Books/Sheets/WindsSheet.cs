using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Route;

namespace Batch.Books.Sheets;

/// <summary>The Winds sheet: wind and temperature at a place and altitude for a time.</summary>
internal static class WindsSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Winds", "week", "Winds and temperatures by place, altitude and time.");

    private static readonly Column<string> Place =
        Plan.Add(ColumnKinds.Ident("Place", nameof(AirReport.Place), "Airport, fix, coordinate such as 4130N03915W, or all; empty for all.", false, "Station"));
    private static readonly Column<Instant> From =
        Plan.Add(ColumnKinds.Start("From", nameof(AirReport.From), "Valid from, UTC; empty for always.", false, "Valid from"));
    private static readonly Column<Instant> To = Plan.Add(ColumnKinds.End("To", nameof(AirReport.To), "Valid to, UTC; empty for always.", false, "Valid to"));
    private static readonly Column<double> Altitude =
        Plan.Add(ColumnKinds.NotNegative(Quantity.Altitude, "Altitude", nameof(AirReport.Altitude), "Altitude.", ColumnKinds.Starred, "Level"));
    private static readonly Column<double> Direction =
        Plan.Add(ColumnKinds.Direction("Direction", nameof(AirReport.WindFrom), "Direction the wind blows from, true.", ColumnKinds.Starred));
    private static readonly Column<double> Speed =
        Plan.Add(ColumnKinds.NotNegative(Quantity.Speed, "Speed", nameof(AirReport.WindSpeed), "Wind speed.", ColumnKinds.Starred));
    private static readonly Column<double> Temperature =
        Plan.Add(ColumnKinds.Number(Quantity.Temperature, "Temperature", nameof(AirReport.Temperature), "Temperature.", false, "Temp"));

    /// <summary>Reads the reports in book order.</summary>
    /// <param name="shelf">All books.</param>
    /// <param name="airport">The airport of a name.</param>
    /// <param name="fixes">The fixes of a name.</param>
    /// <param name="points">All names of airports and fixes.</param>
    /// <param name="lost">Told of a row that could not be read: from when to when it holds, as far as read, and what is wrong.</param>
    public static ImmutableArray<AirReport> Read(Shelf shelf, Func<string, Airport?> airport, ILookup<string, Fix> fixes, IReadOnlySet<string> points,
        Action<Instant?, Instant?, IReadOnlyList<Problem>> lost)
    {
        var reports = ImmutableArray.CreateBuilder<AirReport>();
        foreach (var row in shelf.Rows(Plan))
        {
            var isPlaced = Placed(row, airport, fixes, points, out var place);
            var from = row.Optional(From);
            var to = row.Optional(To);
            var report = new AirReport
            {
                Place = place,
                From = from,
                To = to,
                Altitude = new Feet(row.Needed(Altitude)),
                WindFrom = TrueDegrees.Of(row.Needed(Direction)),
                WindSpeed = new Knots(row.Needed(Speed)),
                Temperature = row.Optional(Temperature) is { } temperature ? new Celsius(temperature) : null,
            };
            if (from >= to) row.Fail(To, "To is not after From", "a later time");
            if (report.Temperature is { Value: < -100 or > 60 })
                row.Complain(State.Caution, Temperature, "Temperature is unlikely; was it given in another unit?", "a temperature in the unit of the header");
            if (report.WindSpeed.Value > 300)
                row.Complain(State.Caution, Speed, "Speed is unlikely; was it given in another unit?", "a speed in the unit of the header");

            // A report with an unreadable time or temperature would hold where and as it should not.
            if (isPlaced && !row.IsLost && row.Fails.Count == 0) reports.Add(report);
            else lost(from, to, row.Fails);
        }

        return reports.ToImmutable();
    }

    private static bool Placed(Row row, Func<string, Airport?> airport, ILookup<string, Fix> fixes, IReadOnlySet<string> points, out GeoPoint? place)
    {
        place = null;
        var name = row.Text(Place);
        if (row.Fails.Count > 0) return false;
        if (name.Length == 0 || name == "ALL") return true;
        if (airport(name) is { } known)
        {
            place = known.Position;
            return true;
        }

        if (fixes.Contains(name))
        {
            place = fixes[name].First().Position;
            if (fixes[name].Select(fix => fix.Position).Distinct().Skip(1).Any()) row.Complain(State.Caution, Place,
                $"{name} stands at several places; that of {fixes[name].First().Origin} is taken", "a coordinate such as 4130N03915W");
            return true;
        }

        place = AngleText.Coordinate(name, row.Sheet.DecimalComma);
        if (place is not null) return true;
        var near = Likely.Words(name, points);
        row.Fail(Place, $"{name} is not in Airports or Fixes" + Likely.Question(near),
            near.Length > 0 ? string.Join(", ", near) : "an airport, a fix, a coordinate such as 4130N03915W, or all");
        return false;
    }
}
