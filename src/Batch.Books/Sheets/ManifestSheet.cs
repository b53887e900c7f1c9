using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>The Manifest sheet: one passenger a row. No complaint names the passenger.</summary>
internal static class ManifestSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Manifest", "week", "Passengers with their bags, one a row.");

    /// <summary>What a weight may be, with the words for it.</summary>
    internal static readonly ImmutableArray<(string Word, string Value)> WeightBases =
        [("stated", "stated"), ("with allowances", "with allowances"), ("weighed", "weighed"), ("allowances", "with allowances")];

    private static readonly Column<string> Trip =
        Plan.Add(ColumnKinds.Name("Trip", nameof(ManifestLine.Trip), "Trip as in Legs.", ColumnKinds.Starred, "Trip number", "Trip no"));
    private static readonly Column<LegSelection> Legs = Plan.Add(ColumnKinds.Of("Legs", nameof(ManifestLine.Legs),
        "Legs of the trip: all, 1, 1-3 or 1,3; empty for all.", false, ["Leg"], null, (cell, _) => LegsReading.Read(cell)));
    private static readonly Column<string> Name =
        Plan.Add(ColumnKinds.Text("Name", nameof(ManifestLine.Name), "Name of the passenger.", ColumnKinds.Starred, "Passenger", "Passenger name", "Pax"));
    private static readonly Column<PersonCategory> Category = Plan.Add(ColumnKinds.Word(
        "Category",
        nameof(ManifestLine.Category),
        "Category, which gives the standard weight where none is stated.",
        [
            ("adult", PersonCategory.Adult), ("man", PersonCategory.Man), ("woman", PersonCategory.Woman), ("child", PersonCategory.Child),
            ("infant", PersonCategory.Infant),
            ("male", PersonCategory.Man), ("female", PersonCategory.Woman), ("m", PersonCategory.Man), ("f", PersonCategory.Woman),
            ("adt", PersonCategory.Adult), ("chd", PersonCategory.Child), ("inf", PersonCategory.Infant),
        ],
        false,
        "Sex",
        "Gender"));
    private static readonly Column<double> Weight =
        Plan.AddAmount(ColumnKinds.AboveZero(Quantity.Weight, "Weight", nameof(ManifestLine.Weight), "Weight with what is carried on the person."));
    private static readonly Column<string> WeightBasis = Plan.Add(ColumnKinds.Word(
        "Weight basis",
        nameof(ManifestLine.WeightBasis),
        "What the weight is: stated by the passenger alone, with allowances for clothing and hand baggage, or weighed with them; empty for what the Operator sheet says.",
        WeightBases));

    private static readonly Column<double> Bags = Plan.AddAmount(
        ColumnKinds.NotNegative(Quantity.Weight, "Bags", nameof(ManifestLine.Bags), "Weight of the checked bags.", false, "Bag weight", "Baggage"));
    private static readonly Column<int> BagCount = Plan.AddAmount(ColumnKinds.Whole("Bag count", nameof(ManifestLine.BagCount), "Number of bags.", 0, 1000));
    private static readonly Column<string> Seat = Plan.Add(ColumnKinds.Text("Seat", nameof(ManifestLine.Seat), "Seat or station asked for."));
    private static readonly Column<string> Notes = Plan.Add(ColumnKinds.Text("Notes", nameof(ManifestLine.Notes), "Notes."));

    /// <summary>Reads the passengers in book order and passes doubts on to their legs.</summary>
    public static ImmutableArray<ManifestLine> Read(Shelf shelf, Trips trips)
    {
        var lines = ImmutableArray.CreateBuilder<ManifestLine>();
        var seen = new Dictionary<(string Trip, string Name), List<(LegSelection Legs, CellRef Place)>>();
        foreach (var row in shelf.Rows(Plan))
        {
            if (trips.IsRemark(row, Trip, Name, "passenger")) continue;
            var trip = trips.AsInLegs(row.NeededText(Trip));
            var legs = row.Take(Legs, LegSelection.All);
            var line = new ManifestLine
            {
                Trip = trip,
                Legs = legs ?? LegSelection.All,
                Name = row.NeededText(Name),
                Category = row.Optional(Category),
                Weight = row.Pounds(Weight),
                WeightBasis = row.Text(WeightBasis),
                Bags = row.Pounds(Bags),
                BagCount = row.Optional(BagCount),
                Seat = row.Text(Seat),
                Notes = row.Text(Notes),
                Origin = row.Origin,
            };
            LookPlausible(row, line);
            var isKnown = trips.Resolve(row, Trip, trip);
            if (isKnown) trips.LookAtLegs(row, Legs, trip, legs);
            trips.Doubt(row, trip, legs);
            if (row.IsLost || legs is null || !isKnown) continue;
            lines.Add(line);
            if (Again(seen, row, line) is { } problem) trips.Doubt(trip, legs, problem);
        }

        trips.ComplainOfStrays();
        return lines.ToImmutable();
    }

    // A row pasted twice weighs twice. One word is no person's name: TBA or Guest may be several.
    private static Problem? Again(Dictionary<(string Trip, string Name), List<(LegSelection Legs, CellRef Place)>> seen, Row row, ManifestLine line)
    {
        var name = line.Name.Trim().ToUpperInvariant();
        if (!name.Contains(' ', StringComparison.Ordinal)) return null;
        if (!seen.TryGetValue((line.Trip, name), out var rows)) seen.Add((line.Trip, name), rows = []);
        var at = rows.FindIndex(other => Meet(other.Legs, line.Legs));
        rows.Add((line.Legs, row.Place));
        return at < 0 ? null : row.ComplainOfRow(State.Caution,
            $"a passenger of this name stands also in {rows[at].Place} for the same leg, and both are aboard; is it one person?", "one row for each passenger");
    }

    private static bool Meet(LegSelection one, LegSelection other)
    {
        // Two that are for all legs meet in the first.
        var most = Math.Min(one.Greatest ?? int.MaxValue, other.Greatest ?? int.MaxValue);
        return Enumerable.Range(1, most == int.MaxValue ? 1 : Math.Min(most, 9999)).Any(number => one.Contains(number) && other.Contains(number));
    }

    private static void LookPlausible(Row row, ManifestLine line)
    {
        if (line.Weight is { Value: var weight })
        {
            if (line.Category is PersonCategory.Child or PersonCategory.Infant) Plausible.Young(row, Weight, weight, line.Category is PersonCategory.Infant);
            else Plausible.Adult(row, Weight, weight);
        }

        if (line.Bags is { Value: > 300 } bags)
            row.Complain(State.Caution, Bags, $"Bags of {bags} are much for one person", "a weight in the unit of the header, or with its unit");
    }
}
