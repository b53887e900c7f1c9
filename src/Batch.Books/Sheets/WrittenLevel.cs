using System.Globalization;
using Batch.Books.Cells;
using Batch.Books.Units;

namespace Batch.Books.Sheets;

/// <summary>A cruise level as written: <c>auto</c>, <c>FL160</c>, <c>F160</c>, <c>A095</c>, <c>16000</c>, <c>9500 ft</c>.</summary>
/// <param name="Altitude">The level [ft]; null for auto.</param>
internal readonly record struct WrittenLevel(Feet? Altitude)
{
    private const string Expected = "auto, FL160, 16000 or 9500 ft";

    /// <summary>Reads a level.</summary>
    public static Reading<WrittenLevel> Read(RawCell cell, CellSetting setting)
    {
        var text = cell.Text;
        if (text.Equals("auto", StringComparison.OrdinalIgnoreCase)) return Reading<WrittenLevel>.Good(new WrittenLevel(null));
        if (cell.Kind == CellKind.Text && text.Length is 3 or 4 && text[0] is 'F' or 'f' or 'A'
            or 'a' && text.AsSpan(1).ContainsAnyExceptInRange('0', '9') is false)
        {
            return Level(100.0 * int.Parse(text.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture), "");
        }

        var level = QuantityReading.Read(cell, setting, Quantity.Altitude);
        if (!level.IsGood) return Reading<WrittenLevel>.Bad(level.Complaint == "is not a number" ? "is not a level" : level.Complaint, Expected);
        if (level.Value > 60000 && cell.Kind == CellKind.Number && setting.Unit is { Dimension: Dimension.FlightLevel })
            return Reading<WrittenLevel>.Bad("is too high to be a flight level; is it in feet?", text + " ft");
        return level.Value is >= 1 and < 61 && cell.Kind == CellKind.Text && text.AsSpan().IndexOfAny('.', ',') is > 0 and var point && text.Length == point + 4
            ? Reading<WrittenLevel>.Bad("is too low to be feet; is the sign in it meant to part the thousands?",
                string.Create(CultureInfo.InvariantCulture, $"{1000 * level.Value:0}"))
            : Level(level.Value, level.Complaint);
    }

    private static Reading<WrittenLevel> Level(double feet, string caution) => feet switch
    {
        < 500 => Reading<WrittenLevel>.Bad("is too low to be feet; is it a flight level?",
            string.Create(CultureInfo.InvariantCulture, $"FL{feet:000} or a level in feet")),
        > 60000 => Reading<WrittenLevel>.Bad("is higher than any level", Expected),
        _ => Reading<WrittenLevel>.Good(new WrittenLevel(new Feet(feet)), caution),
    };
}
