namespace Batch.Paper.Boxes;

internal enum BoxKind { Block, Inline, Text, LineBreak, WordBreak, Image, Svg, Flex, Grid, Table, RowGroup, Row, Cell, Caption, ColumnGroup, Column }
