#pragma warning disable MA0048 // The keyword lists of CSS belong on one page.
namespace Batch.Paper.Style;

internal enum Display
{
    None, Inline, Block, InlineBlock, ListItem, Flex, InlineFlex, Grid, InlineGrid, Table, InlineTable,
    TableRowGroup, TableHeaderGroup, TableFooterGroup, TableRow, TableCell, TableCaption, TableColumn, TableColumnGroup,
}

internal enum BorderStyle { None, Dotted, Dashed, Solid }

internal enum TextAlign { Start, Left, Right, End, Center, Justify }

internal enum TextTransform { None, Uppercase, Lowercase, Capitalize }

internal enum WhiteSpace { Normal, Nowrap, Pre, PreWrap, PreLine }

internal enum VerticalAlign { Baseline, Sub, Super, Top, Middle, Bottom, TextTop, TextBottom, Shift }

internal enum Align { Auto, Normal, Start, End, Center, Stretch, Baseline, SpaceBetween, SpaceAround, SpaceEvenly }

internal enum Break { Auto, Avoid, Page }

internal enum FlexWrap { Nowrap, Wrap }

internal enum FlexDirection { Row, Column }
