using Batch.Books.Headers;
using Batch.Books.Units;
using Batch.Flight.Route;

namespace Batch.Books.Sheets;

/// <summary>The AltitudeGrid sheet: safe altitudes off the airways, one square a row.</summary>
internal static class AltitudeGridSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("AltitudeGrid", "operator", "Safe altitudes off the airways, by squares of latitude and longitude.");

    private static readonly Column<double> South =
        Plan.Add(ColumnKinds.Latitude("South", nameof(SafeAltitudeCell.SouthDeg), "Southern edge.", ColumnKinds.Starred));
    private static readonly Column<double> West =
        Plan.Add(ColumnKinds.Longitude("West", nameof(SafeAltitudeCell.WestDeg), "Western edge.", ColumnKinds.Starred));
    private static readonly Column<double> Size =
        Plan.Add(ColumnKinds.AboveZero(Quantity.Angle, "Size", nameof(SafeAltitudeCell.SizeDeg), "Side of the square.", ColumnKinds.Starred));
    private static readonly Column<double> Minimum = Plan.Add(
        ColumnKinds.NotNegative(Quantity.Altitude, "Minimum altitude", nameof(SafeAltitudeCell.MinimumAltitude), "Safe altitude inside.", ColumnKinds.Starred));

    /// <summary>The squares in book order.</summary>
    public static ImmutableArray<SafeAltitudeCell> Read(Shelf shelf)
    {
        var cells = ImmutableArray.CreateBuilder<SafeAltitudeCell>();
        foreach (var row in shelf.Rows(Plan))
        {
            var cell = new SafeAltitudeCell(row.Needed(South), row.Needed(West), row.Needed(Size), new Feet(row.Needed(Minimum)), row.Origin);
            if (!row.IsLost) cells.Add(cell);
        }

        return cells.ToImmutable();
    }
}
