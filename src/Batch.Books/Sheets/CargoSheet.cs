using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>The Cargo sheet: one piece or lot a row.</summary>
internal static class CargoSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Cargo", "week", "Cargo, one piece or lot a row.");

    private static readonly Column<string> Trip =
        Plan.Add(ColumnKinds.Name("Trip", nameof(CargoLine.Trip), "Trip as in Legs.", ColumnKinds.Starred, "Trip number", "Trip no"));
    private static readonly Column<LegSelection> Legs = Plan.Add(ColumnKinds.Of("Legs", nameof(CargoLine.Legs),
        "Legs of the trip: all, 1, 1-3 or 1,3; empty for all.", false, ["Leg"], null, (cell, _) => LegsReading.Read(cell)));
    private static readonly Column<string> What = Plan.Add(ColumnKinds.Text("What", nameof(CargoLine.What), "What it is.", ColumnKinds.Starred, "Description"));
    private static readonly Column<double> Weight =
        Plan.AddAmount(ColumnKinds.AboveZero(Quantity.Weight, "Weight", nameof(CargoLine.Weight), "Weight.", ColumnKinds.Starred));
    private static readonly Column<string> Station =
        Plan.Add(ColumnKinds.Text("Station", nameof(CargoLine.Station), "Station asked for; empty for the fill order."));
    private static readonly Column<string> Notes = Plan.Add(ColumnKinds.Text("Notes", nameof(CargoLine.Notes), "Notes."));

    /// <summary>Reads the cargo in book order and passes doubts on to its legs.</summary>
    public static ImmutableArray<CargoLine> Read(Shelf shelf, Trips trips)
    {
        var lines = ImmutableArray.CreateBuilder<CargoLine>();
        foreach (var row in shelf.Rows(Plan))
        {
            if (trips.IsRemark(row, Trip, What, "piece of cargo")) continue;
            var trip = trips.AsInLegs(row.NeededText(Trip));
            var legs = row.Take(Legs, LegSelection.All);
            var line = new CargoLine
            {
                Trip = trip,
                Legs = legs ?? LegSelection.All,
                What = row.NeededText(What),
                Weight = new Pounds(row.Needed(Weight)),
                Station = row.Text(Station),
                Notes = row.Text(Notes),
                Origin = row.Origin,
            };
            var isKnown = trips.Resolve(row, Trip, trip);
            if (isKnown) trips.LookAtLegs(row, Legs, trip, legs);
            trips.Doubt(row, trip, legs);
            if (!row.IsLost && legs is not null && isKnown) lines.Add(line);
        }

        trips.ComplainOfStrays();
        return lines.ToImmutable();
    }
}
