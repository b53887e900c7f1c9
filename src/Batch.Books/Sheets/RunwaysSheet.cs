using System.Globalization;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Runways sheet: one direction of a runway a row.</summary>
internal static class RunwaysSheet
{
    /// <summary>Degrees between designator and magnetic bearing beyond which one of them is doubted: common practice, no source.</summary>
    private const double GreatestDifferenceDeg = 25;

    /// <summary>A day inside the years of the magnetic model; variation moves by less than a degree over them.</summary>
    private static readonly LocalDate VariationDay = new(2027, 1, 1);

    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Runways", "operator", "Runway directions with their declared distances.");

    private static readonly Column<string> Airport = Plan.Add(ColumnKinds.Ident("Airport", "Airport", "Ident of the airport.", ColumnKinds.Starred));
    private static readonly Column<string> Ident =
        Plan.Add(ColumnKinds.Runway("Runway", nameof(Runway.Ident), "Designator of this direction, such as 09 or 27L.", ColumnKinds.Starred));
    private static readonly Column<double> Bearing =
        Plan.Add(ColumnKinds.Direction("True bearing", nameof(Runway.TrueBearing), "True bearing of this direction.", ColumnKinds.Starred, "Bearing"));
    private static readonly Column<double> Tora =
        Plan.Add(ColumnKinds.AboveZero(Quantity.RunwayLength, "TORA", nameof(Runway.TakeoffRun), "Takeoff run available.", ColumnKinds.Starred));
    private static readonly Column<double> Toda = Plan.Add(
        ColumnKinds.AboveZero(Quantity.RunwayLength, "TODA", nameof(Runway.TakeoffDistance), "Takeoff distance available; empty: as the takeoff run."));
    private static readonly Column<double> Asda = Plan.Add(
        ColumnKinds.AboveZero(Quantity.RunwayLength, "ASDA", nameof(Runway.AccelerateStop), "Accelerate-stop distance available; empty: as the takeoff run."));
    private static readonly Column<double> Lda =
        Plan.Add(ColumnKinds.AboveZero(Quantity.RunwayLength, "LDA", nameof(Runway.LandingDistance), "Landing distance available.", ColumnKinds.Starred));
    private static readonly Column<double> Threshold =
        Plan.Add(ColumnKinds.Number(Quantity.Altitude, "Threshold elevation", nameof(Runway.ThresholdElevation), "Threshold elevation; empty: the airport's."));
    private static readonly Column<double> Slope =
        Plan.Add(ColumnKinds.Number(Quantity.Percent, "Slope", nameof(Runway.SlopePercent), "Slope in this direction, uphill positive; empty for level."));
    private static readonly Column<RunwaySurface> Surface = Plan.Add(ColumnKinds.Word(
        "Surface",
        nameof(Runway.Surface),
        "Surface.",
        [("paved", RunwaySurface.Paved), ("grass", RunwaySurface.Grass), ("gravel", RunwaySurface.Gravel), ("asphalt", RunwaySurface.Paved),
            ("concrete", RunwaySurface.Paved), ("hard", RunwaySurface.Paved), ("turf", RunwaySurface.Grass), ("unpaved", RunwaySurface.Gravel)]));
    private static readonly Column<bool> Lighted = Plan.Add(ColumnKinds.YesNo("Lighted", nameof(Runway.Lighted), "Whether it is lighted.", false, "Lights"));

    /// <summary>The runway directions of each airport, in book order.</summary>
    public static ILookup<string, Runway> Read(Shelf shelf, Register<Airport> airports)
    {
        var runways = new List<(string Airport, Runway Runway)>();
        var seen = new Dictionary<string, Row>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in shelf.Rows(Plan))
        {
            var ident = row.NeededText(Airport);
            var airport = airports.Resolve(row, Airport, ident);
            if (OneRunway(row, airport) is { } runway && airport is not null)
            {
                if (seen.TryAdd(ident + " " + runway.Ident, row)) runways.Add((ident, runway));
                else row.Fail(Ident, $"{runway.Ident} stands twice for {ident}; the row {seen[ident + " " + runway.Ident].Place} is used, this one is not",
                    "one row for each direction");
            }

            airports.Doubt(ident, row.Fails);
        }

        return runways.ToLookup(pair => pair.Airport, pair => pair.Runway, StringComparer.OrdinalIgnoreCase);
    }

    private static Runway? OneRunway(Row row, Airport? airport)
    {
        var runway = new Runway
        {
            Ident = row.NeededText(Ident),
            TrueBearing = TrueDegrees.Of(row.Needed(Bearing)),
            TakeoffRun = new Feet(row.Needed(Tora)),
            TakeoffDistance = row.Feet(Toda),
            AccelerateStop = row.Feet(Asda),
            LandingDistance = new Feet(row.Needed(Lda)),
            ThresholdElevation = row.Feet(Threshold),
            SlopePercent = row.Optional(Slope) ?? 0,
            Surface = row.Optional(Surface),
            Lighted = row.Optional(Lighted),
            Origin = row.Origin,
        };
        if (row.IsLost) return null;
        LookPlausible(row, runway, airport);
        return runway;
    }

    private static void LookPlausible(Row row, Runway runway, Airport? airport)
    {
        var named = 10 * int.Parse(runway.Ident.AsSpan(0, 2), NumberStyles.None, CultureInfo.InvariantCulture);
        var variation = airport is null ? 0 : MagneticModel.VariationDeg(airport.Position, airport.Elevation, VariationDay);
        var off = Math.Abs(Math.IEEERemainder(runway.TrueBearing.Value - variation - named, 360));
        if (off > GreatestDifferenceDeg)
        {
            row.Complain(State.Caution, Bearing,
                string.Create(CultureInfo.InvariantCulture,
                    $"True bearing is {off:0} degrees from what the designator {runway.Ident} says, with {variation:0} degrees of variation"),
                string.Create(CultureInfo.InvariantCulture, $"about {TrueDegrees.Of(named + variation).Value:0} degrees"));
        }

        if (Math.Abs(runway.SlopePercent) > 5) row.Complain(State.Caution, Slope, "Slope is steeper than 5 %", "percent, uphill positive");
        if (runway.TakeoffRun.Value is < 500 or > 20000)
            row.Complain(State.Caution, Tora, $"TORA of {runway.TakeoffRun} is unlikely; was it given in another unit?", "a length in the unit of the header");
        if (runway.TakeoffDistance is { } toda && toda < runway.TakeoffRun) row.Complain(State.Caution, Toda, "TODA is shorter than TORA", "at least TORA");
    }
}
