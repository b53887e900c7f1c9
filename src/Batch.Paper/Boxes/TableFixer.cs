using AngleSharp.Dom;
using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Anonymous table parts (CSS 2.2, section 17.2.1): a table holds captions, columns and row groups, a group rows, a row cells.</summary>
internal static class TableFixer
{
    public static List<Box> Table(List<Box> children, ComputedStyle style, IElement element) =>
        Group(children, c => c.Kind is BoxKind.RowGroup or BoxKind.Caption or BoxKind.Column or BoxKind.ColumnGroup,
            run => Make(BoxKind.RowGroup, Display.TableRowGroup, Rows(run, style, element), style, element));

    public static List<Box> Rows(List<Box> children, ComputedStyle style, IElement element) =>
        Group(children, c => c.Kind == BoxKind.Row, run => Make(BoxKind.Row, Display.TableRow, Cells(run, style, element), style, element));

    public static List<Box> Cells(List<Box> children, ComputedStyle style, IElement element) =>
        Group(children, c => c.Kind == BoxKind.Cell,
            run => Make(BoxKind.Cell, Display.TableCell, BoxBuilder.Wrapped(run, style, element, always: false), style, element));

    private static Box Make(BoxKind kind, Display display, List<Box> children, ComputedStyle style, IElement element) =>
        new(kind, Cascade.Anonymous(style, display), element) { Children = children, Anonymous = true };

    /// <summary>Runs of children that are not <paramref name="proper"/> are wrapped; runs of white space go.</summary>
    public static List<Box> Group(List<Box> children, Func<Box, bool> proper, Func<List<Box>, Box> wrap)
    {
        var grouped = new List<Box>();
        var run = new List<Box>();
        foreach (var child in children)
        {
            if (!proper(child))
            {
                run.Add(child);
                continue;
            }

            Flush();
            grouped.Add(child);
        }

        Flush();
        return grouped;

        void Flush()
        {
            if (run.Exists(c => !c.IsBlank)) grouped.Add(wrap([.. run]));
            run.Clear();
        }
    }
}
