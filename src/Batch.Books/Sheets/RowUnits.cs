using Batch.Books.Headers;
using Batch.Books.Units;

namespace Batch.Books.Sheets;

/// <summary>Gives the values of a row's cells in the units of the flight model.</summary>
internal static class RowUnits
{
    /// <summary>Weight of an optional cell.</summary>
    public static Pounds? Pounds(this Row row, Column<double> column) => row.Optional(column) is { } weight ? new Pounds(weight) : null;

    /// <summary>Altitude or length of an optional cell.</summary>
    public static Feet? Feet(this Row row, Column<double> column) => row.Optional(column) is { } length ? new Feet(length) : null;

    /// <summary>Duration of an optional cell kept in minutes.</summary>
    public static Duration? Minutes(this Row row, Column<double> column) => row.Optional(column) is { } minutes ? Spans.OfMinutes(minutes) : null;

    /// <summary>Fraction of an optional cell kept in percent.</summary>
    public static double? Fraction(this Row row, Column<double> column) => row.Optional(column) / 100;

    /// <summary>Fuel of an optional cell by weight.</summary>
    public static Pounds? Fuel(this Row row, Column<FuelAmount> column, string type, double? densityLbPerGallon) =>
        row.Optional(column) is { } fuel && row.Pounds(column, fuel, type, densityLbPerGallon) is { } pounds ? new Pounds(pounds) : null;

    /// <summary>Fuel or fuel flow of a starred cell in pounds (an hour); the row is lost where there is none.</summary>
    public static double NeededFuel(this Row row, Column<FuelAmount> column, string type, double? densityLbPerGallon)
    {
        var fuel = row.Needed(column);
        if (row.IsLost) return 0;
        if (row.Pounds(column, fuel, type, densityLbPerGallon) is { } pounds) return pounds;
        row.Lose();
        return 0;
    }

    /// <summary>Fuel by weight [lb]; complains where it is by volume and the type has no density.</summary>
    public static double? Pounds(this Row row, Column column, FuelAmount fuel, string type, double? densityLbPerGallon)
    {
        if (fuel.Pounds(densityLbPerGallon) is { } pounds) return pounds;
        row.Fail(column, $"{column.Name} is given by volume, but Types gives no density for {type}", "a weight, or a Density for the type");
        return null;
    }
}
