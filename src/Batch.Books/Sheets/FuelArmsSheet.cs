using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The FuelArms sheet: the curve of fuel moment against fuel weight.</summary>
internal static class FuelArmsSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("FuelArms", "operator", "Moment or arm of the fuel against its weight, for each type.");

    private static readonly Column<string> Type = Plan.Add(ColumnKinds.Text("Type", "Type", "Type as in Types.", ColumnKinds.Starred));
    private static readonly Column<FuelAmount> Fuel =
        Plan.Add(ColumnKinds.Fuel("Fuel", nameof(FuelMoment.Fuel), "Usable fuel in the tanks.", ColumnKinds.Starred, "Usable fuel"));
    private static readonly Column<double> Moment =
        Plan.Add(ColumnKinds.Number(Quantity.Moment, "Moment", nameof(FuelMoment.Moment), "Moment of that fuel; this or the arm."));
    private static readonly Column<double> Arm = Plan.Add(ColumnKinds.Number(Quantity.Arm, "Arm", "Arm", "Arm of that fuel; this or the moment."));

    /// <summary>The curve of each type, rising in fuel.</summary>
    public static ILookup<string, FuelMoment> Read(Shelf shelf, Register<AircraftType> types)
    {
        var points = new List<(string Type, FuelMoment Point)>();
        var seen = new HashSet<(string, double)>();
        foreach (var row in shelf.Rows(Plan))
        {
            var type = row.NeededText(Type);
            var known = types.Resolve(row, Type, type);
            var fuel = row.NeededFuel(Fuel, type, known?.FuelDensity);
            var moment = row.Optional(Moment);
            var arm = row.Optional(Arm);
            if (moment is null && arm is null && row.Raw(Moment).IsBlank && row.Raw(Arm).IsBlank)
                row.ComplainOfRow(State.Fail, "neither Moment nor Arm is given", "a moment or an arm");
            if (!row.IsLost && known is not null && (moment ?? (arm * fuel)) is { } value)
            {
                if (seen.Add((type.ToUpperInvariant(), fuel))) points.Add((type, new FuelMoment(new Pounds(fuel), new PoundInches(value))));
                else row.Fail(Fuel, $"this amount of fuel stands twice for {type}; this row is not used", "one row for each amount");
            }

            types.Doubt(type, row.Fails);
        }

        return points.OrderBy(pair => pair.Point.Fuel).ToLookup(pair => pair.Type, pair => pair.Point, StringComparer.OrdinalIgnoreCase);
    }
}
