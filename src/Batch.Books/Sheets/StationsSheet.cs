using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Stations sheet: where load is put, one station of a type a row.</summary>
internal static class StationsSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Stations", "operator", "Loading stations of each type: seat rows, baggage compartments, pilot seats.");

    private static readonly Column<string> Type = Plan.Add(ColumnKinds.Text("Type", "Type", "Type as in Types.", ColumnKinds.Starred));
    private static readonly Column<string> Name =
        Plan.Add(ColumnKinds.Text("Station", nameof(Station.Name), "Name as the loading documents call it.", ColumnKinds.Starred));
    private static readonly Column<StationKind> Kind = Plan.Add(ColumnKinds.Word(
        "Kind",
        nameof(Station.Kind),
        "What it holds.",
        [("seat", StationKind.Seat), ("bags", StationKind.Bags), ("crew", StationKind.Crew), ("seats", StationKind.Seat), ("bag", StationKind.Bags),
            ("baggage", StationKind.Bags), ("cargo", StationKind.Bags), ("pilot", StationKind.Crew), ("pilots", StationKind.Crew)],
        ColumnKinds.Starred));
    private static readonly Column<double> Arm =
        Plan.Add(ColumnKinds.Number(Quantity.Arm, "Arm", nameof(Station.Arm), "Arm of the load put here, aft of the datum.", ColumnKinds.Starred));
    private static readonly Column<int> Seats = Plan.AddAmount(ColumnKinds.Whole("Seats", nameof(Station.Seats), "Number of seats here.", 0, 100));
    private static readonly Column<double> Maximum = Plan.AddAmount(
        ColumnKinds.AboveZero(Quantity.Weight, "Maximum", nameof(Station.Maximum), "Greatest weight allowed here.", false, "Maximum weight", "Max"));
    private static readonly Column<int> FillOrder =
        Plan.Add(ColumnKinds.Whole("Fill order", nameof(Station.FillOrder), "Order of filling, low first.", 0, 1000));

    /// <summary>The stations of each type, in book order.</summary>
    public static ILookup<string, Station> Read(Shelf shelf, Register<AircraftType> types)
    {
        var stations = new List<(string Type, Station Station)>();
        var seen = new Dictionary<string, Row>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in shelf.Rows(Plan))
        {
            var type = row.NeededText(Type);
            var known = types.Resolve(row, Type, type);
            var station = OneStation(row);
            if (station is not null && known is not null)
            {
                if (seen.TryAdd(type + "\n" + station.Name, row)) stations.Add((type, station));
                else row.Fail(Name, $"{station.Name} stands twice for {type}; the row {seen[type + "\n" + station.Name].Place} is used, this one is not",
                    "one row for each station");
            }

            types.Doubt(type, row.Fails);
        }

        return stations.ToLookup(pair => pair.Type, pair => pair.Station, StringComparer.OrdinalIgnoreCase);
    }

    private static Station? OneStation(Row row)
    {
        var name = row.NeededText(Name);
        var kind = row.Needed(Kind);
        var arm = row.Needed(Arm);
        var seats = row.Optional(Seats);
        var maximum = row.Pounds(Maximum);
        var order = row.Optional(FillOrder);
        if (row.IsLost) return null;
        if (seats is null && kind is not StationKind.Bags && row.Raw(Seats).IsBlank)
            row.Complain(State.Caution, Seats, $"{name} has no number of seats; one seat is taken", "a whole number");
        return new Station
        {
            Name = name,
            Kind = kind,
            Arm = new Inches(arm),
            Seats = seats ?? (kind is StationKind.Bags ? 0 : 1),
            Maximum = maximum,
            FillOrder = order,
            Origin = row.Origin,
        };
    }
}
