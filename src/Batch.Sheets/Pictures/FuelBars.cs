using System.Globalization;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>What is required, item by item, above what is aboard and the most that could be.</summary>
internal static class FuelBars
{
    private const double Width = 330;
    private const double Height = 90;
    private const double Left = 50;
    private const double Right = 288;
    private const double BarHeight = 16;

    public static Markup Of(FuelLadder fuel)
    {
        var scale = Math.Max(Math.Max(fuel.Required.Value, fuel.Aboard.Value), Math.Max(fuel.Most.Value, 1));
        var axis = new Axis(0, scale, Left, Right);
        var drawing = new Drawing();
        Required(drawing, fuel, axis);
        Bar(drawing, "Aboard", fuel.Aboard.Value, Math.Round(fuel.Aboard.Value, MidpointRounding.AwayFromZero), axis, 40, Ink.Black);
        Bar(drawing, "Most", fuel.Most.Value, Math.Floor(fuel.Most.Value + 1e-6), axis, 66, Ink.White);
        var x = axis.At(fuel.Required.Value);
        drawing.Line(x, 10, x, 84, fuel.Margin.Value < 0 ? Ink.Fail : Ink.Black, 1, "3 2");
        return drawing.Picture(Width, Height, string.Create(CultureInfo.InvariantCulture, $"Fuel: {Math.Ceiling(fuel.Required.Value):0} lb required, {fuel.Aboard.Value:0} lb aboard, {Math.Floor(fuel.Most.Value):0} lb the most."), "fuelbars");
    }

    private static void Required(Drawing drawing, FuelLadder fuel, Axis axis)
    {
        (string Name, double Lb)[] items =
        [
            ("taxi", fuel.Taxi.Value), ("trip", fuel.Trip.Value), ("contingency", fuel.Contingency.Value), ("alternate", fuel.Alternate.Value),
            ("reserve", fuel.FinalReserve.Value), ("additional", fuel.Additional.Value),
        ];
        drawing.Text(Left - 6, 26, "Required", TextAnchor.End);
        var sum = 0.0;
        var isTinted = false;
        foreach (var (name, lb) in items.Where(item => item.Lb > 0))
        {
            var (from, to) = (axis.At(sum), axis.At(sum + lb));
            drawing.Rectangle(from, 14, to - from, BarHeight, isTinted ? Ink.Tint : Ink.Ground, Ink.Black, 0.6);
            if (to - from > Drawing.WidthOf(name, 9) + 4)
                drawing.Text((from + to) / 2, 25.5, name, TextAnchor.Middle, size: 9);
            sum += lb;
            isTinted = !isTinted;
        }
        drawing.Text(axis.At(sum) + 5, 26, Quantity.Text(Math.Ceiling(sum - 1e-6), 0, isSigned: false), isBold: true);
    }

    private static void Bar(Drawing drawing, string name, double lb, double rounded, Axis axis, double y, string fill)
    {
        drawing.Text(Left - 6, y + 12, name, TextAnchor.End);
        drawing.Rectangle(Left, y, Math.Max(0, axis.At(lb) - Left), BarHeight, fill, Ink.Black, 0.8);
        drawing.Text(Math.Max(Left, axis.At(lb)) + 5, y + 12, Quantity.Text(rounded, 0, isSigned: false), isBold: true);
    }
}
