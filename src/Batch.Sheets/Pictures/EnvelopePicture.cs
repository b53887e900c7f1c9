using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Sheets.Templates;
using Batch.Sheets.Views;

namespace Batch.Sheets.Pictures;

/// <summary>
/// Weight against centre of gravity: the envelope of each case by line style, the line as the fuel burns, and the labelled states of loading.
/// </summary>
internal static class EnvelopePicture
{
    private const double Width = 350;
    private const double Height = 256;
    private const double Left = 40;
    private const double Right = 226;
    private const double Top = 12;
    private const double Bottom = 204;
    private const double LabelStep = 38;

    /// <summary>The picture; null where the type has no envelope or moments are not known.</summary>
    public static Picture? Of(LegPlan.Planned plan) => plan.Load.HasMoments && !plan.Type.Envelopes.IsEmpty ? new Picture(style => Draw(plan, style)) : null;

    private static Markup Draw(LegPlan.Planned plan, PictureStyle style)
    {
        var states = States(plan.Load, plan.Type);
        var (arms, weights) = Axes(plan, states);
        var drawing = new Drawing();
        Grid(drawing, arms, weights, style);
        Legend(drawing, plan.Type.Envelopes, style);
        foreach (var envelope in plan.Type.Envelopes)
            drawing.Polygon(envelope.Vertices.Select(vertex => (arms.At(vertex.Arm.Value), weights.At(vertex.Weight.Value))), "none", Ink.Black,
                LineWidth(envelope.Case), LineStyle(envelope.Case));
        drawing.Polyline(plan.Load.BurnLine.Select(point => (arms.At(point.Arm.Value), weights.At(point.Weight.Value))), Ink.Grey, 1.2);
        Labels(drawing, states, arms, weights, style);
        return drawing.Picture(Width, Height, Title(states, style), "envelope");
    }

    private static ImmutableArray<LoadingState> States(LoadSheet load, AircraftType type)
    {
        LoadingState Of(string name, string when, WeightAndBalance state, Pounds? most) =>
            new(name, state.Weight.Value, WeightView.Printed(state.Weight, most), state.CentreOfGravity.Value,
            load.Tests.Where(test => string.Equals(test.When, when, StringComparison.OrdinalIgnoreCase)).All(test => test.IsInside));
        ImmutableArray<LoadingState> states = [Of("Takeoff", "takeoff", load.Takeoff, type.MaximumTakeoff),
            Of("Landing", "landing", load.Landing, type.MaximumLanding), Of("Zero fuel", "zero fuel", load.ZeroFuel, type.MaximumZeroFuel)];
        return [.. states.Where(state => double.IsFinite(state.ArmIn) && double.IsFinite(state.WeightLb))];
    }

    private static (Axis Arms, Axis Weights) Axes(LegPlan.Planned plan, ImmutableArray<LoadingState> states)
    {
        var arms = plan.Type.Envelopes.SelectMany(envelope => envelope.Vertices).Select(vertex => vertex.Arm.Value).Concat(states.Select(state => state.ArmIn))
            .ToArray();
        var weights = plan.Type.Envelopes.SelectMany(envelope => envelope.Vertices).Select(vertex => vertex.Weight.Value)
            .Concat(states.Select(state => state.WeightLb)).ToArray();
        return (Padded(arms, Left, Right), Padded(weights, Bottom, Top));
    }

    private static Axis Padded(double[] values, double start, double end)
    {
        var pad = Math.Max((values.Max() - values.Min()) * 0.08, 0.5);
        return new Axis(values.Min() - pad, values.Max() + pad, start, end);
    }

    private static void Grid(Drawing drawing, Axis arms, Axis weights, PictureStyle style)
    {
        foreach (var mark in new Axis(style.Weight(weights.From), style.Weight(weights.To), weights.Start, weights.End) is var axis
            ? axis.Marks(6).Select(weight => (Weight: weight, Y: axis.At(weight)))
            : [])
        {
            drawing.Line(Left, mark.Y, Right, mark.Y, Ink.Hair, 0.5);
            drawing.Text(Left - 5, mark.Y + 3.5, style.Number(mark.Weight), TextAnchor.End, fill: Ink.Grey);
        }
        foreach (var arm in arms.Marks(4))
        {
            drawing.Line(arms.At(arm), Top, arms.At(arm), Bottom, Ink.Hair, 0.5);
            drawing.Text(arms.At(arm), Bottom + 13, arm.ToString("0.##", style.Culture), TextAnchor.Middle, fill: Ink.Grey);
        }
        drawing.Text(Left - 5, Top - 2, style.WeightUnit, TextAnchor.End, fill: Ink.Grey);
        drawing.Text(Right + 8, Bottom + 13, style.Word("in aft of datum"), fill: Ink.Grey);
    }

    private static void Legend(Drawing drawing, ImmutableArray<Envelope> envelopes, PictureStyle style)
    {
        var x = Left;
        foreach (var envelope in envelopes)
        {
            var word = style.Word(
                envelope.Case switch { EnvelopeCase.Takeoff => "takeoff", EnvelopeCase.Landing => "landing", EnvelopeCase.ZeroFuel => "zero-fuel limits" });
            drawing.Line(x, Bottom + 28, x + 18, Bottom + 28, Ink.Black, LineWidth(envelope.Case), LineStyle(envelope.Case));
            drawing.Text(x + 22, Bottom + 31.5, word, fill: Ink.Grey);
            x += 22 + Drawing.WidthOf(word) + 8;
        }
        drawing.Line(Left, Bottom + 44, Left + 18, Bottom + 44, Ink.Grey, 1.2);
        drawing.Text(Left + 22, Bottom + 47.5, style.Word("as the fuel burns, takeoff to zero fuel"), fill: Ink.Grey);
    }

    private static void Labels(Drawing drawing, ImmutableArray<LoadingState> states, Axis arms, Axis weights, PictureStyle style)
    {
        var ordered = states.OrderByDescending(state => state.WeightLb).ToArray();
        string Whole(LoadingState state) => style.Word(state.Name) + (state.IsInside ? "" : " – " + style.Word("outside"));
        var isApart = ordered.Any(state => !state.IsInside && Drawing.WidthOf(Whole(state)) > Width - Right - 12);
        var places = LabelPlaces.Spread(
            [.. ordered.Select(state => weights.At(state.WeightLb))], isApart ? LabelStep + 8 : LabelStep, Top + 10, Bottom - (isApart ? 26 : 14));
        for (var k = 0; k < ordered.Length; k++)
        {
            var (x, y) = (arms.At(ordered[k].ArmIn), weights.At(ordered[k].WeightLb));
            var ink = ordered[k].IsInside ? Ink.Black : Ink.Fail;
            drawing.Polyline([(x, y), (Right + 4, places[k] - 3.5), (Right + 8, places[k] - 3.5)], Ink.Grey, 0.6);
            Shape(drawing, ordered[k].Name, x, y, ordered[k].IsInside);
            drawing.Text(Right + 12, places[k], isApart ? style.Word(ordered[k].Name) : Whole(ordered[k]), isBold: true, fill: ink);
            drawing.Text(Right + 12, places[k] + 12, Figures(ordered[k], style));
            if (isApart && !ordered[k].IsInside)
                drawing.Text(Right + 12, places[k] + 24, style.Word("outside"), isBold: true, fill: ink);
        }
    }

    private static string Figures(LoadingState state, PictureStyle style) =>
        state.Printed.Text(style.Weight(1), 0, style.Culture) + " " + style.WeightUnit + "  " + state.ArmIn.ToString("0.00", style.Culture) + " in";

    private static void Shape(Drawing drawing, string name, double x, double y, bool isInside)
    {
        var fill = isInside ? Ink.Black : Ink.Fail;
        if (name == "Takeoff")
            drawing.Circle(x, y, 4, fill);
        else if (name == "Landing")
            drawing.Rectangle(x - 3.6, y - 3.6, 7.2, 7.2, fill);
        else
            drawing.Polygon([(x, y - 4.6), (x + 4.4, y + 3.4), (x - 4.4, y + 3.4)], Ink.White, fill, 1.4);
        if (!isInside)
            drawing.Circle(x, y, 8, "none", Ink.Fail, 1.2);
    }

    private static string Title(ImmutableArray<LoadingState> states, PictureStyle style) =>
        style.Word("Weight and centre of gravity") + ": " + string.Join("; ",
            states.Select(state => style.Word(state.Name) + " " + Figures(state, style) + ", " + style.Word(state.IsInside ? "inside" : "outside"))) + ".";

    private static double LineWidth(EnvelopeCase condition) => condition == EnvelopeCase.Takeoff ? 1.6 : 1.1;

    private static string LineStyle(EnvelopeCase condition) => condition switch
    {
        EnvelopeCase.Takeoff => "",
        EnvelopeCase.Landing => "6 3",
        EnvelopeCase.ZeroFuel => "1.5 2.5",
    };
}
