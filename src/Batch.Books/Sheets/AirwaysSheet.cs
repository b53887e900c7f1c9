using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Route;

namespace Batch.Books.Sheets;

/// <summary>The Airways sheet: one fix of an airway a row.</summary>
internal static class AirwaysSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Airways", "operator", "Airways: their fixes in sequence, with what holds from each fix to the next.");

    private static readonly Column<string> Name = Plan.Add(ColumnKinds.Ident("Airway", nameof(Airway.Name), "Name of the airway.", ColumnKinds.Starred));
    private static readonly Column<double> Sequence =
        Plan.Add(ColumnKinds.Of("Sequence", "Sequence", "Place in the airway, rising.", ColumnKinds.Starred, ["Seq"], null, Cells.QuantityReading.Plain));
    private static readonly Column<string> Fix = Plan.Add(ColumnKinds.Ident("Fix", nameof(AirwayPoint.Fix), "Ident of the fix.", ColumnKinds.Starred));
    private static readonly Column<double> Minimum = Plan.Add(ColumnKinds.NotNegative(Quantity.Altitude, "Minimum altitude",
        nameof(AirwayPoint.MinimumAltitude), "Minimum altitude from this fix to the next.", false, "MEA"));
    private static readonly Column<AirwayDirection> Direction = Plan.Add(ColumnKinds.Word(
        "Direction", nameof(AirwayPoint.Direction), "Direction allowed from this fix to the next.",
        [("both", AirwayDirection.Both), ("forward", AirwayDirection.Forward), ("backward", AirwayDirection.Backward)]));

    /// <summary>The airways by name.</summary>
    /// <param name="shelf">All books.</param>
    /// <param name="points">Idents of fixes and airports, of which an airway is made.</param>
    public static ImmutableSortedDictionary<string, Airway> Read(Shelf shelf, IReadOnlySet<string> points)
    {
        var airways = new Dictionary<string, SortedDictionary<double, AirwayPoint>>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in shelf.Rows(Plan))
        {
            var name = row.NeededText(Name);
            var sequence = row.Needed(Sequence);
            var fix = row.NeededText(Fix);
            var point = new AirwayPoint(fix, row.Feet(Minimum), row.Optional(Direction) ?? AirwayDirection.Both, row.Origin);
            if (fix.Length > 0 && !points.Contains(fix))
            {
                var near = Likely.Words(fix, points);
                row.Fail(Fix, $"{fix} is not in Fixes or Airports" + Likely.Question(near),
                    near.Length > 0 ? string.Join(", ", near) : "an ident of Fixes or Airports");
            }

            if (row.IsLost) continue;
            if (!airways.TryGetValue(name, out var fixes)) airways.Add(name, fixes = []);
            if (!fixes.TryAdd(sequence, point))
                row.Fail(Sequence, $"the sequence number stands twice in {name}; this row is not used", "one row for each number");
        }

        return airways.ToImmutableSortedDictionary(pair => pair.Key, pair => new Airway { Name = pair.Key, Points = [.. pair.Value.Values] },
            StringComparer.OrdinalIgnoreCase);
    }
}
