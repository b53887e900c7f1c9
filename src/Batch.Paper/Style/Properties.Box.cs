namespace Batch.Paper.Style;

internal static partial class Properties
{
    private static readonly string[] SideNames = ["top", "right", "bottom", "left"];
    private static readonly string[] CornerNames = ["top-left", "top-right", "bottom-right", "bottom-left"];

    private static void AddBox(Dictionary<string, Setter> table)
    {
        Keyword(table, "display", (s, v) => s.Display = v, ("none", Display.None), ("inline", Display.Inline), ("block", Display.Block), ("inline-block", Display.InlineBlock), ("list-item", Display.ListItem),
            ("flow-root", Display.Block), ("flex", Display.Flex), ("inline-flex", Display.InlineFlex), ("grid", Display.Grid), ("inline-grid", Display.InlineGrid), ("table", Display.Table),
            ("inline-table", Display.InlineTable), ("table-row-group", Display.TableRowGroup), ("table-header-group", Display.TableHeaderGroup), ("table-footer-group", Display.TableFooterGroup),
            ("table-row", Display.TableRow), ("table-cell", Display.TableCell), ("table-caption", Display.TableCaption), ("table-column", Display.TableColumn), ("table-column-group", Display.TableColumnGroup));
        for (var i = 0; i < 4; i++) AddSide(table, i);
        table["background-color"] = (s, v, _) => Paint(v, s.Color) is { } colour && Set(() => s.Background = colour);
        Measure(table, "width", (s, v) => s.Width = v);
        Measure(table, "height", (s, v) => s.Height = v);
        Measure(table, "min-width", (s, v) => s.MinWidth = v.IsAuto ? Length.Zero : v);
        Measure(table, "min-height", (s, v) => s.MinHeight = v.IsAuto ? Length.Zero : v);
        Measure(table, "max-width", (s, v) => s.MaxWidth = v);
        Measure(table, "max-height", (s, v) => s.MaxHeight = v);
        Keyword(table, "box-sizing", (s, v) => s.BorderBox = v, ("content-box", false), ("border-box", true));
        Keyword(table, "border-collapse", (s, v) => s.Collapse = v, ("separate", false), ("collapse", true));
        // Browsers keep the spacing in whole px.
        table["border-spacing"] = (s, v, c) =>
        {
            var parts = CssScanner.Split(v, ' ');
            return parts.Count is 1 or 2 && c.Length(parts[0]) is { IsAuto: false } x && c.Length(parts[^1]) is { IsAuto: false } y && Set(() => (s.SpacingX, s.SpacingY) = (Math.Floor(x.Px), Math.Floor(y.Px)));
        };
        Keyword(table, "table-layout", (s, v) => s.FixedTable = v, ("auto", false), ("fixed", true));
        Keyword(table, "caption-side", (s, v) => s.CaptionBelow = v, ("top", false), ("bottom", true));
        Keyword(table, "overflow", (s, v) => s.Hides = v, ("visible", false), ("hidden", true));
        Keyword(table, "position", (_, _) => { }, ("static", 0));
        Keyword(table, "float", (_, _) => { }, ("none", 0));
        Number(table, "opacity", 0, 1, (s, v) => s.Opacity = Math.Clamp(v, 0, 1));
        AddFlexAndGrid(table);
        AddBreaks(table);
    }

    private static void AddSide(Dictionary<string, Setter> table, int i)
    {
        var side = SideNames[i];
        Measure(table, "margin-" + side, (s, v) => s.Margin = s.Margin.With(i, v), negative: true);
        Measure(table, "padding-" + side, (s, v) => s.Padding = s.Padding.With(i, v), auto: false);
        table["border-" + side + "-width"] = (s, v, c) =>
        {
            var length = v switch { "thin" => Length.Of(1), "medium" => Length.Of(3), "thick" => Length.Of(5), _ => c.Length(v) };
            return length is { IsAuto: false, Percent: 0, Px: >= 0 } width && Set(() => s.BorderWidth = s.BorderWidth.With(i, Snap(width.Px)));
        };
        Keyword(table, "border-" + side + "-style", (s, v) => s.BorderStyles = s.BorderStyles.With(i, v), ("none", BorderStyle.None), ("hidden", BorderStyle.None), ("solid", BorderStyle.Solid),
            ("dashed", BorderStyle.Dashed), ("dotted", BorderStyle.Dotted));
        table["border-" + side + "-color"] = (s, v, _) => v == "currentcolor" ? Set(() => s.BorderColor = s.BorderColor.With(i, null))
            : Colour.Parse(v) is { } colour && Set(() => s.BorderColor = s.BorderColor.With(i, colour));
        Measure(table, "border-" + CornerNames[i] + "-radius", (s, v) => s.Radius = s.Radius.With(i, v), auto: false);
    }

    /// <summary>Browsers draw borders in whole pixels: thinner than one becomes one, else rounded down.</summary>
    private static double Snap(double px) => px is > 0 and < 1 ? 1 : Math.Floor(px);

    private static void AddFlexAndGrid(Dictionary<string, Setter> table)
    {
        (string, Align)[] places =
        [
            ("normal", Align.Normal), ("start", Align.Start), ("flex-start", Align.Start), ("left", Align.Start), ("end", Align.End), ("flex-end", Align.End), ("right", Align.End), ("center", Align.Center),
            ("stretch", Align.Stretch), ("space-between", Align.SpaceBetween), ("space-around", Align.SpaceAround), ("space-evenly", Align.SpaceEvenly), ("baseline", Align.Baseline), ("auto", Align.Auto),
        ];
        Keyword(table, "justify-content", (s, v) => s.JustifyContent = v, places);
        Keyword(table, "align-items", (s, v) => s.AlignItems = v, places);
        Keyword(table, "align-self", (s, v) => s.AlignSelf = v, places);
        Keyword(table, "align-content", (_, _) => { }, ("normal", 0), ("start", 0), ("flex-start", 0), ("stretch", 0));
        Keyword(table, "flex-direction", (s, v) => s.FlexDirection = v, ("row", FlexDirection.Row), ("column", FlexDirection.Column));
        Keyword(table, "flex-wrap", (s, v) => s.FlexWrap = v, ("nowrap", FlexWrap.Nowrap), ("wrap", FlexWrap.Wrap));
        Number(table, "flex-grow", 0, 1e6, (s, v) => s.FlexGrow = v);
        Number(table, "flex-shrink", 0, 1e6, (s, v) => s.FlexShrink = v);
        Number(table, "order", -1e6, 1e6, (s, v) => s.FlexOrder = (int)v);
        Measure(table, "flex-basis", (s, v) => s.FlexBasis = v);
        foreach (var prefix in new[] { "", "grid-" })
        {
            table[prefix + "row-gap"] = (s, v, c) => (v == "normal" ? Length.Zero : c.Length(v)) is { IsAuto: false } gap && Set(() => s.RowGap = gap);
            table[prefix + "column-gap"] = (s, v, c) => (v == "normal" ? Length.Zero : c.Length(v)) is { IsAuto: false } gap && Set(() => s.ColumnGap = gap);
        }

        table["grid-template-columns"] = (s, v, c) => Track.Parse(v, s.FontSize, c.RootFontSize) is { } tracks && Set(() => s.Columns = tracks);
        Number(table, "-column-start", 0, 100, (s, v) => s.ColumnStart = (int)v);
        Number(table, "-column-span", 1, 1000, (s, v) => s.ColumnSpan = (int)v);
    }

    private static void AddBreaks(Dictionary<string, Setter> table)
    {
        (string, Break)[] breaks = [("auto", Break.Auto), ("avoid", Break.Avoid), ("avoid-page", Break.Avoid), ("page", Break.Page), ("always", Break.Page), ("left", Break.Page), ("right", Break.Page)];
        Keyword(table, "break-before", (s, v) => s.BreakBefore = v, breaks[..^2]);
        Keyword(table, "break-after", (s, v) => s.BreakAfter = v, breaks[..^2]);
        Keyword(table, "break-inside", (s, v) => s.AvoidBreakInside = v, ("auto", false), ("avoid", true), ("avoid-page", true));
        Number(table, "orphans", 1, 100, (s, v) => s.Orphans = (int)v);
        Number(table, "widows", 1, 100, (s, v) => s.Widows = (int)v);
        table["string-set"] = (s, v, _) => CssScanner.Split(v, ' ') is [var name, "content()" or "content(text)"] && Set(() => s.RunningTitle = name);
    }
}
