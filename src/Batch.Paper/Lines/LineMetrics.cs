using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Style;

namespace Batch.Paper.Lines;

/// <summary>Height and baseline of a line. Ascent and descent are rounded to whole pixels and leading is floored, as browsers do. Distances from the baseline, px, up is positive for ascent.</summary>
internal sealed class LineMetrics
{
    private readonly Box _block;
    private readonly FontLibrary _fonts;
    private readonly Dictionary<Box, double> _shift = [];
    private readonly List<(double Height, bool Bottom)> _aligned = [];
    private double _ascent = double.NegativeInfinity;
    private double _descent = double.NegativeInfinity;

    public LineMetrics(Box block, FontLibrary fonts)
    {
        (_block, _fonts) = (block, fonts);
        Include(block.Style, 0);
    }

    public double Baseline { get; private set; }

    public double Height { get; private set; }

    /// <summary>Rounded ascent and descent of a style's face.</summary>
    public static (double Ascent, double Descent) Of(ComputedStyle style, FontLibrary fonts)
    {
        var face = fonts.Face(style.FontWeight, style.Italic);
        return (Math.Round(face.Ascent * style.FontSize, MidpointRounding.AwayFromZero), Math.Round(face.Descent * style.FontSize, MidpointRounding.AwayFromZero));
    }

    /// <summary>Height of a line of this style alone.</summary>
    public static double LineHeight(ComputedStyle style, FontLibrary fonts)
    {
        var (ascent, descent) = Of(style, fonts);
        return Length.Cut(style.LineHeight ?? (style.LineHeightFactor is { } factor ? factor * style.FontSize : ascent + descent));
    }

    public (double Ascent, double Descent) Of(ComputedStyle style) => Of(style, _fonts);

    /// <summary>How far a box's baseline lies below the line's, px.</summary>
    public double Shift(Box box) => _shift.GetValueOrDefault(box);

    public double Open(Box box)
    {
        if (_shift.TryGetValue(box, out var known)) return known;
        var around = box.Element?.ParentElement is { } element ? _shift.Keys.FirstOrDefault(b => b.Element == element) : null;
        var (parent, outer) = around is null ? (0, _block.Style.FontSize) : (_shift[around], around.Style.FontSize);
        var style = box.Style;
        var shift = parent + style.VerticalAlign switch
        {
            VerticalAlign.Sub => outer / 5 + 1,
            VerticalAlign.Super => -outer / 3 - 1,
            VerticalAlign.Shift => -style.VerticalShift.Against(LineHeight(style, _fonts)),
            VerticalAlign.Middle => -_fonts.Face(_block.Style.FontWeight, italic: false).XHeight * _block.Style.FontSize / 2 + (Of(style).Ascent - Of(style).Descent) / 2,
            _ => 0,
        };
        _shift[box] = shift;
        Include(style, shift);
        return shift;
    }

    /// <summary>Takes an atom in; gives the place of its margin box's top below the baseline, or null when it is aligned to the line itself.</summary>
    public double? Atom(Box box, double height, double baseline, double parentShift)
    {
        var style = box.Style;
        double? top = style.VerticalAlign switch
        {
            VerticalAlign.Top or VerticalAlign.Bottom => null,
            VerticalAlign.Middle => -_fonts.Face(_block.Style.FontWeight, italic: false).XHeight * _block.Style.FontSize / 2 - height / 2,
            VerticalAlign.TextTop => -Of(_block.Style).Ascent,
            VerticalAlign.TextBottom => Of(_block.Style).Descent - height,
            VerticalAlign.Sub => -baseline + _block.Style.FontSize / 5 + 1,
            VerticalAlign.Super => -baseline - _block.Style.FontSize / 3 - 1,
            VerticalAlign.Shift => -baseline - style.VerticalShift.Against(LineHeight(style, _fonts)),
            _ => -baseline,
        };
        if (top is { } at)
        {
            _ascent = Math.Max(_ascent, -at - parentShift);
            _descent = Math.Max(_descent, at + height + parentShift);
            return at + parentShift;
        }

        _aligned.Add((height, style.VerticalAlign == VerticalAlign.Bottom));
        return null;
    }

    public void Close()
    {
        foreach (var (height, bottom) in _aligned)
        {
            if (bottom) _ascent = Math.Max(_ascent, height - _descent);
            else _descent = Math.Max(_descent, height - _ascent);
        }

        (Baseline, Height) = (_ascent, _ascent + _descent);
    }

    private void Include(ComputedStyle style, double shift)
    {
        var (ascent, descent) = Of(style);
        var leading = LineHeight(style, _fonts) - ascent - descent;
        var above = Math.Floor(leading / 2);
        _ascent = Math.Max(_ascent, ascent + above - shift);
        _descent = Math.Max(_descent, descent + leading - above + shift);
    }
}
