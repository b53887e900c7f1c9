using System.Text.RegularExpressions;
using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Airports sheet: one airport a row.</summary>
internal static partial class AirportsSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Airports", "operator", "Airports: position, time zone, fuel, hours, frequencies, handling.");

    private static readonly Column<string> Ident =
        Plan.Add(ColumnKinds.Ident("Ident", nameof(Airport.Ident), "Location indicator.", ColumnKinds.Starred, "Airport", "ICAO"));
    private static readonly Column<string> Name = Plan.Add(ColumnKinds.Text("Name", nameof(Airport.Name), "Name."));
    private static readonly Column<double> Latitude =
        Plan.Add(ColumnKinds.Latitude("Latitude", "Latitude", "Latitude of the reference point, WGS84.", ColumnKinds.Starred, "Lat"));
    private static readonly Column<double> Longitude =
        Plan.Add(ColumnKinds.Longitude("Longitude", "Longitude", "Longitude of the reference point, WGS84.", ColumnKinds.Starred, "Long", "Lon"));
    private static readonly Column<double> Elevation =
        Plan.Add(ColumnKinds.Number(Quantity.Altitude, "Elevation", nameof(Airport.Elevation), "Elevation above mean sea level.", ColumnKinds.Starred, "Elev"));
    private static readonly Column<DateTimeZone> Zone = Plan.Add(ColumnKinds.Of("Time zone", nameof(Airport.Zone),
        "Time zone by its IANA name, such as Atlantic/Azores.", ColumnKinds.Starred, ["Timezone", "Zone"], null, (cell, _) => ZoneOf(cell)));
    private static readonly Column<ImmutableArray<FuelKind>> Fuel = Plan.Add(ColumnKinds.Of("Fuel", nameof(Airport.FuelsSold),
        "Fuels sold: Jet A-1, Avgas, both with a comma, or none.", false, ["Fuels"], null, (cell, _) => FuelsOf(cell)));
    private static readonly Column<double> FuelPrice =
        Plan.Add(ColumnKinds.NotNegative(Quantity.PricePerGallon, "Fuel price", nameof(Airport.FuelPrice), "Fuel price in the operator's currency."));
    private static readonly Column<LocalTime> Opens =
        Plan.Add(ColumnKinds.TimeOfDay("Opens", nameof(Airport.Opens), "Local time of opening; empty where it is always open."));
    private static readonly Column<LocalTime> Closes =
        Plan.Add(ColumnKinds.TimeOfDay("Closes", nameof(Airport.Closes), "Local time of closing; empty where it is always open."));
    private static readonly Column<(LocalTime From, LocalTime To)> Quiet = Plan.Add(ColumnKinds.Of("Quiet hours", nameof(Airport.QuietFrom),
        "Local hours without movements, such as 22:00-06:00; empty for none.", false, [], null, (cell, _) => QuietOf(cell)));
    private static readonly Column<string> Lighting = Plan.Add(ColumnKinds.Word("Lighting", nameof(Airport.Lighting), "Runway lighting.",
        [("none", "none"), ("on request", "on request"), ("yes", "yes"), ("no", "none")]));
    private static readonly Column<string> Clearance =
        Plan.Add(ColumnKinds.Text("Clearance frequency", nameof(Airport.ClearanceFrequency), "Clearance delivery frequency."));
    private static readonly Column<string> Tower = Plan.Add(ColumnKinds.Text("Tower or CTAF frequency", nameof(Airport.TowerFrequency),
        "Tower or common traffic frequency.", false, "Tower frequency", "CTAF frequency", "Tower", "CTAF"));
    private static readonly Column<string> Handler = Plan.Add(ColumnKinds.Text("Handler", nameof(Airport.Handler), "Handling agent."));
    private static readonly Column<string> HandlerMail =
        Plan.Add(ColumnKinds.Text("Handler mail", nameof(Airport.HandlerMail), "Mail address of the handling agent."));
    private static readonly Column<string> Customs = Plan.Add(ColumnKinds.Text("Customs", nameof(Airport.Customs), "Customs service."));
    private static readonly Column<string> Country =
        Plan.Add(ColumnKinds.Text("Country", nameof(Airport.Country), "Country; a leg between different ones crosses a border."));
    private static readonly Column<string> Airspace = Plan.Add(ColumnKinds.Word("Airspace", nameof(Airport.Airspace), "Class of the airspace at the ground.",
        [("B", "B"), ("C", "C"), ("D", "D"), ("E", "E"), ("G", "G")]));
    private static readonly Column<double> TakeoffVisibility = Plan.Add(ColumnKinds.Of("Takeoff visibility", nameof(Airport.TakeoffVisibilityM),
        "Least visibility for a takeoff under IFR, such as 800 m or 1 SM.", false, ["Takeoff minima"], null, VisibilityOf));
    private static readonly Column<Approach> ApproachColumn = Plan.Add(ColumnKinds.Of("Instrument approach", nameof(Airport.ApproachKind),
        "Best published approach with its minimum and visibility, such as ILS 200 ft 800 m, or none.", false, ["Approach"], null,
        (cell, setting) => ApproachOf(cell, setting)));

    /// <summary>Reads the airports, without their runways.</summary>
    public static Register<Airport> Read(Shelf shelf)
    {
        var airports = new Register<Airport>(Plan.Name);
        foreach (var row in shelf.Rows(Plan))
        {
            var ident = row.NeededText(Ident);
            airports.Take(ident, Ident, row, OneAirport(row, ident));
        }

        return airports;
    }

    private static Airport? OneAirport(Row row, string ident)
    {
        var quiet = row.Optional(Quiet);
        var approach = row.Optional(ApproachColumn);
        var position = new GeoPoint(row.Needed(Latitude), row.Needed(Longitude));
        var elevation = row.Needed(Elevation);
        var zone = row.Needed(Zone);
        var airport = new Airport
        {
            Ident = ident,
            Name = row.Text(Name),
            Position = position,
            Elevation = new Feet(elevation),
            Zone = zone ?? DateTimeZone.Utc,
            FuelsSold = row.Optional(Fuel),
            FuelPrice = row.Optional(FuelPrice),
            Opens = row.Optional(Opens),
            Closes = row.Optional(Closes),
            QuietFrom = quiet?.From,
            QuietTo = quiet?.To,
            Lighting = row.Text(Lighting),
            ClearanceFrequency = row.Text(Clearance),
            TowerFrequency = row.Text(Tower),
            Handler = row.Text(Handler),
            HandlerMail = row.Text(HandlerMail),
            Customs = row.Text(Customs),
            Country = row.Text(Country),
            Airspace = row.Text(Airspace),
            TakeoffVisibilityM = row.Optional(TakeoffVisibility),
            ApproachKind = approach?.Kind ?? "",
            ApproachMinimum = approach?.MinimumFt is { } minimum ? new Feet(minimum) : null,
            ApproachVisibilityM = approach?.VisibilityM,
            Origin = row.Origin,
        };
        if (row.IsLost) return null;
        if ((airport.Opens is null) != (airport.Closes is null) && row.Fails.Count == 0)
        {
            row.Complain(
                State.Caution, airport.Opens is null ? Opens : Closes, "one of Opens and Closes is empty; the hours are not checked", "both or neither");
        }

        if (elevation is < -1500 or > 18000) row.Complain(State.Caution, Elevation,
            "Elevation is higher or lower than any airport; was it given in another unit?", "an elevation in the unit of the header");
        return airport;
    }

    private static Reading<DateTimeZone> ZoneOf(RawCell cell)
    {
        var ids = DateTimeZoneProviders.Tzdb.Ids;
        var id = ids.Contains(cell.Text)
            ? cell.Text
            : ids.FirstOrDefault(known => string.Equals(known, cell.Text.Replace(' ', '_'), StringComparison.OrdinalIgnoreCase));
        if (id is not null) return Reading<DateTimeZone>.Good(DateTimeZoneProviders.Tzdb[id]);
        var near = Likely.Words(cell.Text, ids);
        return Reading<DateTimeZone>.Bad(
            "is not an IANA time zone" + Likely.Question(near), near.Length > 0 ? string.Join(", ", near) : "a name such as Atlantic/Azores");
    }

    private static Reading<ImmutableArray<FuelKind>> FuelsOf(RawCell cell)
    {
        if (cell.Text.Equals("none", StringComparison.OrdinalIgnoreCase) || cell.Text.Equals("no", StringComparison.OrdinalIgnoreCase) || cell.Text == "-")
            return Reading<ImmutableArray<FuelKind>>.Good([]);
        var kinds = ImmutableArray.CreateBuilder<FuelKind>();
        foreach (var word in TextReading.List(cell).Value)
        {
            var kind = TextReading.Word(RawCell.OfText(word), TypesSheet.Fuels);
            if (!kind.IsGood) return Reading<ImmutableArray<FuelKind>>.Bad("holds a fuel that is not known", kind.Expected + ", none");
            if (!kinds.Contains(kind.Value)) kinds.Add(kind.Value);
        }

        return Reading<ImmutableArray<FuelKind>>.Good(kinds.ToImmutable());
    }

    private static Reading<(LocalTime From, LocalTime To)> QuietOf(RawCell cell)
    {
        var parts = cell.Text.Split(['-', '\u2013'], StringSplitOptions.TrimEntries);
        return parts.Length == 2 && TimeText.TimeOfDay(parts[0]) is { } from && TimeText.TimeOfDay(parts[1]) is { } to
            ? Reading<(LocalTime, LocalTime)>.Good((from, to))
            : Reading<(LocalTime, LocalTime)>.Bad("is not a span of local hours", "22:00-06:00");
    }

    private static Reading<double> VisibilityOf(RawCell cell, CellSetting setting)
    {
        var reading = QuantityReading.Read(cell, setting with { Unit = Metre }, Quantity.Distance);
        return reading.IsGood
            ? Reading<double>.Good(Math.Round(Quantity.Distance.Kept.To(Metre, reading.Value), 3))
            : Reading<double>.Bad("is not a visibility", "800 m, 1 SM");
    }

    private static Reading<Approach> ApproachOf(RawCell cell, CellSetting setting)
    {
        var text = cell.Text;
        if (text.Equals("none", StringComparison.OrdinalIgnoreCase) || text.Equals("no", StringComparison.OrdinalIgnoreCase))
            return Reading<Approach>.Good(new Approach("none", null, null));
        if (text.Length > 100) text = "";
        var match = ApproachParts().Match(text);
        var bad = Reading<Approach>.Bad("is not an approach with its minimum and visibility", "ILS 200 ft 800 m, RNP 420 ft 1500 m, or none");
        if (!match.Success) return bad;
        double? minimum = null;
        double? visibility = null;
        if (match.Groups["minimum"].Success)
        {
            var reading = QuantityReading.Read(RawCell.OfText(match.Groups["minimum"].Value), setting, Quantity.Altitude);
            if (!reading.IsGood) return bad;
            minimum = reading.Value;
        }

        if (match.Groups["visibility"].Success)
        {
            var reading = QuantityReading.Read(RawCell.OfText(match.Groups["visibility"].Value), setting, Quantity.Distance);
            if (!reading.IsGood) return bad;
            visibility = Math.Round(Quantity.Distance.Kept.To(Metre, reading.Value), 3);
        }

        return Reading<Approach>.Good(new Approach(match.Groups["kind"].Value.Trim(), minimum, visibility));
    }

    private static readonly UnitWord Metre = UnitTable.Find("m", Dimension.Length) ?? throw new InvalidOperationException("the metre is a unit");

    private readonly record struct Approach(string Kind, double? MinimumFt, double? VisibilityM);

    [GeneratedRegex(@"^(?<kind>[A-Za-z][A-Za-z/ -]*?[A-Za-z])(\s+(?<minimum>[0-9][0-9.,]*\s*ft)(\s+(?<visibility>[0-9][0-9.,]*\s*(m|km|SM|mi)))?)?$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex ApproachParts();
}
