namespace Batch.Paper.Style;

/// <summary>All property values of one element. Filled once by the cascade and shared afterwards: never changed again. Lengths in px.</summary>
internal sealed class ComputedStyle
{
    public ComputedStyle()
    {
    }

    /// <summary>A child's start: inherited properties from the parent, the rest initial.</summary>
    public ComputedStyle(ComputedStyle parent)
    {
        (Custom, Color, FontSize, FontWeight, Italic, LineHeight, LineHeightFactor) =
            (parent.Custom, parent.Color, parent.FontSize, parent.FontWeight, parent.Italic, parent.LineHeight, parent.LineHeightFactor);
        (LetterSpacing, TextAlign, TextTransform, WhiteSpace, TextIndent, BreakWords) =
            (parent.LetterSpacing, parent.TextAlign, parent.TextTransform, parent.WhiteSpace, parent.TextIndent, parent.BreakWords);
        (ListStyle, Collapse, SpacingX, SpacingY, CaptionBelow, Orphans, Widows, Visible) =
            (parent.ListStyle, parent.Collapse, parent.SpacingX, parent.SpacingY, parent.CaptionBelow, parent.Orphans, parent.Widows, parent.Visible);
        (Fill, Stroke, StrokeWidth, Dashes, DashOffset, LineCap, LineJoin, FillOpacity, StrokeOpacity, EvenOdd, TextAnchor, MiddleBaseline) =
            (parent.Fill, parent.Stroke, parent.StrokeWidth, parent.Dashes, parent.DashOffset, parent.LineCap, parent.LineJoin, parent.FillOpacity, parent.StrokeOpacity,
            parent.EvenOdd, parent.TextAnchor, parent.MiddleBaseline);
        (Underline, LineThrough) = (parent.Underline, parent.LineThrough);
    }

    public ImmutableDictionary<string, string> Custom { get; set; } = ImmutableDictionary<string, string>.Empty;

    public Colour Color { get; set; } = Colour.Black;
    public double FontSize { get; set; } = 16;
    public int FontWeight { get; set; } = 400;
    public bool Italic { get; set; }

    /// <summary>Fixed line height; null when it is a factor.</summary>
    public double? LineHeight { get; set; }

    /// <summary>Line height as a factor of the font size; null is `normal`.</summary>
    public double? LineHeightFactor { get; set; }

    public double LetterSpacing { get; set; }
    public TextAlign TextAlign { get; set; }
    public TextTransform TextTransform { get; set; }
    public WhiteSpace WhiteSpace { get; set; }
    public Length TextIndent { get; set; }
    public bool BreakWords { get; set; }
    public string ListStyle { get; set; } = "disc";
    public bool Collapse { get; set; }
    public double SpacingX { get; set; }
    public double SpacingY { get; set; }
    public bool CaptionBelow { get; set; }
    public int Orphans { get; set; } = 2;
    public int Widows { get; set; } = 2;
    public bool Visible { get; set; } = true;

    /// <summary>Decorations reach the descendants, so they are carried like inherited values.</summary>
    public bool Underline { get; set; }
    public bool LineThrough { get; set; }

    public Display Display { get; set; } = Display.Inline;
    public Sides<Length> Margin { get; set; }
    public Sides<Length> Padding { get; set; }
    public Sides<double> BorderWidth { get; set; } = new(3, 3, 3, 3);
    public Sides<BorderStyle> BorderStyles { get; set; }
    public Sides<Colour?> BorderColor { get; set; }

    /// <summary>Corner radii: top-left, top-right, bottom-right, bottom-left.</summary>
    public Sides<Length> Radius { get; set; }
    public Colour Background { get; set; } = Colour.Transparent;
    public Length Width { get; set; } = Length.Auto;
    public Length Height { get; set; } = Length.Auto;
    public Length MinWidth { get; set; }
    public Length MinHeight { get; set; }
    public Length MaxWidth { get; set; } = Length.Auto;
    public Length MaxHeight { get; set; } = Length.Auto;
    public bool BorderBox { get; set; }
    public VerticalAlign VerticalAlign { get; set; }
    public Length VerticalShift { get; set; }
    public bool FixedTable { get; set; }
    public bool Hides { get; set; }
    public double Opacity { get; set; } = 1;

    public FlexDirection FlexDirection { get; set; }
    public FlexWrap FlexWrap { get; set; }
    public double FlexGrow { get; set; }
    public double FlexShrink { get; set; } = 1;
    public Length FlexBasis { get; set; } = Length.Auto;
    public int FlexOrder { get; set; }
    public Align JustifyContent { get; set; } = Align.Normal;
    public Align AlignItems { get; set; } = Align.Normal;
    public Align AlignSelf { get; set; } = Align.Auto;
    public Length RowGap { get; set; }
    public Length ColumnGap { get; set; }
    public ImmutableArray<Track> Columns { get; set; } = [];
    public int ColumnStart { get; set; }
    public int ColumnSpan { get; set; } = 1;

    public Break BreakBefore { get; set; }
    public Break BreakAfter { get; set; }
    public bool AvoidBreakInside { get; set; }

    /// <summary>Name of the running title this element sets (`string-set: name content()`).</summary>
    public string? RunningTitle { get; set; }

    public Colour? Fill { get; set; } = Colour.Black;
    public Colour? Stroke { get; set; }
    public double StrokeWidth { get; set; } = 1;
    public ImmutableArray<double> Dashes { get; set; } = [];
    public double DashOffset { get; set; }
    public int LineCap { get; set; }
    public int LineJoin { get; set; }
    public double FillOpacity { get; set; } = 1;
    public double StrokeOpacity { get; set; } = 1;
    public bool EvenOdd { get; set; }
    public string TextAnchor { get; set; } = "start";
    public bool MiddleBaseline { get; set; }

    /// <summary>Drawn border widths: zero where the style is none.</summary>
    public Sides<double> Border => new(
        BorderStyles.Top == BorderStyle.None ? 0 : BorderWidth.Top, BorderStyles.Right == BorderStyle.None ? 0 : BorderWidth.Right,
        BorderStyles.Bottom == BorderStyle.None ? 0 : BorderWidth.Bottom, BorderStyles.Left == BorderStyle.None ? 0 : BorderWidth.Left);

    public bool Wraps => WhiteSpace is not (WhiteSpace.Nowrap or WhiteSpace.Pre);

    public bool KeepsSpaces => WhiteSpace is WhiteSpace.Pre or WhiteSpace.PreWrap;

    public bool KeepsLines => WhiteSpace is WhiteSpace.Pre or WhiteSpace.PreWrap or WhiteSpace.PreLine;
}
