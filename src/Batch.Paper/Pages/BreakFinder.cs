using Batch.Paper.Boxes;
using Batch.Paper.Style;

namespace Batch.Paper.Pages;

/// <summary>Collects the break points of a fragment tree (CSS Fragmentation 3): between blocks, lines and rows; never inside what lies side by side.</summary>
internal static class BreakFinder
{
    /// <summary>Fewer lines or rows than wanted would stand alone.</summary>
    private const int Lonely = 1;

    /// <summary>Something asks to be kept together.</summary>
    private const int Avoided = 10;

    /// <summary>Parts of one row, or a table head and its first row: only when nothing else is left.</summary>
    private const int Joined = 1000;

    public static List<BreakPoint> Find(Fragment root)
    {
        var points = new List<BreakPoint>();
        Collect(root, root.Y, 0, points);
        points.Sort((a, b) => a.End.CompareTo(b.End));
        return points;
    }

    private static void Collect(Fragment fragment, double top, int penalty, List<BreakPoint> points)
    {
        if (fragment.Role != FragmentRole.Flow) return;
        if (fragment.Paints && fragment.Box.Style.AvoidBreakInside) penalty += Avoided;
        var children = fragment.Children;
        for (var i = 0; i < children.Count; i++)
        {
            var child = children[i];
            if (i > 0)
            {
                var (before, after) = (After(children[i - 1]), Before(child));
                var captioned = !fragment.Paints && fragment.Box.Kind == BoxKind.Table;
                var forced = (before == Break.Page || after == Break.Page) && !captioned;
                var own = before == Break.Avoid || after == Break.Avoid || captioned ? Avoided : 0;
                var keepMargin = forced ? Math.Max(0, child.Box.Style.Margin.Top.OrNull(0) ?? 0) : 0;
                var end = top + children[i - 1].Bottom;
                points.Add(new BreakPoint(end, Math.Max(end, top + child.Y - keepMargin), penalty + own + Loneliness(fragment, i), forced));
            }

            Collect(child, top + child.Y, penalty, points);
        }
    }

    private static int Loneliness(Fragment parent, int index)
    {
        var (before, count) = (parent.Children[index - 1], parent.Children.Count);
        if (before.Role == FragmentRole.Line)
        {
            var style = parent.Box.Style;
            return (index < style.Orphans ? Lonely : 0) + (count - index < style.Widows ? Lonely : 0);
        }

        if (parent.Box.Kind == BoxKind.RowGroup)
        {
            if (before.JoinedWithNext || parent.Box.Style.Display == Display.TableHeaderGroup) return Joined;
            return (index < 2 ? Lonely : 0) + (count - index < 2 ? Lonely : 0);
        }

        if (parent.Box.Kind != BoxKind.Table) return 0;
        return before == parent.RepeatedHead ? Joined : before.Children.Count < 2 ? Lonely : parent.Children[index].Box.Style.Display == Display.TableFooterGroup ? Avoided : 0;
    }

    /// <summary>A first child's wish counts for its parent too.</summary>
    private static Break Before(Fragment fragment)
    {
        var own = Own(fragment) ? fragment.Box.Style.BreakBefore : Break.Auto;
        if (own == Break.Page || fragment.Role != FragmentRole.Flow || fragment.Children.Count == 0) return own;
        return Before(fragment.Children[0]) is not Break.Auto and var inner ? inner : own;
    }

    private static Break After(Fragment fragment)
    {
        var own = Own(fragment) ? fragment.Box.Style.BreakAfter : Break.Auto;
        if (own == Break.Page || fragment.Role != FragmentRole.Flow || fragment.Children.Count == 0) return own;
        return After(fragment.Children[^1]) is not Break.Auto and var inner ? inner : own;
    }

    private static bool Own(Fragment fragment) => fragment.Role != FragmentRole.Line && (fragment.Paints || fragment.Box.Kind == BoxKind.Table);
}
