using Batch.Paper.Boxes;
using Batch.Paper.Html;

namespace Batch.Paper.Pages;

/// <summary>Cuts the endless column into pages. Every page takes something in, or the engine stops with the element and the reason.</summary>
internal sealed class Paginator(PageSetup setup, Report report, CancellationToken cancellation)
{
    private const double Epsilon = LayoutEngine.Epsilon;

    /// <summary>A repeated table head may take at most this share of a page.</summary>
    private const double HeadShare = 0.5;

    public List<Page> Pages(Fragment root)
    {
        var pages = new List<Page>();
        ReportBreaksSideBySide(root, inside: false);
        var points = BreakFinder.Find(root);
        var (start, end) = (0.0, Ink(root, 0));
        var most = 50 + 4 * end / setup.ContentHeight(1);
        if (!double.IsFinite(end)) throw Stuck(root, start, "a size that is not a number");
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            var heads = pages.Count == 0 ? [] : HeadsAt(root, start, pages.Count);
            var limit = start + setup.ContentHeight(pages.Count) - heads.Sum(h => h.Height);
            var forced = points.Where(p => p.Forced && p.Next > start + Epsilon && p.End > start - Epsilon && p.End <= limit + Epsilon).Select(p => (BreakPoint?)p).FirstOrDefault();
            if (forced is null && end <= limit + Epsilon)
            {
                pages.Add(new Page(pages.Count, start, double.PositiveInfinity, double.PositiveInfinity, heads));
                return pages;
            }

            if (forced is null && Best(points, start, limit) is null)
            {
                Push(root, root.Y, start, limit, setup.ContentHeight(pages.Count + 1));
                points = BreakFinder.Find(root);
                end = Ink(root, 0);
            }

            var cut = forced ?? Best(points, start, limit) ?? new BreakPoint(limit, limit, 0, Forced: false);
            pages.Add(new Page(pages.Count, start, cut.End, cut.Next, heads));
            if (pages.Count > most) throw Stuck(root, start, "the content grows with every page");
            if (cut.Next <= start + Epsilon) throw Stuck(root, start, "no progress on page " + pages.Count);
            start = cut.Next;
        }
    }

    private void ReportBreaksSideBySide(Fragment fragment, bool inside)
    {
        var style = fragment.Box.Style;
        if (inside && fragment.Paints && (style.BreakBefore == Style.Break.Page || style.BreakAfter == Style.Break.Page))
            report.Add(fragment.Box.Element, "break-before", "a new page is not begun inside a table row, flex row or grid");
        foreach (var child in fragment.Children) ReportBreaksSideBySide(child, inside || fragment.Role == FragmentRole.Parallel);
    }

    /// <summary>The break with the fewest objections, of those the lowest on the page.</summary>
    private static BreakPoint? Best(List<BreakPoint> points, double start, double limit)
    {
        BreakPoint? best = null;
        foreach (var point in points)
        {
            if (point.End > limit + Epsilon) break;
            if (point.End > start + Epsilon && point.Penalty < 1000 && (best is null || point.Penalty <= best.Value.Penalty)) best = point;
        }

        return best;
    }

    /// <summary>Moves whatever would be cut at <paramref name="cut"/> below it, in every column of what lies side by side. Gives how much the fragment grew.</summary>
    private double Push(Fragment fragment, double top, double start, double cut, double room)
    {
        var growth = 0.0;
        if (fragment.Role == FragmentRole.Parallel)
        {
            foreach (var child in fragment.Children.Where(c => top + c.Y < cut - Epsilon && top + c.Y + Extent(c) > cut + Epsilon))
                growth = Math.Max(growth, child.Role is FragmentRole.Whole or FragmentRole.Line ? Moved(child, top, start, cut, room) : Push(child, top + child.Y, start, cut, room));
            foreach (var child in fragment.Children) child.Height = Math.Max(child.Height, child.Bottom >= fragment.Height - Epsilon ? fragment.Height + growth - child.Y : 0);
            fragment.Height += growth;
            return growth;
        }

        foreach (var child in fragment.Children)
        {
            child.Y += growth;
            if (top + child.Y >= cut - Epsilon || top + child.Y + Extent(child) <= cut + Epsilon) continue;
            growth += child.Role is FragmentRole.Whole or FragmentRole.Line ? Moved(child, top, start, cut, room) : Push(child, top + child.Y, start, cut, room);
        }

        fragment.Height += growth;
        return growth;
    }

    /// <summary>Height with what hangs out below, such as a cell that spans into the next rows.</summary>
    private static double Extent(Fragment fragment) => fragment.Role == FragmentRole.Parallel ? fragment.Children.Select(c => c.Bottom).Append(fragment.Height).Max() : fragment.Height;

    private double Moved(Fragment child, double top, double start, double cut, double room)
    {
        var at = top + child.Y;
        if (at <= start + Epsilon || child.Height > room + Epsilon) throw Stuck(child, room);
        child.Y += cut - at;
        return cut - at;
    }

    private PaperException Stuck(Fragment fragment, double room)
    {
        if (fragment.Children.Find(c => c.Box.IsReplaced && c.Height > room) is { } picture) fragment = picture;
        var what = fragment.Role == FragmentRole.Line ? "a line of text" : "a picture";
        var element = fragment.Box.Element;
        var chain = string.Join(" in ", Ancestors(element).Select(a => "<" + a.LocalName + "> line " + report.Line(a)));
        return new PaperException(element?.LocalName ?? "html", report.Line(element), what + " " + Math.Ceiling(fragment.Height) + " px high does not fit on a page of " + Math.Floor(room) + " px: " + chain);
    }

    private PaperException Stuck(Fragment root, double start, string reason) => new(root.Box.Element?.LocalName ?? "html", report.Line(root.Box.Element), reason + " at " + Math.Round(start) + " px");

    private static IEnumerable<AngleSharp.Dom.IElement> Ancestors(AngleSharp.Dom.IElement? element)
    {
        for (; element is not null; element = element.ParentElement) yield return element;
    }

    /// <summary>Heads of the tables that are cut at a place below their head.</summary>
    private ImmutableArray<Fragment> HeadsAt(Fragment root, double at, int page)
    {
        var heads = ImmutableArray.CreateBuilder<Fragment>();
        var (fragment, top) = (root, root.Y);
        while (true)
        {
            if (fragment.RepeatedHead is { } head && at > top + head.Bottom + Epsilon && at < top + fragment.Height - Epsilon && heads.Sum(h => h.Height) + head.Height < HeadShare * setup.ContentHeight(page)) heads.Add(head);
            var next = fragment.Children.Find(c => top + c.Y <= at + Epsilon && top + c.Bottom > at + Epsilon && c.Role == FragmentRole.Flow);
            if (next is null) return heads.ToImmutable();
            (fragment, top) = (next, top + next.Y);
        }
    }

    /// <summary>Bottom of the lowest thing that shows: lines, pictures, decorated or sized boxes. Trailing margins do not make a page.</summary>
    private static double Ink(Fragment fragment, double top)
    {
        var at = top + fragment.Y;
        if (fragment.Role is FragmentRole.Line or FragmentRole.Whole) return at + fragment.Height;
        var style = fragment.Box.Style;
        var shows = fragment.Paints && (style.Border != default || style.Background.IsVisible || !style.Height.IsAuto || style.MinHeight.Px > 0 || fragment.CollapsedEdges is not null)
            && fragment.Box.Element?.LocalName is not ("html" or "body");
        var lowest = shows ? at + fragment.Height : at;
        foreach (var child in fragment.Children) lowest = Math.Max(lowest, Ink(child, at));
        return lowest;
    }
}
