using System.Globalization;
using Batch.Books.Units;

namespace Batch.Books.Cells;

/// <summary>Reads numbers with units: the cell's own unit, else that of the column.</summary>
internal static class QuantityReading
{
    /// <summary>More hours than any airframe has.</summary>
    private const double GreatestHours = 1e6;

    private static readonly UnitWord Hour = Quantity.Hours.Kept;
    private static readonly UnitWord Gallon = UnitTable.Find("USG", Dimension.Volume) ?? Quantity.Fuel.Kept;
    private static readonly UnitWord GallonPerHour = UnitTable.Find("USG/h", Dimension.VolumeFlow) ?? Quantity.FuelFlow.Kept;

    /// <summary>A number in the unit the quantity is kept in.</summary>
    public static Reading<double> Read(RawCell cell, CellSetting setting, Quantity quantity)
    {
        var written = Written(cell, setting, quantity);
        return written.IsGood
            ? Reading<double>.Good(written.Value.Unit.To(quantity.Kept, written.Value.Number), written.Complaint, written.Expected)
            : Reading<double>.Bad(written.Complaint, written.Expected);
    }

    /// <summary>Fuel or fuel flow, by weight [lb] or volume [US gal] as written.</summary>
    public static Reading<FuelAmount> Fuel(RawCell cell, CellSetting setting, Quantity quantity)
    {
        var written = Written(cell, setting, quantity);
        if (!written.IsGood) return Reading<FuelAmount>.Bad(written.Complaint, written.Expected);
        var (number, unit) = written.Value;
        var byVolume = unit.Dimension != quantity.Dimensions[0];
        var kept = !byVolume ? quantity.Kept : quantity.Dimensions[1] == Dimension.VolumeFlow ? GallonPerHour : Gallon;
        return Reading<FuelAmount>.Good(new FuelAmount(unit.To(kept, number), byVolume), written.Complaint, written.Expected);
    }

    /// <summary>A plain number without a unit.</summary>
    public static Reading<double> Plain(RawCell cell, CellSetting setting)
    {
        if (cell.Kind == CellKind.Number)
        {
            return (cell.Look & (NumberLook.Date | NumberLook.Clock)) != NumberLook.Plain
                ? Reading<double>.Bad("is shown as a date or a time, not as a number", "a number; format the cell as a number and type it again")
                : Math.Abs(cell.Number) <= NumberText.Greatest ? Reading<double>.Good(cell.Number) : Reading<double>.Bad("is out of range", "a number");
        }

        return cell.Kind == CellKind.Boolean ? Reading<double>.Bad("is not a number", "a number") : NumberText.Read(cell.Text, setting.DecimalComma);
    }

    /// <summary>A whole number between two limits.</summary>
    public static Reading<int> Whole(RawCell cell, CellSetting setting, int least, int most)
    {
        var number = Plain(cell, setting);
        var expected = string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}");
        if (most == int.MaxValue) expected = string.Create(CultureInfo.InvariantCulture, $"a whole number, {least} or more");
        if (!number.IsGood) return Reading<int>.Bad(number.Complaint, number.Expected == "a number" ? expected : number.Expected);
        if (!double.IsInteger(number.Value)) return Reading<int>.Bad("is not a whole number", expected);
        return number.Value < least || number.Value > most
            ? Reading<int>.Bad("is out of range", expected)
            : Reading<int>.Good((int)number.Value, number.Complaint);
    }

    /// <summary>A time span: a number with a unit, <c>h:mm</c>, or a workbook's elapsed time. In the unit the quantity is kept in.</summary>
    public static Reading<double> Span(RawCell cell, CellSetting setting, Quantity quantity)
    {
        var span = AnySpan(cell, setting, quantity);
        return span.IsGood && Math.Abs(quantity.Kept.To(Hour, span.Value)) > GreatestHours
            ? Reading<double>.Bad("is out of range", $"a number of {quantity.Unit} or h:mm")
            : span;
    }

    private static Reading<double> AnySpan(RawCell cell, CellSetting setting, Quantity quantity)
    {
        if (cell.Kind == CellKind.Number && (cell.Look & NumberLook.Clock) != NumberLook.Plain)
            return Reading<double>.Good(Rounded(Hour.To(quantity.Kept, cell.Number * 24)));
        var colon = cell.Text.IndexOf(':', StringComparison.Ordinal);
        if (cell.Kind != CellKind.Text || colon < 0) return Read(cell, setting, quantity);
        var parts = cell.Text.Split(':');
        return parts.Length is 2 or 3 && parts.All(part => part.Length > 0 && part.All(char.IsAsciiDigit))
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var hours)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) && parts[1].Length == 2 && minutes < 60
            && (parts.Length == 2 || parts[2] == "00")
            ? Reading<double>.Good(Hour.To(quantity.Kept, hours + (minutes / 60.0)))
            : Reading<double>.Bad("is not a time span", $"a number of {quantity.Unit} or h:mm");
    }

    private static double Rounded(double number) => Math.Round(number, 9);

    private static Reading<(double Number, UnitWord Unit)> Written(RawCell cell, CellSetting setting, Quantity quantity)
    {
        var unit = setting.Unit ?? quantity.Kept;
        if (cell.Kind == CellKind.Number && (cell.Look & NumberLook.Percent) != NumberLook.Plain && quantity.Dimensions[0] == Dimension.Percent)
        {
            return Reading<(double, UnitWord)>.Good((Rounded(cell.Number * 100), unit));
        }

        if (cell.Kind == CellKind.Text)
        {
            var text = cell.Text;
            if (quantity.Dimensions.Contains(Dimension.FlightLevel) && text.StartsWith("FL", StringComparison.OrdinalIgnoreCase)) text = text[2..] + " FL";
            var (number, rest) = NumberText.Split(text);
            if (number.Length == 0 || rest.Length == 0) return With(NumberText.Read(text, setting.DecimalComma), unit, quantity);
            if (quantity.Find(rest) is not { } own)
                return Reading<(double, UnitWord)>.Bad($"has a unit that is not known for {quantity.Name}", Expected(quantity));
            return With(NumberText.Read(number, setting.DecimalComma), own, quantity);
        }

        return With(Plain(cell, setting), unit, quantity);
    }

    private static Reading<(double Number, UnitWord Unit)> With(Reading<double> number, UnitWord unit, Quantity quantity) => number.IsGood
        ? Reading<(double, UnitWord)>.Good((number.Value, unit), number.Complaint, number.Expected)
        : Reading<(double, UnitWord)>.Bad(number.Complaint, number.Expected == "a number" ? Expected(quantity) : number.Expected);

    private static string Expected(Quantity quantity) => $"a number, with or without a unit ({quantity.KnownUnits})";
}
