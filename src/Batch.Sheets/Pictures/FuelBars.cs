using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>What is required, item by item, above what is aboard and the most that could be.</summary>
internal static class FuelBars
{
    private const double Width = 290;
    private const double Height = 90;
    private const double Left = 56;
    private const double Right = 246;
    private const double BarHeight = 16;

    public static Picture Of(FuelLadder fuel) => new(style => Draw(fuel, style));

    private static Markup Draw(FuelLadder fuel, PictureStyle style)
    {
        var scale = Math.Max(Math.Max(fuel.Required.Value, fuel.Aboard.Value), Math.Max(fuel.Most.Value, 1));
        var axis = new Axis(0, scale, Left, Right);
        var drawing = new Drawing();
        Required(drawing, fuel, axis, style);
        var x = axis.At(fuel.Required.Value);
        Bar(drawing, style.Word("Aboard"), fuel.Aboard.Value, style.Number(Printed(fuel, style).Actual), axis, 40, Ink.Black, x);
        Bar(drawing, style.Word("Most"), fuel.Most.Value, Down(fuel.Most.Value, style), axis, 66, Ink.White, x);
        drawing.Line(x, 10, x, 84, fuel.Margin.Value < 0 ? Ink.Fail : Ink.Black, 1, "3 2");
        return drawing.Picture(Width, Height, $"{style.Word("Fuel")} [{style.WeightUnit}]: {style.Word("Required")} {style.Number(Printed(fuel, style).Limit)}, {style.Word("Aboard")} {style.Number(Printed(fuel, style).Actual)}, {style.Word("Most")} {Down(fuel.Most.Value, style)}.", "fuelbars");
    }

    private static PrintedTrio Printed(FuelLadder fuel, PictureStyle style) =>
        PrintedTrio.Of(style.Weight(fuel.Required.Value), style.Weight(fuel.Aboard.Value), isLeast: true, fuel.Margin.Value >= -1e-6);

    private static string Up(double lb, PictureStyle style) => style.Number(Math.Ceiling(style.Weight(lb) - 1e-6));

    private static string Down(double lb, PictureStyle style) => style.Number(Math.Floor(style.Weight(lb) + 1e-6));

    private static void Required(Drawing drawing, FuelLadder fuel, Axis axis, PictureStyle style)
    {
        (string Name, double Lb)[] items =
        [
            ("taxi", fuel.Taxi.Value), ("trip", fuel.Trip.Value), ("contingency", fuel.Contingency.Value), ("alternate", fuel.Alternate.Value),
            ("reserve", fuel.FinalReserve.Value), ("additional", fuel.Additional.Value),
        ];
        drawing.Text(Left - 6, 26, style.Word("Required"), TextAnchor.End);
        var sum = 0.0;
        var isTinted = false;
        foreach (var (name, lb) in items.Where(item => item.Lb > 0))
        {
            var (from, to) = (axis.At(sum), axis.At(sum + lb));
            drawing.Rectangle(from, 14, to - from, BarHeight, isTinted ? Ink.Tint : Ink.Ground, Ink.Black, 0.6);
            var word = style.Word(name);
            if (to - from > Drawing.WidthOf(word) + 4)
                drawing.Text((from + to) / 2, 26, word, TextAnchor.Middle);
            sum += lb;
            isTinted = !isTinted;
        }
        drawing.Text(axis.At(sum) + 5, 26, Up(sum, style), isBold: true);
    }

    private static void Bar(Drawing drawing, string name, double lb, string figure, Axis axis, double y, string fill, double line)
    {
        drawing.Text(Left - 6, y + 12, name, TextAnchor.End);
        drawing.Rectangle(Left, y, Math.Max(0, axis.At(lb) - Left), BarHeight, fill, Ink.Black, 0.8);
        var at = Math.Max(Left, axis.At(lb)) + 5;
        drawing.Text(line > at - 3 && line < at + Drawing.WidthOf(figure) + 3 ? line + 5 : at, y + 12, figure, isBold: true);
    }
}
